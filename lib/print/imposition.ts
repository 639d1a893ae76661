import { BLEED_MM } from "./card-plan.ts";
import { PAPER_SIZES, type CardSize } from "./card-size.ts";

/** Between two cards, so that each keeps its own bleed [mm]. */
export const GUTTER_MM = 2 * BLEED_MM;
/** What no office printer reaches, kept free of cards and for crop marks [mm]. */
export const PAPER_MARGIN_MM = 8;

/** Where cards of a size lie on a sheet of paper. */
export interface Imposition {
  readonly paperMm: { readonly width: number; readonly height: number };
  /** Whether the paper lies: then its long edge is above, and a back stands on its head there, so that a card turned sideways is read. */
  readonly isLying: boolean;
  readonly columns: number;
  readonly rows: number;
  readonly perSheet: number;
  /** Top left corner of the cut of a place, counted along the rows [mm]; of a back the mirror of its front's. */
  readonly place: (
    index: number,
    side: "front" | "back",
  ) => { readonly xMm: number; readonly yMm: number };
  /** Where a knife goes, and where a fold is [mm]. */
  readonly cuts: { readonly x: readonly number[]; readonly y: readonly number[] };
  readonly folds: readonly number[];
}

/**
 * As many as the paper holds, upright or, where it holds more of them so, lying; in its middle,
 * so that backs turned on the long edge fall on their fronts. Folded cards take two heights: the
 * back above, head down.
 * @throws RangeError when the paper does not hold one.
 */
export function imposition({
  name,
  widthMm,
  heightMm,
  paper,
  twoSided,
}: Pick<CardSize, "name" | "widthMm" | "heightMm" | "paper" | "twoSided">): Imposition {
  const tall = twoSided ? heightMm : 2 * heightMm;
  const upright = PAPER_SIZES[paper];
  const lying = { widthMm: upright.heightMm, heightMm: upright.widthMm };
  const isLying = heldCount(lying, widthMm, tall) > heldCount(upright, widthMm, tall);
  const sheet = isLying ? lying : upright;
  const { columns, rows } = held(sheet, widthMm, tall);
  if (heldCount(sheet, widthMm, tall) < 1)
    throw new RangeError(
      `${name} is ${widthMm} x ${tall} mm, and ${paper} holds no such size within its margins of ${PAPER_MARGIN_MM} mm, upright or lying`,
    );
  const left = (sheet.widthMm - columns * widthMm - (columns - 1) * GUTTER_MM) / 2;
  const top = (sheet.heightMm - rows * tall - (rows - 1) * GUTTER_MM) / 2;
  const xs = Array.from({ length: columns }, (_, i) => left + i * (widthMm + GUTTER_MM));
  const ys = Array.from({ length: rows }, (_, i) => top + i * (tall + GUTTER_MM));
  return {
    paperMm: { width: sheet.widthMm, height: sheet.heightMm },
    isLying,
    columns,
    rows,
    perSheet: columns * rows,
    place: (index, side) => {
      const column = index % columns;
      const row = Math.floor(index / columns);
      const y = ys[row] ?? top;
      if (side === "front") return { xMm: xs[column] ?? left, yMm: twoSided ? y : y + heightMm };
      if (!twoSided) return { xMm: xs[column] ?? left, yMm: y };
      return isLying
        ? { xMm: xs[column] ?? left, yMm: ys[rows - 1 - row] ?? top }
        : { xMm: xs[columns - 1 - column] ?? left, yMm: y };
    },
    cuts: { x: xs.flatMap((x) => [x, x + widthMm]), y: ys.flatMap((y) => [y, y + tall]) },
    folds: twoSided ? [] : ys.map((y) => y + heightMm),
  };
}

/** Whether a sheet of paper, upright or lying, bears one of a size within its margins. */
export function imposesOn(paper: CardSize["paper"], widthMm: number, heightMm: number): boolean {
  const { widthMm: across, heightMm: down } = PAPER_SIZES[paper];
  return [
    { widthMm: across, heightMm: down },
    { widthMm: down, heightMm: across },
  ].some((sheet) => heldCount(sheet, widthMm, heightMm) >= 1);
}

/** The longest that a sheet of paper bears within its margins [mm]. */
export function longestOn(paper: CardSize["paper"]): number {
  const { widthMm, heightMm } = PAPER_SIZES[paper];
  return Math.max(widthMm, heightMm) - 2 * PAPER_MARGIN_MM;
}

/** How many of a size paper holds within its margins. */
function heldCount(
  sheet: { readonly widthMm: number; readonly heightMm: number },
  widthMm: number,
  heightMm: number,
): number {
  const { columns, rows } = held(sheet, widthMm, heightMm);
  return columns > 0 && rows > 0 ? columns * rows : 0;
}

/** In columns and rows. */
function held(
  sheet: { readonly widthMm: number; readonly heightMm: number },
  widthMm: number,
  heightMm: number,
): Pick<Imposition, "columns" | "rows"> {
  const along = (paperMm: number, mm: number): number =>
    Math.floor((paperMm - 2 * PAPER_MARGIN_MM + GUTTER_MM) / (mm + GUTTER_MM));
  return { columns: along(sheet.widthMm, widthMm), rows: along(sheet.heightMm, heightMm) };
}
