import { describe, expect, test } from "vitest";
import { PAPER_SIZES } from "../../lib/print/card-size.ts";
import { FITS, laidOutSheet, MARGIN, marginOf } from "../../lib/print/sheet-paper.ts";
import { PRINTS } from "./demonstration-prints.ts";

describe.each(["A4", "Letter"] as const)("every sheet of the demonstration on %s", (name) => {
  const paper = PAPER_SIZES[name];
  const laidOut = PRINTS.sheets.map((sheet) => ({
    slug: sheet.slug,
    layout: laidOutSheet(sheet, paper),
  }));

  /**
   * Lead white's label in four languages, its dry pigment's and the rules of each market take more
   * than half of two pages in letters of 7 point: none of them is left out.
   */
  test("takes one or two pages, but one, whose cautions ask for a third", () => {
    const longer = laidOut.filter(({ layout }) => layout.pages > 2).map(({ slug }) => slug);
    expect(longer).toEqual(["lead-white"]);
    for (const { layout, slug } of laidOut) {
      expect(layout.pages, slug).toBeLessThanOrEqual(3);
      expect(layout.fit.sizePt, slug).toBeGreaterThanOrEqual(7);
    }
    expect(laidOut).toHaveLength(39);
  });

  // Most fits are passed by unlaid: of a few sheets each is looked at by itself.
  test.each([1, 13, 27])("is in the first fit that goes on two pages: number %i", (number) => {
    const [sheet, one] = [PRINTS.sheets[number], laidOut[number]?.layout];
    if (sheet === undefined || one === undefined) throw new RangeError(`no sheet ${number}`);
    const roomier = FITS.slice(0, FITS.indexOf(one.fit));
    expect(roomier.length).toBeGreaterThan(4);
    expect(one.pages).toBe(2);
    for (const fit of roomier)
      expect(laidOutSheet(sheet, paper, [fit]).pages, JSON.stringify(fit)).toBeGreaterThan(2);
  });

  test("has its foot's rule below all text", () => {
    // The rule stands 1.5 mm above the first line of the foot, 5 mm below the common margin.
    for (const { layout, slug } of laidOut)
      expect(marginOf(layout.fit).bottom - (MARGIN.bottom - 5 + 1.5), slug).toBeGreaterThan(1);
  });

  test("keeps everything above the foot of its page, and nothing over anything else", () => {
    for (const { slug, layout } of laidOut) {
      const places = [...layout.placed.values()];
      expect(
        places.filter(
          ({ yMm, piece }) =>
            yMm + piece.heightMm > paper.heightMm - marginOf(layout.fit).bottom + 1e-6,
        ).length,
        slug,
      ).toBe(0);
      const inColumn = new Map<string, number>();
      for (const { page, xMm, yMm, piece } of places) {
        const column = `${page} ${xMm}`;
        expect(yMm, slug).toBeGreaterThanOrEqual((inColumn.get(column) ?? 0) - 1e-6);
        inColumn.set(column, yMm + piece.heightMm);
      }
    }
  });
});
