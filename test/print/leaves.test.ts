import { beforeAll, describe, expect, test } from "vitest";
import { boundLeaves } from "../../lib/print/bound-leaves.ts";
import { drawMarks } from "../../lib/print/draw-marks.ts";
import { drawArtifact, drawTagged } from "../../lib/print/draw-tagged.ts";
import { drawnLeaves } from "../../lib/print/drawn-leaves.ts";
import type { Leaves } from "../../lib/print/leaves.ts";
import type { Tagged, TextMark } from "../../lib/print/mark.ts";
import { addPage, printDocument, printedBytes } from "../../lib/print/print-document.ts";
import { pdfStructure } from "../support/pdf-structure.ts";
import { pageText, readPdf, solid } from "../support/read-pdf.ts";

const text = (words: string, face: TextMark["face"] = "serif"): TextMark => ({
  kind: "text",
  text: words,
  xMm: 10,
  yMm: 20,
  face,
  sizePt: 12,
});

/** One page for each text, with a link and a colour in Lab. */
function leavesOf(texts: readonly string[]): Leaves {
  return drawnLeaves({
    language: "en-GB",
    photographs: new Map(),
    added: { text: "1", face: "sans" },
    draw: (document, part) => {
      for (const words of texts) {
        addPage(document, 210, 297);
        const element: Tagged = {
          tag: "P",
          marks: [
            text(words),
            {
              kind: "box",
              xMm: 10,
              yMm: 40,
              widthMm: 20,
              heightMm: 10,
              ink: { lab: { L: 41.5, a: 60.25, b: -0.125 }, screen: { hex: "#aa0000" } },
            },
          ],
          links: [{ href: "https://example.test/", xMm: 10, yMm: 40, widthMm: 20, heightMm: 10 }],
        };
        drawTagged(document, part, element, { xMm: 0, yMm: 0 });
      }
    },
  });
}

/** A document of one page and leaves behind it, with a number on each of their pages. */
function bound(first: string, all: readonly Leaves[]): Uint8Array {
  const document = printDocument(
    { title: "Title", author: "Somebody", language: "en-GB", date: undefined },
    new Map(),
    { wholeFonts: true },
  );
  const root = document.pdf.struct("Document");
  document.pdf.addStructure(root);
  addPage(document, 210, 297);
  drawTagged(document, root, { tag: "H1", marks: [text(first)] }, { xMm: 0, yMm: 0 });
  let number = 1;
  for (const leaves of all)
    boundLeaves(document, root, leaves, () => {
      number += 1;
      drawArtifact(document, () =>
        drawMarks(document, [text(`number ${number}`, "sans")], { xMm: 0, yMm: 100 }),
      );
    });
  root.end();
  return printedBytes(document);
}

/** Two letters that are one glyph, one of another file of the font, and what PDF writes with an escape. */
const TEXTS = ["Fine office coffee (safflower)", "Łódź sienna"];
const LEAVES = leavesOf(TEXTS);
const OTHERS = leavesOf(["Quinacridone"]);

describe.each([
  ["by themselves", bound("First", [LEAVES]), TEXTS],
  ["behind others", bound("Another first", [OTHERS, LEAVES]), ["Quinacridone", ...TEXTS]],
])("leaves bound %s", (_, bytes, texts) => {
  let structure: Awaited<ReturnType<typeof pdfStructure>>;
  beforeAll(async () => {
    structure = await pdfStructure(bytes);
  });

  test("are read as they were drawn, each page with what the document adds", async () => {
    const { pages } = await readPdf(bytes);
    expect(pages.slice(1).map((page) => solid(pageText(page)))).toEqual(
      texts.map((words, i) => solid(`${words} number ${i + 2}`)),
    );
  });

  test("stand in the structure, in order, on their pages", () => {
    expect(
      structure.elements
        .filter(({ role }) => role === "P")
        .map(({ text: words, page }) => [solid(words), page]),
    ).toEqual(texts.map((words, i) => [solid(words), i + 1]));
    expect(structure.links).toEqual(texts.map(() => "https://example.test/"));
  });

  // PDF 32000-1 7.5.4: each entry of the table is the byte at which its object begins.
  test("have each object where the table says", () => {
    const written = Buffer.from(bytes).toString("latin1");
    const table = Number(/startxref\s+(\d+)/.exec(written)?.[1]);
    const entries = [...written.slice(table).matchAll(/^(\d{10}) \d{5} n /gm)];
    expect(entries.length).toBeGreaterThan(20);
    for (const [i, [, at]] of entries.entries())
      expect(written.slice(Number(at)).startsWith(`${i + 1} 0 obj`), `object ${i + 1}`).toBe(true);
    for (const [, number] of written.matchAll(/(\d+) 0 R/g))
      expect(Number(number)).toBeLessThanOrEqual(entries.length);
  });
});

test("leaves are the same whatever was drawn before them", () => {
  expect(leavesOf(TEXTS)).toEqual(LEAVES);
});
