import { describe, expect, test } from "vitest";
import { PAPER_SIZES } from "../../lib/print/card-size.ts";
import { printDocument, printedBytes } from "../../lib/print/print-document.ts";
import { pagesWithFoot } from "../../lib/print/sheet-pdf.ts";
import { readPdf } from "../support/read-pdf.ts";

/** Heights [pt] at which lines of a foot stand on a page, each once, from the top on. */
async function linesOf(texts: readonly string[]): Promise<readonly number[]> {
  const document = printDocument({ title: "", author: "", language: "de", date: undefined });
  pagesWithFoot(document, PAPER_SIZES.A4, { lines: texts })(0);
  const [page] = (await readPdf(printedBytes(document))).pages;
  return [...new Set((page?.texts ?? []).map(({ y }) => Math.round(y)))].toSorted((a, b) => b - a);
}

const LONG = Array.from({ length: 20 }, (_, i) => `Charge ${i + 1}`).join(", ");

describe("the foot of a page on paper", () => {
  test("has a line for each text", async () => {
    expect(await linesOf(["Vorsicht.", "Fassung."])).toHaveLength(2);
  });

  test("does not print over a text that takes two lines", async () => {
    expect(await linesOf([LONG, "Fassung."])).toHaveLength(3);
  });
});
