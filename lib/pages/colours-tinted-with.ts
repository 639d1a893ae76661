import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** The colours that were let down in a white, by name. */
export function coloursLetDownIn(white: string, sheets: readonly SheetTexts[]): Sheet[] {
  return sheets
    .map(({ sheet }) => sheet)
    .filter(({ tints }) => tints.some((tint) => tint.white.slug === white))
    .sort((one, other) => (one.name < other.name ? -1 : 1));
}
