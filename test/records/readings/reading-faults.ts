import { expect, test } from "vitest";
import { formatDiagnostic } from "../../../lib/diagnostics/diagnostic.ts";
import {
  parseReadingFile,
  type ReadingColumn,
  type ReadingFile,
} from "../../../lib/records/readings/reading-file.ts";

/** A file with one thing wrong, and the one line it is told in. */
export interface FaultCheck {
  readonly what: string;
  readonly file: string;
  readonly text: string;
  readonly told: string;
}

/** Each file gives its one complaint, word for word, and no reading when that is an error. */
export function checkFaults(checks: readonly FaultCheck[]): void {
  if (checks.length === 0) throw new Error("Unexpected empty table of faults");
  test.each(checks)("$what", ({ file, text, told }) => {
    const { reading, diagnostics } = parseReadingFile(file, text);
    expect(diagnostics.map(formatDiagnostic)).toEqual([told]);
    expect(reading === undefined).toBe(diagnostics[0]?.severity === "error");
  });
}

/** The reading of a sound file; fails with its complaints otherwise. */
export function soundReading(file: string, text: string): ReadingFile {
  const { reading, diagnostics } = parseReadingFile(file, text);
  expect(diagnostics.map(formatDiagnostic)).toEqual([]);
  if (!reading) throw new Error("Unexpected reading `undefined`, expected one");
  return reading;
}

/** A column by its name; fails with the names there are. */
export function columnOf(reading: ReadingFile, name: string): ReadingColumn {
  const column = reading.columns.get(name);
  if (!column)
    throw new Error(
      `Unexpected column \`${name}\`, expected one of ${[...reading.columns.keys()].join(", ")}`,
    );
  return column;
}
