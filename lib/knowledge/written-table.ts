import type { Diagnostic } from "../diagnostics/diagnostic.ts";

export type Place = Diagnostic["place"];

/** One row as written, before it is checked. */
export interface WrittenRow {
  /** What stands under each column; an empty cell has no key. */
  readonly cells: Readonly<Record<string, unknown>>;
  /** Where the cell of a column stands, or the row where it has none. */
  readonly place: (column?: string) => Place;
}

/** The rows of one file, or the complaints why there are none. */
export interface WrittenTable {
  readonly rows: readonly WrittenRow[];
  readonly diagnostics: readonly Diagnostic[];
}

/** What is wrong with which part of a table, and what would be right. */
export interface TableFault {
  readonly subject: string;
  readonly actual: string;
  readonly expected: string;
  readonly hint?: string | undefined;
}

/** A fault of a table's file; like a fault in a record, it stops a build. */
export function tableFault(
  place: Place,
  { subject, actual, expected, hint }: TableFault,
): Diagnostic {
  return {
    severity: "error",
    rule: "knowledge/table",
    place,
    message: `The ${subject} is ${actual}; right would be ${expected}`,
    actual,
    expected,
    hint,
  };
}
