import type { Sheet } from "../sheet/sheet.ts";
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

/** The sheets of a range without their texts: one list, of which what follows is worked out once. */
export const plainSheets = remembered((sheets: readonly SheetTexts[]): readonly Sheet[] =>
  sheets.map(({ sheet }) => sheet),
);

const bySlug = remembered(
  (sheets: readonly SheetTexts[]) =>
    new Map(sheets.map((worded) => [worded.sheet.slug, worded] as const)),
);
