import type { TableView } from "../present/views.ts";
import type { Words } from "../words/words.ts";

/** Columns of let-downs step by step, read, predicted or expected. */
export function stepColumns(words: Words): TableView["columns"] {
  const { columns } = words.pages.whites;
  return [
    { head: columns.ratio },
    { head: columns.L, numeric: true },
    { head: columns.a, numeric: true },
    { head: columns.b, numeric: true },
    { head: columns.munsell },
    { head: columns.misfit, unit: "\u0394E00", numeric: true },
  ];
}
