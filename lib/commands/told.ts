import { formatDiagnostic, type Diagnostic } from "../diagnostics/diagnostic.ts";
import { printedOrder } from "../diagnostics/printed-order.ts";

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
