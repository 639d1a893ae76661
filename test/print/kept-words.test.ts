import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { wordsOfRun, type WordsOfRun } from "../../lib/print/kept-words.ts";
import { measuringDocument } from "../../lib/print/print-document.ts";
import { fontBytes } from "../../lib/print/print-font.ts";
import { ownProgram } from "../support/own-program.ts";

const FONT = "serif latin";
const BYTES = fontBytes("serif", "latin");
/** With kerning, ligatures, spaces behind and within, accents. */
const TEXTS = ["office", "AVATAR", "fjord", "Größe", "a", "r ", "L’eau", "½"];
const font = measuringDocument().fonts.font(FONT);

/** What a run keeps that shapes these. */
function kept(run: WordsOfRun, texts: readonly string[]): Uint8Array {
  const words = run.ofFont(FONT, font, BYTES);
  for (const text of texts)
    if (words.kept(text) === undefined) words.shaped(text, font.layoutRun(text));
  return run.toKeep() ?? new Uint8Array();
}

function begunWith(bytes: Uint8Array): WordsOfRun {
  const run = wordsOfRun();
  run.beginWith(bytes);
  return run;
}

test("a word that was kept is, number by number, as the font shapes it anew", () => {
  const words = begunWith(kept(wordsOfRun(), TEXTS)).ofFont(FONT, font, BYTES);
  for (const text of TEXTS) {
    const [before, anew] = [words.kept(text), font.layoutRun(text)];
    expect(before?.advanceWidth).toBe(anew.advanceWidth);
    expect(before?.glyphs).toEqual(anew.glyphs);
    expect(before?.positions).toEqual(anew.positions.map((place) => ({ ...place })));
  }
});

test("words of another font file, or of none, are not taken", () => {
  const run = begunWith(kept(wordsOfRun(), ["linseed"]));
  expect(run.ofFont(FONT, font, BYTES).kept("linseed")).toBeDefined();
  expect(run.ofFont(FONT, font, BYTES.subarray(1)).kept("linseed")).toBeUndefined();
  expect(run.ofFont("serif greek", font, BYTES).kept("linseed")).toBeUndefined();
});

test("where no word is new there is nothing to keep, and what was kept stays beside what is", () => {
  const next = begunWith(kept(wordsOfRun(), ["walnut", "linseed"]));
  expect(kept(next, ["walnut"])).toHaveLength(0);
  const later = begunWith(kept(next, ["walnut", "poppy"]));
  const { kept: known } = later.ofFont(FONT, font, BYTES);
  const found = ["walnut", "linseed", "poppy", "hemp"].map((text) => known(text)?.glyphs.length);
  expect(found).toEqual([6, 7, 5, undefined]);
});

test("of more than 6,000 words those of the newest run stay, used or new", () => {
  const word = font.layoutRun("a");
  const run = begunWith(kept(wordsOfRun(), ["walnut", "linseed"]));
  const words = run.ofFont(FONT, font, BYTES);
  words.kept("linseed");
  for (let i = 1; i < 6_000; i++) words.shaped(`word ${i}`, word);
  const { kept: known } = begunWith(run.toKeep() ?? new Uint8Array()).ofFont(FONT, font, BYTES);
  const found = ["linseed", "word 5999", "walnut"].map((text) => known(text) !== undefined);
  expect(found).toEqual([true, true, false]);
});

test("a document whose words were kept is the same to the last byte, and shapes none anew", () => {
  const folder = mkdtempSync(join(inject("scratch"), "words-"));
  const [document, words] = [join(folder, "printed.pdf"), join(folder, "words")];
  const printed = (): Buffer => {
    const program = ownProgram(join(import.meta.dirname, "printed-sentences.ts"));
    execFileSync(process.execPath, [...program, document, words]);
    return readFileSync(document);
  };
  const anew = printed();
  const { mtimeMs, size } = statSync(words);
  expect(size).toBeGreaterThan(10_000);
  expect(printed().equals(anew)).toBe(true);
  expect(statSync(words).mtimeMs).toBe(mtimeMs);
});
