import type { Sheet } from "../../lib/sheet/sheet.ts";
import { RECORDS, sheets } from "../support/demonstration.ts";

export { RECORDS };

/** The demonstration workshop's sheets. */
export const SHEETS: readonly Sheet[] = sheets();

/** @throws Error for a colour that the demonstration lacks. */
export function sheetOf(slug: string): Sheet {
  const found = SHEETS.find((sheet) => sheet.slug === slug);
  if (found === undefined) throw new Error(`Unexpected demonstration without ${slug}`);
  return found;
}
