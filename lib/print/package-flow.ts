import type { PictogramCode } from "../hazard/classify/hazard-class.ts";
import { LINE_SPACING } from "../hazard/label/label-sizes.ts";
import { PICTOGRAM_SPAN } from "../hazard/label/pictogram-drawings.ts";
import { at, certain } from "../quantities/at.ts";
import type { Piece } from "./layout-tree.ts";
import { marksOf, MM_PER_PT, movedTo, shifted, type PaperTag, type Tagged } from "./mark.ts";
import { placedPieces } from "./paper-columns.ts";
import { pictogramFigure } from "./pictogram-figure.ts";
import { FACE_HEIGHTS, type Face } from "./print-font.ts";
import { setRuns } from "./set-runs.ts";

/** Where text runs down [mm]. */
export interface Column {
  readonly xMm: number;
  readonly topMm: number;
  readonly widthMm: number;
  readonly bottomMm: number;
}

/** A paragraph, with what stays clear above it unless it begins a column [mm]. */
export interface FlowText {
  readonly kind: "text";
  readonly text: string;
  readonly face: Face;
  readonly sizePt: number;
  readonly gapMm: number;
  readonly tag?: PaperTag;
  readonly language?: string;
  /** Broken between two columns only where it is long. */
  readonly whole?: boolean;
}

/** Pictograms in rows, by the side of their red frames [mm]. */
export interface FlowPictograms {
  readonly kind: "pictograms";
  readonly pictograms: readonly { readonly code: PictogramCode; readonly name: string }[];
  readonly sideMm: number;
  readonly gapMm: number;
}

export type FlowItem = FlowText | FlowPictograms;

const EPSILON_MM = 1e-6;

/**
 * Items down a row of columns of one width, nothing left out.
 * @returns undefined where the columns do not hold them.
 */
export function flowed(
  items: readonly FlowItem[],
  columns: readonly Column[],
): Tagged[] | undefined {
  const last = columns.at(-1);
  if (last === undefined) return undefined;
  const pieces = items.map((item) =>
    item.kind === "text" ? linePieces(item, last.widthMm) : pictogramPieces(item, last.widthMm),
  );
  // A page is a column here: past the last one, what does not fit is told by its number.
  const placed = placedPieces(pieces.flat(), (page) => ({ ...(columns[page] ?? last), page }));
  const overflows = placed.some(({ piece, page, yMm }) => {
    const column = columns[page];
    return column === undefined || yMm + piece.heightMm > column.bottomMm + EPSILON_MM;
  });
  if (overflows) return undefined;
  const stands = new Map(placed.map(({ piece, xMm, yMm }) => [piece, { xMm, yMm }]));
  const contents = (own: readonly Piece[]): Tagged[] =>
    own.map((piece) => {
      const { xMm, yMm } = certain(stands.get(piece));
      return movedTo(piece.content, xMm, yMm);
    });
  return items.flatMap((item, i): readonly Tagged[] => {
    const set = contents(at(pieces, i));
    return item.kind === "text"
      ? [paragraphOf(item, set)]
      : set.flatMap(({ children = [] }) => children);
  });
}

/** Lines of a text, the capitals of the first one in a column at its top. */
function linePieces(
  { text, face, sizePt, gapMm, whole = false }: FlowText,
  widthMm: number,
): Piece[] {
  const { lines, lineMm } = setRuns([{ text, face }], { widthMm, sizePt, leading: LINE_SPACING });
  const { capital, descender } = FACE_HEIGHTS[face];
  const capitalMm = capital * sizePt * MM_PER_PT;
  const heightMm = capitalMm + descender * sizePt * MM_PER_PT;
  return lines.map(({ marks }, i): Piece => ({
    kind: "piece",
    heightMm,
    beforeMm: i === 0 ? gapMm : lineMm - heightMm,
    keepWithNext: whole && i < lines.length - 1,
    content: {
      tag: "P",
      marks: marks.map((mark) => shifted(mark, 0, capitalMm - mark.yMm)),
    },
  }));
}

/** Lines as the one paragraph that they are read as. */
function paragraphOf({ tag = "P", language }: FlowText, lines: readonly Tagged[]): Tagged {
  return {
    tag,
    ...(language === undefined ? {} : { language }),
    marks: lines.flatMap(marksOf),
  };
}

/** All rows together; of a column too narrow for one, higher than any column. */
function pictogramPieces({ pictograms, sideMm, gapMm }: FlowPictograms, widthMm: number): Piece[] {
  const boxMm = pictogramBoxMm(sideMm);
  const perRow = Math.floor((widthMm + EPSILON_MM) / boxMm);
  return [
    {
      kind: "piece",
      heightMm: perRow < 1 ? Infinity : Math.ceil(pictograms.length / perRow) * boxMm,
      beforeMm: gapMm,
      content: {
        tag: "Div",
        children: pictograms.map(({ code, name }, i) =>
          pictogramFigure(code, name, {
            xMm: (i % perRow) * boxMm,
            yMm: Math.floor(i / perRow) * boxMm,
            sideMm: boxMm,
          }),
        ),
      },
    },
  ];
}

/** The upright square [mm] that a diamond of a side stands in, drawn on its point. */
export function pictogramBoxMm(sideMm: number): number {
  return (sideMm * Math.SQRT2) / PICTOGRAM_SPAN;
}
