import type { CellView, ColumnView, TableView } from "./views.ts";

/** A cell as a page writes it: its text alone, or with what stands beside that. */
export type Cell = string | CellView;

/** A table as a page writes it: a column of words is its head alone. */
export interface WrittenTable extends Omit<TableView, "columns" | "rows"> {
  readonly columns: readonly (string | ColumnView)[];
  readonly rows: readonly (readonly Cell[])[];
}

/** The finished table of what a page writes. */
export function tableView({ columns, rows, ...said }: WrittenTable): TableView {
  return {
    ...said,
    columns: columns.map((column) => (typeof column === "string" ? { head: column } : column)),
    rows: rows.map((row) => row.map((cell) => (typeof cell === "string" ? { text: cell } : cell))),
  };
}

/** Columns that hold numbers, by their heads. */
export function numberColumns(...heads: readonly string[]): ColumnView[] {
  return heads.map((head) => ({ head, numeric: true }));
}
