import type { CellView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { rowOf } from "./colour-rows.ts";
import type { PageContext, PagePlace } from "./page-context.ts";

/** A colour's name, the way to its sheet, and its swatch where it has one. */
export function colourCell(
  worded: SheetTexts,
  context: PageContext,
  { root }: PagePlace,
): CellView {
  const { name, slug } = worded.sheet;
  return {
    text: name,
    href: `${root}colours/${slug}/`,
    swatch: rowOf(worded, context).swatch,
  };
}
