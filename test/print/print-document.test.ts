import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { drawTagged } from "../../lib/print/draw-tagged.ts";
import type { Tagged } from "../../lib/print/mark.ts";
import {
  addPage,
  measureText,
  printDocument,
  printedBytes,
} from "../../lib/print/print-document.ts";
import { FACES } from "../../lib/print/print-font.ts";
import { ownProgram } from "../support/own-program.ts";
import { dictionaries, labFills, pageText, readPdf } from "../support/read-pdf.ts";

const ELEMENTS: readonly Tagged[] = [
  {
    tag: "H1",
    marks: [{ kind: "text", text: "Łódź sienna", xMm: 10, yMm: 20, face: "serif", sizePt: 12 }],
  },
  {
    tag: "P",
    marks: [
      { kind: "text", text: "Fine office coffee", xMm: 10, yMm: 30, face: "sans", sizePt: 9 },
    ],
  },
  {
    tag: "Figure",
    alt: "a red",
    marks: [
      {
        kind: "box",
        xMm: 10,
        yMm: 40,
        widthMm: 20,
        heightMm: 10,
        ink: { lab: { L: 41.5, a: 60.25, b: -0.125 }, screen: { hex: "#aa0000" } },
      },
    ],
  },
  {
    tag: "Artifact",
    marks: [{ kind: "line", fromMm: [0, 0], toMm: [5, 0], widthPt: 0.25, ink: { grey: 0 } }],
  },
];

function drawn(date: string | undefined, elements = ELEMENTS): Uint8Array {
  const document = printDocument({ title: "Title", author: "Somebody", language: "en-GB", date });
  addPage(document, 210, 297);
  const section = document.pdf.struct("Sect");
  document.pdf.addStructure(section);
  for (const element of elements) drawTagged(document, section, element, { xMm: 0, yMm: 0 });
  section.end();
  return printedBytes(document);
}

describe("a document on paper", () => {
  const bytes = drawn("2026-05-18");

  test("is tagged, titled, in its language and of its size", async () => {
    const found = await readPdf(bytes);
    expect(found).toMatchObject({ title: "Title", language: "en-GB", isTagged: true });
    expect(found.pages).toHaveLength(1);
    expect(found.pages[0]?.widthPt).toBeCloseTo((210 / 25.4) * 72, 3);
    expect(found.pages[0]?.heightPt).toBeCloseTo((297 / 25.4) * 72, 3);
  });

  // A closing quotation mark is drawn of two apostrophes, and the accented letters of their letter and accent.
  test("gives its text back whatever another document drew before, in a run that has read no font yet", async () => {
    const texts = ["\u201cÉ\u201d", "the supplier\u2019s E"];
    const program = join(import.meta.dirname, "first-printed.ts");
    const documents = execFileSync(process.execPath, [...ownProgram(program), ...texts], {
      encoding: "utf8",
    })
      .trimEnd()
      .split("\n");
    const read = await Promise.all(
      documents.map(async (one) => (await readPdf(Buffer.from(one, "base64"))).pages),
    );
    expect(read.map((pages) => pages.map(pageText).join("").trim())).toEqual(texts);
  });

  test("gives its text back, ligatures and letters beyond Latin-1 too, where it was put", async () => {
    const [page] = (await readPdf(bytes)).pages;
    expect(page && pageText(page).replaceAll(" ", "")).toBe("ŁódźsiennaFineofficecoffee");
    expect(page?.texts.find(({ text }) => text.startsWith("Fine"))).toMatchObject({
      x: expect.closeTo((10 / 25.4) * 72, 3) as number,
      y: expect.closeTo(((297 - 30) / 25.4) * 72, 3) as number,
      sizePt: expect.closeTo(9, 3) as number,
    });
  });

  test("fills in Lab with the operands given", async () => {
    const [page] = (await readPdf(bytes)).pages;
    expect(page && labFills(page)).toEqual([{ L: 41.5, a: 60.25, b: -0.125 }]);
    expect(Buffer.from(bytes).toString("latin1").replace(/\s+/g, " ")).toMatch(
      /\[\/Lab << \/WhitePoint \[0\.964\d+ 1 0\.824\d+\] \/Range \[-128 127 -128 127\] >>\]/,
    );
  });

  test("embeds a subset of each font that it uses, and no other", () => {
    const descriptors = dictionaries(bytes, "FontDescriptor");
    expect(descriptors.length).toBe(3);
    for (const descriptor of descriptors) {
      expect(descriptor).toMatch(/\/FontName \/[A-Z]{6}\+Source/);
      expect(descriptor).toMatch(/\/FontFile2 \d+ 0 R/);
    }
  });

  test("says what its sRGB means, by an output intent with a profile", () => {
    expect(dictionaries(bytes, "OutputIntent")).toHaveLength(1);
    expect(dictionaries(bytes, "OutputIntent")[0]).toMatch(/\/DestOutputProfile \d+ 0 R/);
  });

  test("is the same twice, and another with another date only", () => {
    expect(Buffer.compare(drawn("2026-05-18"), bytes)).toBe(0);
    expect(Buffer.compare(drawn("2026-05-19"), bytes)).not.toBe(0);
    expect(Buffer.from(drawn(undefined)).toString("latin1")).toContain("(D:19700101000000Z)");
  });

  test("prints [?] for a letter that no font has, and measures what it prints", async () => {
    const text = "kuro \u9ed2\tsumi";
    const { pages } = await readPdf(
      drawn("2026-05-18", [
        { tag: "P", marks: [{ kind: "text", text, xMm: 0, yMm: 10, face: "sans", sizePt: 9 }] },
      ]),
    );
    expect(pages[0] && pageText(pages[0])).toContain("kuro [?] sumi");
    expect(measureText(text, "sans", 9)).toBe(measureText("kuro [?] sumi", "sans", 9));
  });
});

test("a text is as wide as a reader of the file finds it", async () => {
  const text = "AVAST Tobacco, 1:20 – “fine”";
  for (const face of FACES) {
    const [page] = (
      await readPdf(
        drawn("2026-05-18", [
          { tag: "P", marks: [{ kind: "text", text, xMm: 10, yMm: 20, face, sizePt: 10 }] },
        ]),
      )
    ).pages;
    const width = (page?.texts ?? []).reduce((sum, found) => sum + found.width, 0);
    expect((width / 72) * 25.4, face).toBeCloseTo(measureText(text, face, 10), 1);
  }
});
