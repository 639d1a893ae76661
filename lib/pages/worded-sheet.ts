import { remembered } from "../quantities/remembered.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { PageContext } from "./page-context.ts";

/** The sheet of a colour of the range. */
export function wordedSheet(
  slug: string,
  { sheets }: Pick<PageContext, "sheets">,
): SheetTexts | undefined {
  return bySlug(sheets).get(slug);
}

const bySlug = remembered(
  (sheets: readonly SheetTexts[]) =>
    new Map(sheets.map((worded) => [worded.sheet.slug, worded] as const)),
);
