import { loadRecords } from "../../lib/records/load-records.ts";
import type { Records } from "../../lib/records/records.ts";
import { allSheets } from "../../lib/sheet/all-sheets.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";

const { records, diagnostics } = loadRecords("content");
if (records === undefined)
  throw new Error(`Unexpected faults of the demonstration: ${JSON.stringify(diagnostics)}`);

/** The demonstration workshop's records and its sheets, worked out once a test file. */
export const RECORDS: Records = records;
export const SHEETS: readonly Sheet[] = allSheets(records);

/** @throws Error for a colour that the demonstration lacks. */
export function sheetOf(slug: string): Sheet {
  const found = SHEETS.find((sheet) => sheet.slug === slug);
  if (found === undefined) throw new Error(`Unexpected demonstration without ${slug}`);
  return found;
}
