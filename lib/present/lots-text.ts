import type { LotsSection } from "../sheet/lots/lots-figures.ts";
import type { Words } from "../words/words.ts";

/** Which lots the figures of a sheet are of, which are sold all the same, and which are not to be used. */
export function lotsText(lots: LotsSection, words: Words): string {
  const { describes, conceded } = words.pages.lots;
  return [
    describes(lots.standard, lots.describes),
    ...(lots.conceded ?? []).map(({ number }) => conceded(number)),
    ...recallTexts(lots, words),
  ]
    .filter((text) => text !== "")
    .join(" ");
}

/** A sentence a lot that is recalled. */
export function recallTexts({ recalled = [] }: LotsSection, words: Words): string[] {
  return recalled.map(({ number, since }) => words.pages.lots.recalled(number, words.date(since)));
}
