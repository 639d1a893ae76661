import { beforeAll, describe, expect, test } from "vitest";
import { byFamily } from "../../lib/pages/catalogue-pages.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { PAPER_SIZES } from "../../lib/print/card-size.ts";
import { rangePdf } from "../../lib/print/range-pdf.ts";
import { laidOutSheet } from "../../lib/print/sheet-paper.ts";
import { sheetLeaves } from "../../lib/print/sheet-pdf.ts";
import { pageText, readPdf, solid, type FoundPdf } from "../support/read-pdf.ts";
import { pdfStructure } from "../support/pdf-structure.ts";
import { PRINTS, printOf } from "./demonstration-prints.ts";

const SLUGS = ["titanium-white", "bone-black", "lamp-black", "cobalt-blue", "slate-grey"];

describe("a range of five as one PDF", () => {
  const families = byFamily(PRINTS.context.sheets, "en").flatMap(([family, members]) => {
    const own = members.filter(({ sheet }) => SLUGS.includes(sheet.slug));
    return own.length === 0
      ? []
      : [{ name: ENGLISH.families[family], sheets: own.map(({ sheet }) => printOf(sheet.slug)) }];
  });
  const order = families.flatMap(({ sheets }) => sheets.map(({ sheet }) => sheet.name));
  const drawn = (): Uint8Array =>
    rangePdf(
      families.map(({ name, sheets }) => ({
        name,
        sheets: sheets.map((sheet) => ({
          ...sheet,
          ...sheetLeaves(sheet, PAPER_SIZES.Letter, laidOutSheet(sheet, PAPER_SIZES.Letter)),
        })),
      })),
      PRINTS.context,
      PAPER_SIZES.Letter,
    );
  const bytes = drawn();
  let found: FoundPdf;
  let structure: Awaited<ReturnType<typeof pdfStructure>>;
  beforeAll(async () => {
    found = await readPdf(bytes);
    structure = await pdfStructure(bytes);
  });

  test("numbers its pages through, on US Letter", () => {
    found.pages.forEach((page, i) => {
      expect(solid(pageText(page))).toContain(solid(`${i + 1} of ${found.pages.length}`));
      expect([page.widthPt, page.heightPt].map((pt) => Math.round(pt * 10) / 10)).toEqual([
        612, 792,
      ]);
    });
  });

  test("has every sheet once, by family and name", () => {
    expect(structure.elements.filter(({ role }) => role === "H1").map(({ text }) => text)).toEqual([
      "The range",
      ...order,
    ]);
  });

  test("names in its contents the page on which each begins", () => {
    const contents = structure.elements
      .filter(({ role, page }) => role === "TOCI" && page === 0)
      .map(({ text }) => solid(text));
    const headings = structure.elements.filter(({ role, page }) => role === "H1" && page > 0);
    expect(headings).toHaveLength(SLUGS.length);
    for (const { text, page } of headings)
      expect(
        contents.some((line) => line.startsWith(solid(text)) && line.endsWith(String(page + 1))),
        text,
      ).toBe(true);
  });

  test("gives each its sizes and prices", () => {
    const [first] = found.pages;
    const contents = solid(first === undefined ? "" : pageText(first));
    for (const { sheet } of families.flatMap(({ sheets }) => sheets))
      for (const { text, size = text, price = "" } of sheet.offer) {
        expect(contents, sheet.name).toContain(solid(size));
        expect(contents, sheet.name).toContain(solid(price));
      }
  });

  test("bookmarks contents, families and sheets, each with its page", () => {
    const headings = new Map(
      structure.elements.filter(({ role }) => role === "H1").map(({ text, page }) => [text, page]),
    );
    expect(structure.bookmarks[0]).toMatchObject({ title: "Contents", page: 0, depth: 0 });
    const own = structure.bookmarks.filter(({ depth }) => depth === 1);
    expect(own.map(({ title }) => title)).toEqual(order);
    for (const { title, page } of own) expect(page, title).toBe(headings.get(title));
    const families = structure.bookmarks.filter(({ depth }) => depth === 0).slice(1);
    expect(families.map(({ title }) => title)).toEqual(["Whites", "Blacks", "Blues", "Others"]);
  });

  test("is the same twice", () => {
    expect(Buffer.compare(drawn(), bytes)).toBe(0);
  });
});
