import { beforeEach, expect, test, vi } from "vitest";
import type { EmbeddedFont } from "../../lib/print/document-fonts.ts";
import type * as KeptWords from "../../lib/print/kept-words.ts";
import type * as Print from "../../lib/print/print-document.ts";
import { fontBytes } from "../../lib/print/print-font.ts";

const FONT = "serif latin";
const BYTES = fontBytes("serif", "latin");
/** With kerning, ligatures, spaces behind and within, accents. */
const TEXTS = ["office", "AVATAR", "fjord", "Größe", "a", "r ", "L’eau", "½"];

interface Run {
  readonly words: typeof KeptWords;
  readonly print: typeof Print;
  readonly font: () => EmbeddedFont;
}

/** The program as it is begun, with nothing known yet. */
async function begun(): Promise<Run> {
  vi.resetModules();
  const [words, print] = [
    await import("../../lib/print/kept-words.ts"),
    await import("../../lib/print/print-document.ts"),
  ];
  const font = (): EmbeddedFont => print.measuringDocument().fonts.font(FONT);
  return { words, print, font };
}

let first: Run;
let next: Run;
beforeEach(async () => {
  first = await begun();
  next = await begun();
});

/** What a run keeps that shapes these. */
function kept({ words, font }: Run, texts: readonly string[]): Uint8Array {
  for (const text of texts) font().layoutCached(text);
  return words.wordsToKeep() ?? new Uint8Array();
}

test("a word that was kept is, number by number, as the font shapes it anew", () => {
  next.words.beginWithWords(kept(first, TEXTS));
  const font = next.font();
  const layoutRun = vi.spyOn(font, "layoutRun");
  const before = TEXTS.map((text): KeptWords.ShapedWord => font.layoutCached(text));
  expect(layoutRun).not.toHaveBeenCalled();
  layoutRun.mockRestore();
  for (const [i, text] of TEXTS.entries()) {
    const anew = font.layoutRun(text);
    expect(before[i]?.advanceWidth).toBe(anew.advanceWidth);
    expect(before[i]?.glyphs).toEqual(anew.glyphs);
    expect(before[i]?.positions).toEqual(anew.positions.map((place) => ({ ...place })));
  }
});

test("words of another font file, or of none, are not taken", () => {
  const { words, font } = next;
  words.beginWithWords(kept(first, ["linseed"]));
  const own = font();
  expect(words.wordsOfFont(FONT, own, BYTES).kept("linseed")).toBeDefined();
  expect(words.wordsOfFont(FONT, own, BYTES.subarray(1)).kept("linseed")).toBeUndefined();
  expect(words.wordsOfFont("serif greek", own, BYTES).kept("linseed")).toBeUndefined();
});

test("where no word is new there is nothing to keep, and what was kept stays beside what is", async () => {
  next.words.beginWithWords(kept(first, ["walnut", "linseed"]));
  next.font().layoutCached("walnut");
  expect(next.words.wordsToKeep()).toBeUndefined();
  const later = await begun();
  later.words.beginWithWords(kept(next, ["poppy"]));
  const { kept: known } = later.words.wordsOfFont(FONT, later.font(), BYTES);
  const found = ["walnut", "linseed", "poppy", "hemp"].map((text) => known(text)?.glyphs.length);
  expect(found).toEqual([6, 7, 5, undefined]);
});

test("a document whose words were kept is the same to the last byte", () => {
  const printed = ({ print }: Run): Uint8Array => {
    const document = print.printDocument({
      title: "",
      author: "",
      language: "en",
      date: undefined,
    });
    print.addPage(document, 100, 100);
    for (const { text, font } of document.runs(TEXTS.join(" "), "serif"))
      document.pdf.font(font).text(text, 20, 20, { lineBreak: false });
    return print.printedBytes(document);
  };
  const anew = printed(first);
  const keptBytes = kept(first, []);
  expect(keptBytes.length).toBeGreaterThan(100);
  next.words.beginWithWords(keptBytes);
  expect(Buffer.from(printed(next)).equals(anew)).toBe(true);
  expect(next.words.wordsToKeep()).toBeUndefined();
});
