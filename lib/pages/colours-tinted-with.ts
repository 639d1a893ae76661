import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** The colours that were let down in a white, by name. */
export function coloursLetDownIn(white: string, sheets: readonly SheetTexts[]): Sheet[] {
  return sheets
    .map(({ sheet }) => sheet)
    .filter(({ tints }) => tints.some((tint) => tint.white.slug === white))
    .sort((one, other) => (one.name < other.name ? -1 : 1));
}

/** Whites that any colour was let down in, the most used first: on every page in the same order. */
export function whitesLetDownWith(sheets: readonly SheetTexts[]): string[] {
  const uses = new Map<string, number>();
  for (const { white } of sheets.flatMap(({ sheet }) => sheet.tints))
    uses.set(white.slug, (uses.get(white.slug) ?? 0) + 1);
  return [...uses]
    .toSorted(([one, often], [other, seldom]) => seldom - often || (one < other ? -1 : 1))
    .map(([slug]) => slug);
}
