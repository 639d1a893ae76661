import type { ColumnView } from "./views.ts";

/** Columns that hold words, by their heads. */
export function wordColumns(...heads: readonly string[]): ColumnView[] {
  return heads.map((head) => ({ head }));
}

/** Columns that hold numbers, by their heads. */
export function numberColumns(...heads: readonly string[]): ColumnView[] {
  return heads.map((head) => ({ head, numeric: true }));
}
