import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { z } from "zod";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestHint } from "../diagnostics/nearest-word.ts";
import { BIBLIOGRAPHY } from "../sources/bibliography.ts";
import { csvTable } from "./csv-table.ts";
import type { RowStanding } from "./cells.ts";
import type { SaidColumn } from "./said-words.ts";
import { tableFault, type WrittenRow } from "./written-table.ts";
import { yamlTable } from "./yaml-table.ts";
import type { SourceKey } from "../sources/source.ts";

/** What every row says beside its own matter. */
export interface EvidencedRow {
  readonly source: SourceKey;
  readonly standing: RowStanding;
}

/** A table of what is known, kept as CSV or YAML beside the science that goes by it. */
export interface TableForm<Row extends EvidencedRow> {
  /** From lib/: "formulation/density.csv", or .yaml. */
  readonly file: string;
  /** What a row must hold; `evidence` of cells.ts is part of it. */
  readonly row: z.ZodType<Row>;
  /** What a row is looked up by: no two rows have one name. */
  readonly names: (row: Row) => readonly string[];
  /** The closed list that the table has a row of each for. */
  readonly all?: readonly string[];
  /** What a row speaks of, where that is pigments: names and classes of pigments.csv. */
  readonly pigments?: (row: Row) => readonly string[];
  /** Columns whose English is said in each language. */
  readonly said?: readonly SaidColumn[];
}

export type RowOf<Form> = Form extends TableForm<infer Row> ? Row : never;

/** Rows in the order of the file. */
export interface LoadedTable<Row> {
  readonly rows: readonly Row[];
  /** Where a cell of each of the rows is written, in their order. */
  readonly places: readonly WrittenRow["place"][];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Read a table and hold each row against its form.
 * @param libDir the folder that `form.file` lies in.
 * @returns the good rows, and a complaint at its line for each cell out of reach or
 *   missing, each column that the form lacks, each second row of one name,
 *   each row called published whose source was never read, and each name of a closed
 *   list that has no row.
 */
export function loadedTable<Row extends EvidencedRow>(
  form: TableForm<Row>,
  libDir: string,
): LoadedTable<Row> {
  const file = `lib/${form.file}`;
  const text = readFileSync(join(libDir, form.file), "utf8");
  const written = form.file.endsWith(".csv") ? csvTable(file, text) : yamlTable(file, text);
  const diagnostics = [...written.diagnostics];
  const rows: Row[] = [];
  const places: WrittenRow["place"][] = [];
  const lineOf = new Map<string, number>();
  for (const row of written.rows) {
    const result = form.row.safeParse(row.cells, { reportInput: true });
    if (!result.success) {
      diagnostics.push(...result.error.issues.flatMap((issue) => faults(issue, row)));
      continue;
    }
    diagnostics.push(
      ...unread(result.data, row),
      ...repeated(form.names(result.data), row, lineOf),
    );
    rows.push(result.data);
    places.push(row.place);
  }
  return { rows, places, diagnostics: [...diagnostics, ...missing(form, rows, file, diagnostics)] };
}

/** Nothing is missed while a row has faults: it may be that row. */
function missing<Row extends EvidencedRow>(
  { all = [], names }: TableForm<Row>,
  rows: readonly Row[],
  file: string,
  faulty: readonly Diagnostic[],
): Diagnostic[] {
  if (faulty.length > 0) return [];
  const present = new Set(rows.flatMap(names));
  return all
    .filter((name) => !present.has(name))
    .map((name) =>
      tableFault(
        { file, line: 1, column: 1, path: "" },
        { subject: "table", actual: `no row for ${name}`, expected: `a row for ${all.join(", ")}` },
      ),
    );
}

function faults(issue: z.core.$ZodIssue, row: WrittenRow): Diagnostic[] {
  if (issue.code === "unrecognized_keys")
    return issue.keys.map((key) =>
      tableFault(row.place(key), {
        subject: "column",
        actual: key,
        expected: "a column of this table",
      }),
    );
  const [column, inner] = issue.path;
  if (issue.code === "invalid_key")
    return [
      tableFault(row.place(String(column)), {
        subject: String(column),
        actual: String(inner),
        expected: issue.issues[0]?.message ?? issue.message,
      }),
    ];
  const subject = typeof column === "string" ? column : "row";
  const cell = row.cells[subject];
  const allowed =
    issue.code === "invalid_value"
      ? issue.values.map(String)
      : subject === "source"
        ? Object.keys(BIBLIOGRAPHY)
        : [];
  return [
    tableFault(row.place(subject), {
      subject,
      actual: printed(cell),
      expected:
        issue.code === "invalid_value"
          ? allowed.join(" | ")
          : cell === undefined
            ? "a value in each row"
            : issue.message,
      hint: typeof issue.input === "string" ? nearestHint(issue.input, allowed) : undefined,
    }),
  ];
}

function printed(cell: unknown): string {
  return cell === undefined ? "nothing" : typeof cell === "string" ? cell : JSON.stringify(cell);
}

function unread({ source, standing }: EvidencedRow, row: WrittenRow): Diagnostic[] {
  if (standing !== "published" || BIBLIOGRAPHY[source]?.standing === "read") return [];
  return [
    tableFault(row.place("standing"), {
      subject: "standing",
      actual: standing,
      expected: `memory, derived or practice: ${source} was not read`,
    }),
  ];
}

function repeated(
  names: readonly string[],
  row: WrittenRow,
  lineOf: Map<string, number>,
): Diagnostic[] {
  const { line } = row.place();
  return names.flatMap((name) => {
    const first = lineOf.get(name);
    if (first === undefined) {
      lineOf.set(name, line);
      return [];
    }
    return [
      tableFault(row.place(), {
        subject: "second row",
        actual: name,
        expected: `one row, which is on line ${first}`,
      }),
    ];
  });
}
