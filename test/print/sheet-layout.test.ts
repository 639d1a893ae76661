import { describe, expect, test } from "vitest";
import { PAPER_SIZES } from "../../lib/print/card-size.ts";
import { headedPieces, type Piece } from "../../lib/print/layout-tree.ts";
import { FITS, laidOutSheet, MARGIN, marginOf } from "../../lib/print/sheet-paper.ts";
import { PRINTS, printOf } from "./demonstration-prints.ts";

describe.each(["A4", "Letter"] as const)("every sheet of the demonstration on %s", (name) => {
  const paper = PAPER_SIZES[name];
  const laidOut = PRINTS.sheets.map((sheet) => ({
    slug: sheet.slug,
    layout: laidOutSheet(sheet, paper),
  }));

  /** Lead white's label in four languages, its dry pigment's and the rules of each market take half of its two. */
  test("takes one or two pages, in letters that can be read", () => {
    for (const { layout, slug } of laidOut) {
      expect(layout.pages, slug).toBeLessThanOrEqual(2);
      expect(layout.fit.sizePt, slug).toBeGreaterThanOrEqual(7);
    }
    expect(laidOut).toHaveLength(39);
    expect(laidOut.filter(({ layout }) => layout.fit.isSpare).map(({ slug }) => slug)).toEqual([
      "lead-white",
    ]);
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

  // A heading is said of what stands below it, in the same column. Source: practice.
  test("ends no column with a heading, nor with a table whose gaps are told in the next, nor with the part of a paint that stands below a pigment's", () => {
    let parts = 0;
    for (const { slug, layout } of laidOut) {
      const pieces = headedPieces(layout.flow).map(({ piece }) => piece);
      const columnOf = (piece: Piece | undefined): string => {
        const place = piece && layout.placed.get(piece);
        return place === undefined ? "" : `${place.page} ${place.xMm}`;
      };
      pieces.forEach((piece, i) => {
        const { tag, marks = [] } = piece.content;
        const text = marks.map((mark) => (mark.kind === "text" ? mark.text : "")).join("");
        const isPart = /^(the only pigment|single pigment|\d+\u00a0?\s?% of the dry pigment)/i.test(
          text,
        );
        if (isPart) parts++;
        if (text.startsWith("Not stated: ") && pieces[i - 1]?.content.tag === "TR")
          expect(columnOf(pieces[i - 1]), `${slug}, ${text}`).toBe(columnOf(piece));
        if (isPart || tag === "H2" || tag === "H3")
          expect(columnOf(pieces[i + 1]), `${slug}, ${text}`).toBe(columnOf(piece));
      });
    }
    expect(parts).toBeGreaterThan(5);
  });

  /** What English says takes a sixth to a third more in German, French and Spanish. Source: practice. */
  test.each(["lamp-black", "titanium-zinc-white", "umber-ultramarine-black"])(
    "%s, set as tightly as can be, leaves a seventh of its second page to languages with longer words",
    (slug) => {
      const tightest = FITS.slice(-1);
      const { pages, placed, fit } = laidOutSheet(printOf(slug), paper, tightest);
      expect(pages).toBe(2);
      const low = Math.max(
        ...[...placed.values()].map(({ page, yMm, piece }) =>
          page === 1 ? yMm + piece.heightMm : 0,
        ),
      );
      const { top, bottom } = marginOf(fit);
      expect(low - top).toBeLessThan(0.86 * (paper.heightMm - top - bottom));
    },
  );

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
