import { formatDiagnostic, type Diagnostic } from "../diagnostics/diagnostic.ts";
import { printedOrder } from "../diagnostics/printed-order.ts";
import { loadRecords } from "../records/load-records.ts";
import { hazardNotes } from "../site/hazard-notes.ts";
import { latestDate } from "../site/printed-date.ts";
import { claimsAs } from "../site/claim-severity.ts";
import { workedSite } from "../site/site-context.ts";
import { theoryCacheOf } from "../site/theory-cache.ts";
import type { CommandOptions } from "./command-line.ts";

/**
 * Check the records, the sheets against them and the answers against the sheets; write nothing.
 * @param asJson print the diagnostics as one JSON array, for editors, and nothing else.
 */
export function check(
  { contentDir, date, strict, claims }: CommandOptions,
  asJson = false,
): number {
  const started = performance.now();
  const {
    records,
    diagnostics: told,
    notes: noted,
  } = loadRecords(contentDir, process.cwd(), latestDate(date));
  const worked =
    records === undefined
      ? undefined
      : workedSite(records, undefined, theoryCacheOf(contentDir, false));
  const notes =
    records === undefined || worked === undefined
      ? []
      : hazardNotes(
          worked.published.map(({ worded: { sheet } }) => sheet),
          records,
        );
  const diagnostics = [...told, ...claimsAs(claims, worked?.diagnostics ?? []), ...noted, ...notes];
  if (asJson) {
    process.stdout.write(`${JSON.stringify(printedOrder(diagnostics), null, 2)}\n`);
    return exitCode(diagnostics, strict);
  }
  printDiagnostics(diagnostics);
  const answers =
    records === undefined || records.answers.size === 0
      ? ""
      : `, ${counted(records.answers.size, "answer")}`;
  const colours = records === undefined ? "no sheets" : counted(records.colours.size, "colour");
  process.stdout.write(`${colours}${answers}, ${tally(diagnostics)}, ${seconds(started)}\n`);
  return exitCode(diagnostics, strict);
}

export function printDiagnostics(diagnostics: readonly Diagnostic[]): void {
  for (const diagnostic of printedOrder(diagnostics))
    process.stderr.write(`${formatDiagnostic(diagnostic)}\n`);
}

export function exitCode(diagnostics: readonly Diagnostic[], strict: boolean): number {
  return diagnostics.some(
    ({ severity }) => severity === "error" || (strict && severity === "warning"),
  )
    ? 1
    : 0;
}

/** "2 errors, 1 warning, 3 notes"; warnings always, the others where there are any. */
export function tally(diagnostics: readonly Diagnostic[]): string {
  const errors = diagnostics.filter(({ severity }) => severity === "error").length;
  const notes = diagnostics.filter(({ severity }) => severity === "note").length;
  return [
    ...(errors === 0 ? [] : [counted(errors, "error")]),
    counted(diagnostics.length - errors - notes, "warning"),
    ...(notes === 0 ? [] : [counted(notes, "note")]),
  ].join(", ");
}

export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

export function seconds(started: number): string {
  return `${((performance.now() - started) / 1000).toFixed(1)} s`;
}
