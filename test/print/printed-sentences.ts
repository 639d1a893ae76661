/**
 * Prints sentences in every face into one file, beginning with the words of an earlier run where
 * those lie in the other, and keeps there what is new: a program, since the words of a process are
 * of all that it has drawn.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { WORDS } from "../../lib/print/kept-words.ts";
import { addPage, printDocument, printedBytes } from "../../lib/print/print-document.ts";
import { FACES } from "../../lib/print/print-font.ts";

/** Beside what sheets state: kerning, ligatures, accents, letters of other subsets, a word that stands alone. */
const TEXTS = [
  "office AVATAR fjord Größe a r L’eau ½ ΔE*ab ≤ 3 µm Øre Łódź",
  ...readFileSync(join(import.meta.dirname, "../sheet/statements.txt"), "utf8")
    .split("\n")
    .filter((line) => line.trim() !== "")
    .slice(0, 120),
];

const [printed = "", kept = ""] = process.argv.slice(2);
if (existsSync(kept)) WORDS.beginWith(readFileSync(kept));
writeFileSync(printed, printedSentences());
const toKeep = WORDS.toKeep();
if (toKeep !== undefined) writeFileSync(kept, toKeep);

function printedSentences(): Uint8Array {
  const document = printDocument({ title: "", author: "", language: "en", date: undefined });
  for (const face of FACES) {
    addPage(document, 400, 400);
    for (const [line, text] of TEXTS.entries()) {
      let xPt = 20;
      for (const { text: part, font } of document.runs(text, face)) {
        const set = document.pdf.font(font);
        set.text(part, xPt, 5 * (line + 1), { lineBreak: false });
        xPt += set.widthOfString(part);
      }
    }
  }
  return printedBytes(document);
}
