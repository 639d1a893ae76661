import { expect, test } from "vitest";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { contentFolder, SMALLEST_WORKSHOP, type RecordTexts } from "../support/content-folder.ts";

/** Records with one thing wrong, put over the smallest sound workshop, and every line that they are told in: one by itself, or several. */
export interface ToldCheck {
  readonly what: string;
  readonly files: RecordTexts;
  readonly told: string | readonly string[];
}

/** Each set of records is told word for word, and yields nothing as soon as there is one error. */
export function checkTold(checks: readonly ToldCheck[]): void {
  if (checks.length === 0) throw new Error("Unexpected empty table of bad records");
  test.each(checks)("$what", ({ files, told }) => {
    const { lines, sound } = toldOf(contentFolder({ ...SMALLEST_WORKSHOP, ...files }));
    const expected = [told].flat();
    expect(lines).toEqual(expected);
    expect(sound).toBe(!expected.some((line) => / error /.test(line)));
  });
}

/** The complaints about a content folder, as printed from where it stands; whether records came of it all the same. */
export function toldOf({ content, home }: { readonly content: string; readonly home: string }): {
  readonly lines: readonly string[];
  readonly sound: boolean;
} {
  const { records, diagnostics } = loadRecords(content, home);
  return { lines: diagnostics.map(formatDiagnostic), sound: records !== undefined };
}
