import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { at } from "../../lib/quantities/at.ts";
import type { Records } from "../../lib/records/records.ts";
import { allSheets } from "../../lib/sheet/all-sheets.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";
import { contentFolder, type RecordTexts } from "./content-folder.ts";

/** Records that are read without an error; with one the test that asks for them fails, and says what was told. */
export function soundRecords(files: RecordTexts, today?: string): Records {
  const { content, home } = contentFolder(files);
  const { records, diagnostics } = loadRecords(content, home, today);
  if (records === undefined) throw new Error(diagnostics.map(formatDiagnostic).join("\n"));
  return records;
}

/** The first sheet of such records: of the one colour that they have. */
export function soundSheet(files: RecordTexts): Sheet {
  return at(allSheets(soundRecords(files)), 0);
}
