import { formatDiagnostic, type Diagnostic } from "../diagnostics/diagnostic.ts";
import { printedOrder } from "../diagnostics/printed-order.ts";

export function printDiagnostics(diagnostics: readonly Diagnostic[]): void {
  const counts = new Map<string, number>();
  for (const diagnostic of printedOrder(diagnostics)) {
    const kind = `${diagnostic.rule} in ${diagnostic.place.file}`;
    const count = (counts.get(kind) ?? 0) + 1;
    counts.set(kind, count);
    if (count <= MOST_OF_A_KIND) process.stderr.write(`${formatDiagnostic(diagnostic)}\n`);
  }
  for (const [kind, count] of counts)
    if (count > MOST_OF_A_KIND)
      process.stderr.write(
        `and ${(count - MOST_OF_A_KIND).toLocaleString("en-GB")} more of ${kind}\n`,
      );
}

/** Complaints of one rule about one file that are printed; `check --json` has them all. */
const MOST_OF_A_KIND = 40;

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

/** How a command is written, `new colour "Name"`: by npm where npm ran the one that says so, else by the program's name. */
export function asked(form: string): string {
  const [command = "", ...rest] = form.split(" ");
  return process.env["npm_lifecycle_event"] === command
    ? ["npm run", command, "--", ...rest].join(" ")
    : `mullstone ${form}`;
}

/** Why a command did nothing, in one line. @returns its exit code */
export function complaint(sentence: string): number {
  process.stderr.write(`${sentence}\n`);
  return 1;
}

/** A line of what a command did. */
export function say(line: string): void {
  process.stdout.write(`${line}\n`);
}
