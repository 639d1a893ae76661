import type { Face } from "./print-font.ts";

/** Width of a text in a face at a size [mm]: of the fonts that are embedded. */
export type Measure = (text: string, face: Face, sizePt: number) => number;

export const MM_PER_PT = 25.4 / 72;

/** How a text is set. */
export interface Setting {
  readonly face: Face;
  readonly sizePt: number;
  /** From baseline to baseline [pt]. */
  readonly leadingPt: number;
}

/** After spaces, and after a hyphen inside a word. */
const WORD_ENDS = /(?<= )(?! )|(?<=[^ ]-)(?=\p{L})/u;

/**
 * A text in lines no wider than given, broken at spaces and after hyphens. A word wider than a whole line is broken where it fills one: nothing is
 * left out and nothing sticks out.
 */
export function wrappedLines(
  text: string,
  widthMm: number,
  { face, sizePt }: Pick<Setting, "face" | "sizePt">,
  measure: Measure,
): string[] {
  const width = (piece: string): number => measure(piece, face, sizePt);
  const room = widthMm + 1e-9;
  const lines: string[] = [];
  let line = "",
    taken = 0;
  const end = (): void => {
    if (line.trim() !== "") lines.push(line.trimEnd());
    line = "";
    taken = 0;
  };
  const add = (piece: string): void => {
    line += piece;
    taken += width(piece);
  };
  for (const word of text.split(WORD_ENDS)) {
    const bare = width(word.trimEnd());
    if (taken + bare > room) end();
    if (bare <= room) {
      add(word);
      continue;
    }
    for (const letter of word) {
      if (taken + width(letter.trimEnd()) > room) end();
      add(letter);
    }
  }
  end();
  return lines;
}

/** The same number of lines, as even as they go: no word is left alone on the last one where another can join it. */
export function balancedLines(
  text: string,
  widthMm: number,
  setting: Pick<Setting, "face" | "sizePt">,
  measure: Measure,
): string[] {
  const lines = wrappedLines(text, widthMm, setting, measure);
  if (lines.length < 2) return lines;
  let [low, high] = [widthMm / lines.length, widthMm];
  for (let step = 0; step < 7; step++) {
    const middle = (low + high) / 2;
    if (wrappedLines(text, middle, setting, measure).length > lines.length) low = middle;
    else high = middle;
  }
  return wrappedLines(text, high, setting, measure);
}

/** Lines with the setting that they came out in. */
export interface SetText {
  readonly setting: Setting;
  readonly lines: readonly string[];
}

/** Sizes of one text, the wanted one first, none below its floor. */
export type Settings = readonly [Setting, ...Setting[]];

/** The first setting in which a text takes no more lines than `most`; past the floor it takes as many as it needs. */
export function fittedText(
  text: string,
  widthMm: number,
  most: number,
  settings: Settings,
  measure: Measure,
): SetText {
  for (const setting of settings) {
    const lines = wrappedLines(text, widthMm, setting, measure);
    if (lines.length <= most) return { setting, lines };
  }
  const setting = settings.at(-1) ?? settings[0];
  return { setting, lines: wrappedLines(text, widthMm, setting, measure) };
}

/** Settings from a size down to its floor by half points, the leading in proportion. */
export function shrinking(face: Face, sizePt: number, floorPt: number, leading: number): Settings {
  const sizes = Array.from(
    { length: Math.max(0, Math.floor((sizePt - floorPt) * 2)) },
    (_, i) => sizePt - (i + 1) / 2,
  );
  return [
    sizePt,
    ...sizes,
    ...(sizes.at(-1) === floorPt || sizePt <= floorPt ? [] : [floorPt]),
  ].map((size) => ({ face, sizePt: size, leadingPt: size * leading })) as unknown as Settings;
}
