import type { Diagnostic } from "../diagnostics/diagnostic.ts";

/** Claims that no longer hold as they are asked to be told: as errors, or as warnings, which let the pages be made. */
export function claimsAs(
  severity: Diagnostic["severity"],
  diagnostics: readonly Diagnostic[],
): readonly Diagnostic[] {
  return diagnostics.map((diagnostic) =>
    diagnostic.rule.startsWith("claims/") ? { ...diagnostic, severity } : diagnostic,
  );
}
