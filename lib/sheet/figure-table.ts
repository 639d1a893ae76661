/**
 * The registry of figures, a row for each path pattern, as the sheet declares them. Claims,
 * shortcodes, CSV columns and wording read it.
 */
import { nearestWord } from "../diagnostics/nearest-word.ts";
import type { Declared, FigureForm } from "./declaration.ts";
import { SHEET, type FigureWord } from "./sheet.ts";

interface Row<W extends string = string> extends FigureForm<W> {
  /** `tints.*.atL.*.b`: a star for what is one of many alike. */
  readonly pattern: string;
}
export type FigureRow = Row<FigureWord>;

export const FIGURE_TABLE: readonly FigureRow[] = rowsOf(SHEET, []) as readonly FigureRow[];

function rowsOf({ shape }: Declared, path: readonly string[]): Row[] {
  switch (shape.form) {
    case "figure":
      return [{ pattern: path.join("."), ...shape.figure }];
    case "plain":
      return [];
    case "members":
      return Object.entries(shape.members).flatMap(([key, part]) => rowsOf(part, [...path, key]));
    default:
      return rowsOf(shape.member, [...path, "*"]);
  }
}

const ROWS = new Map(FIGURE_TABLE.map((entry) => [entry.pattern, entry]));

/** The row of a path pattern. @throws RangeError naming the nearest pattern: a figure must have its row. */
export function figureRow(pattern: string): FigureRow {
  const found = ROWS.get(pattern);
  if (found !== undefined) return found;
  const near = nearestWord(pattern, [...ROWS.keys()]);
  throw new RangeError(
    `The figure is ${pattern}; right would be a row of the figure table${near === undefined ? "" : `; nearest: ${near}`}`,
  );
}
