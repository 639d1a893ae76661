import PDFDocument from "pdfkit";
import { describe, expect, test } from "vitest";
import { documentFonts, type EmbeddedFont } from "../../lib/print/document-fonts.ts";
import { FACES, fontBytes, type Face } from "../../lib/print/print-font.ts";

/** A font as pdfkit itself opens it. */
function byPdfkit(face: Face): EmbeddedFont {
  const pdf = new PDFDocument();
  pdf.registerFont("own", fontBytes(face, "latin"));
  return (pdf.font("own") as unknown as { readonly _font: EmbeddedFont })._font;
}

/** Kerned and joined, with spaces in every place, and none. */
const TEXTS = [
  "",
  " ",
  "Vat",
  "Fine office coffee, AV To Ty.",
  " before and behind ",
  "two  spaces   and more",
  "L* 41.5, a* 60.3, ΔE00 0.30",
];

describe.each(FACES)("texts in %s", (face) => {
  test.each(TEXTS)(
    "%j has the glyphs, places and width that pdfkit gives it, time after time",
    (text) => {
      const own = documentFonts(new PDFDocument({ font: "" }), false).font(`${face} latin`);
      const expected = byPdfkit(face).layout(text, undefined);
      const ids = ({ glyphs = [] }: ReturnType<EmbeddedFont["layout"]>): unknown[] =>
        glyphs.map((glyph) => (glyph as { readonly id: number }).id);
      for (const onlyWidth of [true, false, true]) {
        const laid = own.layout(text, undefined, onlyWidth);
        expect(laid.advanceWidth).toBeCloseTo(expected.advanceWidth, 9);
        if (onlyWidth) continue;
        expect(ids(laid)).toEqual(ids(expected));
        expect(laid.positions).toEqual(expected.positions);
      }
    },
  );
});
