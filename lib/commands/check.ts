import { formatDiagnostic, type Diagnostic } from "../diagnostics/diagnostic.ts";
import { ENGLISH } from "../present/words/en/english.ts";
import { loadRecords } from "../records/load-records.ts";
import { allSheets } from "../sheet/all-sheets.ts";
import { hazardNotes } from "../site/hazard-notes.ts";
import { sheetWarnings } from "../site/sheet-warnings.ts";
import type { CommandOptions } from "./command-line.ts";

/** Check the records, and the sheets against them; write nothing. */
export function check({ contentDir, strict }: CommandOptions): number {
  const started = performance.now();
  const { records, diagnostics: told } = loadRecords(contentDir);
  const sheets = records === undefined ? [] : allSheets(records);
  const diagnostics = records === undefined ? told : [...told, ...sheetWarnings(sheets, records, ENGLISH), ...hazardNotes(sheets, records)];
  printDiagnostics(diagnostics);
  const colours = records === undefined ? "no sheets" : counted(records.colours.size, "colour");
  process.stdout.write(`${colours}, ${tally(diagnostics)}, ${seconds(started)}\n`);
  return exitCode(diagnostics, strict);
}

export function printDiagnostics(diagnostics: readonly Diagnostic[]): void {
  for (const diagnostic of diagnostics) process.stderr.write(`${formatDiagnostic(diagnostic)}\n`);
}

export function exitCode(diagnostics: readonly Diagnostic[], strict: boolean): number {
  return diagnostics.some(({ severity }) => severity === "error" || (strict && severity === "warning")) ? 1 : 0;
}

/** "2 errors, 1 warning, 3 notes"; warnings always, the others where there are any. */
export function tally(diagnostics: readonly Diagnostic[]): string {
  const errors = diagnostics.filter(({ severity }) => severity === "error").length;
  const notes = diagnostics.filter(({ severity }) => severity === "note").length;
  return [
    ...(errors === 0 ? [] : [counted(errors, "error")]), counted(diagnostics.length - errors - notes, "warning"), ...(notes === 0 ? [] : [counted(notes, "note")]),
  ].join(", ");
}

export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

export function seconds(started: number): string {
  return `${((performance.now() - started) / 1000).toFixed(1)} s`;
}
