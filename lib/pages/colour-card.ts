import type { ColourCardView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { rowOf } from "./colour-rows.ts";
import type { PageContext, PagePlace } from "./page-context.ts";

/**
 * One colour in a grid: its swatch, its pigments and its Munsell notation.
 * @param inWhite the white whose tint is shown; else the one that tells most.
 */
export function colourCard(
  worded: SheetTexts,
  context: PageContext,
  { root }: PagePlace,
  inWhite?: string,
): ColourCardView {
  const row = rowOf(worded, context);
  const swatch = inWhite === undefined ? undefined : row.swatchIn[inWhite];
  return {
    ...row.card,
    ...(swatch !== undefined && { swatch }),
    href: `${root}colours/${worded.sheet.slug}/`,
  };
}
