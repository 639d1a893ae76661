import type { Diagnostic } from "../diagnostics/diagnostic.ts";

/** A complaint about a file as a whole: it stands at its first line. */
export function fileFault(file: string, fault: Omit<Diagnostic, "place">): Diagnostic {
  return { ...fault, place: { file, line: 1, column: 1, path: "" } };
}
