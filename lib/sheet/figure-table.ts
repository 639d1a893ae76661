/**
 * The registry of figures, a row for each path pattern, as the sheet declares them. Claims,
 * shortcodes, CSV columns and wording read it.
 */
import { nearestWord } from "../diagnostics/nearest-word.ts";
import type { Declared, FigureForm, Shape } from "./declaration.ts";
import { SHEET, type FigureWord } from "./sheet.ts";

interface Row<W extends string = string> extends FigureForm<W> {
  /** `tints.*.atL.*.b`: a star for what is one of many alike. */
  readonly pattern: string;
  /** The workshop's alone. */
  readonly isPrivate: boolean;
}
export type FigureRow = Row<FigureWord>;

export const FIGURE_TABLE: readonly FigureRow[] = rowsOf(SHEET, [], false) as readonly FigureRow[];

function rowsOf(
  { shape, isPrivate: isItself }: Declared,
  path: readonly string[],
  isWithin: boolean,
): Row[] {
  const isPrivate = isItself || isWithin;
  switch (shape.form) {
    case "figure":
      return [{ pattern: path.join("."), isPrivate, ...shape.figure }];
    case "plain":
      return [];
    case "members":
      return Object.entries(shape.members).flatMap(([key, part]) =>
        rowsOf(part, [...path, key], isPrivate),
      );
    default:
      return rowsOf(shape.member, [...path, "*"], isPrivate);
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

/**
 * Rows of a section's own table, "oil": those that its declaration lists, in its order but where one says after which it
 * stands. What is declared in a list of many alike, as a tint's step, is no row of it.
 * @throws RangeError for a row that is to stand after what is no row.
 */
export function listedRows(section: string): readonly FigureRow[] {
  const rows = LISTED.filter(({ pattern }) => pattern.startsWith(`${section}.`));
  const above = (pattern?: string): FigureRow[] =>
    rows
      .filter(({ listedAfter }) => listedAfter === pattern)
      .flatMap((row) => [row, ...above(row.pattern)]);
  const table = above();
  const lost = rows.find((row) => !table.includes(row));
  if (lost !== undefined)
    throw new RangeError(`${lost.pattern} is to stand after ${lost.listedAfter}, which is no row`);
  return table;
}

/** All of them, by section. */
export const LISTED: readonly FigureRow[] = FIGURE_TABLE.filter(
  ({ isListed, pattern }) => isListed === true && !pattern.includes("*"),
);

/** Whether what stands at a path of a sheet, without the colour, is the workshop's alone; a path that leads nowhere is not. */
export function isPrivatePath(path: string): boolean {
  let at: Declared | undefined = SHEET;
  for (const key of path.split(".")) {
    const shape: Shape = at.shape;
    at =
      shape.form === "members"
        ? Object.hasOwn(shape.members, key)
          ? shape.members[key]
          : undefined
        : shape.form === "list" || shape.form === "map"
          ? shape.member
          : undefined;
    if (at === undefined) return false;
    if (at.isPrivate) return true;
  }
  return false;
}
