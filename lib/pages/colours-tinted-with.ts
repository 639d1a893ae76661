import { remembered } from "../quantities/remembered.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { slugOrder } from "../quantities/name-order.ts";

/** The colours that were let down in a white, in the order of the range. */
export function coloursLetDownIn(white: string, sheets: readonly SheetTexts[]): readonly Sheet[] {
  return letDowns(sheets).get(white) ?? [];
}

const letDowns = remembered((all: readonly SheetTexts[]): ReadonlyMap<string, readonly Sheet[]> => {
  const found = new Map<string, Sheet[]>();
  for (const { sheet } of all)
    for (const white of new Set(sheet.tints.map((tint) => tint.white.slug))) {
      const colours = found.get(white) ?? [];
      colours.push(sheet);
      found.set(white, colours);
    }
  return found;
});

/** Whites that any colour was let down in, the most used first: on every page in the same order. */
export const whitesLetDownWith = remembered((sheets: readonly SheetTexts[]): readonly string[] => {
  const uses = new Map<string, number>();
  for (const { white } of sheets.flatMap(({ sheet }) => sheet.tints))
    uses.set(white.slug, (uses.get(white.slug) ?? 0) + 1);
  return [...uses]
    .toSorted(([one, often], [other, seldom]) => seldom - often || slugOrder(one, other))
    .map(([slug]) => slug);
});
