import { describe, expect, test } from "vitest";
import { BLEED_MM } from "../../lib/print/card-plan.ts";
import { imposition, PAPER_MARGIN_MM } from "../../lib/print/imposition.ts";

const CARD = { name: "card", widthMm: 90, heightMm: 55, paper: "A4", twoSided: true } as const;

/** Counted by hand: paper less two margins of 8 mm, plus one gutter of 6, over a card and its gutter; ISO 216 and ANSI Y14.1 for the papers. */
describe("cards on a sheet", () => {
  test.each([
    ["A4", true, 90, 55, 2, 4],
    ["Letter", true, 90, 55, 2, 4],
    ["A4", false, 90, 55, 2, 2],
    ["Letter", true, 190, 120, 1, 2],
  ] as const)(
    "%s, two-sided %s, %d x %d: %d columns, %d rows",
    (paper, twoSided, widthMm, heightMm, columns, rows) => {
      expect(imposition({ name: "x", paper, twoSided, widthMm, heightMm })).toMatchObject({
        columns,
        rows,
        perSheet: columns * rows,
      });
    },
  );

  /** Upright A4 holds 1 x 3 of 105 x 74 and of 110 x 76, lying 2 x 2: 287 over 111 and over 116, 200 over 80 and over 82. */
  test.each([
    ["A4", true, 105, 74],
    ["A4", false, 110, 38],
  ] as const)(
    "%s, two-sided %s, %d x %d: four on paper that lies",
    (paper, twoSided, widthMm, heightMm) => {
      const laid = imposition({ name: "x", paper, twoSided, widthMm, heightMm });
      expect(laid).toMatchObject({ isLying: true, columns: 2, rows: 2, perSheet: 4 });
      expect(laid.paperMm).toEqual({ width: 297, height: 210 });
    },
  );

  test("lying have their backs where the fronts are when the sheet is turned on its long edge, which is above", () => {
    const size = { ...CARD, widthMm: 105, heightMm: 74 };
    const { place, perSheet, paperMm } = imposition(size);
    for (let i = 0; i < perSheet; i++) {
      expect(place(i, "back").yMm + 74).toBeCloseTo(paperMm.height - place(i, "front").yMm, 9);
      expect(place(i, "back").xMm).toBe(place(i, "front").xMm);
    }
  });

  test("stand in the middle, clear of the margins, with room for two bleeds between them", () => {
    const { place, cuts } = imposition(CARD);
    expect(cuts.x).toEqual([12, 102, 108, 198]);
    expect(cuts.y[0]).toBeCloseTo(297 - (cuts.y.at(-1) ?? 0), 9);
    expect(Math.min(...cuts.y)).toBeGreaterThan(PAPER_MARGIN_MM);
    expect(place(1, "front").xMm - place(0, "front").xMm - 90).toBeGreaterThanOrEqual(2 * BLEED_MM);
    expect(place(2, "front")).toEqual({ xMm: 12, yMm: (cuts.y[0] ?? 0) + 61 });
  });

  test("have their backs where the fronts are when the sheet is turned on its long edge", () => {
    const { place, perSheet, paperMm } = imposition(CARD);
    for (let i = 0; i < perSheet; i++) {
      expect(place(i, "back").xMm + 90).toBeCloseTo(paperMm.width - place(i, "front").xMm, 9);
      expect(place(i, "back").yMm).toBe(place(i, "front").yMm);
    }
  });

  test("to fold have the back above the front, on one fold", () => {
    const { place, folds } = imposition({ ...CARD, twoSided: false });
    expect(place(0, "front")).toEqual({
      xMm: place(0, "back").xMm,
      yMm: place(0, "back").yMm + 55,
    });
    expect(folds[0]).toBe(place(0, "front").yMm);
  });

  test("a size is refused just where the paper ends", () => {
    expect(imposition({ ...CARD, widthMm: 194 })).toMatchObject({ columns: 1, isLying: false });
    expect(imposition({ ...CARD, widthMm: 194.1 })).toMatchObject({ columns: 1, isLying: true });
    expect(imposition({ ...CARD, widthMm: 281 }).columns).toBe(1);
    expect(() => imposition({ ...CARD, widthMm: 281.1 })).toThrow(
      "card is 281.1 x 55 mm, and A4 holds no such size within its margins of 8 mm",
    );
    expect(() => imposition({ ...CARD, widthMm: NaN })).toThrow("A4 holds no such size");
    expect(imposition({ ...CARD, heightMm: 140.5, twoSided: false }).rows).toBe(1);
    expect(() => imposition({ ...CARD, heightMm: 140.6, twoSided: false })).toThrow(RangeError);
  });
});

describe("a label on a sheet", () => {
  const label = { name: "jar", paper: "A4", twoSided: true } as const;

  test("has the paper lying where it is too wide for it upright: 297 less 16 are 281, 210 less 16 are 194", () => {
    const { paperMm, columns, rows, place } = imposition({ ...label, widthMm: 200, heightMm: 110 });
    expect({ paperMm, columns, rows }).toEqual({
      paperMm: { width: 297, height: 210 },
      columns: 1,
      rows: 1,
    });
    expect(place(0, "front")).toEqual({ xMm: 48.5, yMm: 50 });
  });
  test("has it upright wherever that holds as many", () => {
    const { paperMm } = imposition({ ...label, widthMm: 194, heightMm: 110 });
    expect(paperMm).toEqual({ width: 210, height: 297 });
  });
  test("is refused where neither holds it", () => {
    expect(imposition({ ...label, widthMm: 281, heightMm: 194 }).perSheet).toBe(1);
    for (const [widthMm, heightMm] of [
      [281.1, 110],
      [200, 194.1],
    ] as const)
      expect(() => imposition({ ...label, widthMm, heightMm })).toThrow(
        "within its margins of 8 mm, upright or lying",
      );
  });
});
