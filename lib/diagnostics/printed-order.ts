import type { Diagnostic } from "./diagnostic.ts";

const WEIGHTS: Readonly<Record<Diagnostic["severity"], number>> = { note: 0, warning: 1, error: 2 };

/** Notes, then warnings, then errors, each in the order given: what must be mended stands last, above the count. */
export function printedOrder(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  return diagnostics.toSorted((one, other) => WEIGHTS[one.severity] - WEIGHTS[other.severity]);
}
