import { TEXT_SIZE } from "./picture.ts";

/**
 * Advance widths [em] of a common sans, by letter: those of Helvetica in its published
 * font metrics, slightly wide for narrower faces, so that a label that fits here fits on the page.
 */
const WIDTHS_EM: readonly (readonly [number, string])[] = [
  [0.222, "ijl'`|‘’"],
  [0.278, "ftI .,:;/!\\\u00a0\u2009\u202f[]·"],
  [0.333, 'r()-“”"„'],
  [0.5, "ckvsxyzJ"],
  [0.556, "Labdeghnopqu0123456789?_#$£€–"],
  [0.584, "+<>=~−×±≤≥"],
  [0.611, "FTZ"],
  [0.667, "ABEKPSVXY&"],
  [0.722, "CDHNRUw"],
  [0.778, "GOQ"],
  [0.833, "mM"],
  [0.944, "W"],
  [0.889, "%"],
  [1, "—…@"],
  [0.389, "*°"],
];
const LETTERS = new Map(
  WIDTHS_EM.flatMap(([width, letters]) =>
    Array.from(letters, (letter) => [letter, width] as const),
  ),
);
/** A letter of another script; ideographs and kana fill their square. */
const OTHER_EM = 0.6;
/** What is drawn over the letter before it. */
const MARK = /\p{M}/u;
const WIDE = /[\u1100-\u115f\u2e80-\u9fff\ua960-\ua97f\uac00-\ud7ff\uf900-\ufaff\uff00-\uff60]/;

type Weight = "normal" | "bold";

/** About how wide a text is drawn [user units]; accents take no width, bold about 6 % more. */
export function textWidth(text: string, weight: Weight = "normal"): number {
  let em = 0;
  for (const letter of text.normalize("NFD")) {
    const known = LETTERS.get(letter);
    if (known !== undefined) em += known;
    else if (!MARK.test(letter)) em += WIDE.test(letter) ? 1 : OTHER_EM;
  }
  return em * TEXT_SIZE * (weight === "bold" ? 1.06 : 1);
}

/** How wide the widest of some texts is drawn [user units]; 0 for none. */
export function widestWidth(texts: readonly string[]): number {
  return Math.max(0, ...texts.map((text) => textWidth(text)));
}

/** A text that is no wider than `width`, its end cut off where it would be. */
export function shortened(text: string, width: number): string {
  if (textWidth(text) <= width) return text;
  const letters = Array.from(text);
  let count = letters.length;
  while (count > 1 && textWidth(`${letters.slice(0, count).join("")}…`) > width) count -= 1;
  return `${letters.slice(0, count).join("").trimEnd()}…`;
}

/** A text broken at spaces and after hyphens into lines no wider than `width`; a longer word keeps a line of its own. */
export function wrappedLines(text: string, width: number, weight: Weight = "normal"): string[] {
  const lines: string[] = [];
  for (const part of text.split(/(?<=[ \n-])/)) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth((last + part).trimEnd(), weight) <= width)
      lines[lines.length - 1] = last + part;
    else lines.push(part);
  }
  return lines.map((line) => line.trim()).filter((line) => line !== "");
}
