import { describe, expect, test } from "vitest";
import { PAPER_SIZES } from "../../lib/print/card-size.ts";
import { laidOutSheet, MARGIN } from "../../lib/print/sheet-paper.ts";
import { PRINTS } from "./demonstration-prints.ts";

describe.each(["A4", "Letter"] as const)("every sheet of the demonstration on %s", (name) => {
  const paper = PAPER_SIZES[name];
  const laidOut = PRINTS.sheets.map((sheet) => ({
    slug: sheet.slug,
    layout: laidOutSheet(sheet, paper),
  }));

  test("takes one or two pages, and hardly ever a third", () => {
    const longer = laidOut.filter(({ layout }) => layout.pages > 2).map(({ slug }) => slug);
    expect(longer).toContain("lead-white");
    // Its cautions in four languages and its dry pigment's: of the others two pages of A4 hold all.
    if (name === "A4") expect(longer).toEqual(["lead-white"]);
    expect(longer.length, `of three pages: ${longer.join(", ")}`).toBeLessThanOrEqual(
      laidOut.length / 9,
    );
    for (const { layout, slug } of laidOut) {
      expect(layout.pages, slug).toBeLessThanOrEqual(3);
      expect(layout.fit.sizePt, slug).toBeGreaterThanOrEqual(7);
    }
    expect(laidOut).toHaveLength(39);
  });

  test("keeps everything above the foot of its page, and nothing over anything else", () => {
    for (const { slug, layout } of laidOut) {
      const places = [...layout.placed.values()];
      expect(
        places.filter(
          ({ yMm, piece }) => yMm + piece.heightMm > paper.heightMm - MARGIN.bottom + 1e-6,
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
