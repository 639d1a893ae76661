import type { PictogramCode } from "../hazard/classify/hazard-class.ts";
import { LINE_SPACING } from "../hazard/label/label-sizes.ts";
import { PICTOGRAM_SPAN } from "../hazard/label/pictogram-drawings.ts";
import { MM_PER_PT, shifted, type PaperTag, type Tagged } from "./mark.ts";
import { pictogramFigure } from "./pictogram-figure.ts";
import { FACE_HEIGHTS, type Face } from "./print-font.ts";
import { setRuns, type SetRuns } from "./set-runs.ts";

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

/**
 * Items down a row of columns of one width, nothing left out.
 * @returns undefined where the columns do not hold them.
 */
export function flowed(
  items: readonly FlowItem[],
  columns: readonly Column[],
): Tagged[] | undefined {
  const elements: Tagged[] = [];
  let at = 0;
  let y: number | undefined;
  for (const item of items) {
    const set = item.kind === "text" ? setText(item, columns[0]?.widthMm ?? 1) : undefined;
    let taken = 0;
    for (;;) {
      const column = columns[at];
      if (column === undefined) return undefined;
      const top = y === undefined ? column.topMm : y + item.gapMm;
      if (item.kind === "pictograms") {
        const placed = pictogramRows(item, column, top);
        if (placed !== undefined) {
          elements.push(...placed.elements);
          y = placed.bottomMm;
          break;
        }
        if (y === undefined) return undefined;
      } else if (set !== undefined) {
        const left = set.lines.length - taken;
        const room = Math.floor(
          (column.bottomMm - top - item.sizePt * MM_PER_PT) / set.lineMm + 1 + 1e-6,
        );
        const count = item.whole === true && room < left ? 0 : Math.max(0, Math.min(room, left));
        if (count > 0) {
          const placed = placedLines(item, set, taken, count, column.xMm, top);
          elements.push(placed.element);
          y = placed.bottomMm;
          taken += count;
        } else if (y === undefined) return undefined;
        if (taken === set.lines.length) break;
      }
      at++;
      y = undefined;
    }
  }
  return elements;
}

function setText({ text, face, sizePt }: FlowText, widthMm: number): SetRuns {
  return setRuns([{ text, face }], { widthMm, sizePt, leading: LINE_SPACING });
}

/** Some lines of a text with the capitals of the first one at a height. */
function placedLines(
  { face, sizePt, tag = "P", language }: FlowText,
  { lines, lineMm }: SetRuns,
  from: number,
  count: number,
  xMm: number,
  topMm: number,
): { readonly element: Tagged; readonly bottomMm: number } {
  const own = lines.slice(from, from + count).flatMap(({ marks }) => marks);
  const { capital, descender } = FACE_HEIGHTS[face];
  const baseline = topMm + capital * sizePt * MM_PER_PT;
  const up = baseline - (own[0]?.yMm ?? baseline);
  return {
    element: {
      tag,
      ...(language === undefined ? {} : { language }),
      marks: own.map((mark) => shifted(mark, xMm, up)),
    },
    bottomMm: baseline + (count - 1) * lineMm + descender * sizePt * MM_PER_PT,
  };
}

function pictogramRows(
  { pictograms, sideMm }: FlowPictograms,
  { xMm, widthMm, bottomMm }: Column,
  topMm: number,
): { readonly elements: readonly Tagged[]; readonly bottomMm: number } | undefined {
  const boxMm = pictogramBoxMm(sideMm);
  const perRow = Math.floor((widthMm + 1e-6) / boxMm);
  if (perRow < 1) return undefined;
  const rows = Math.ceil(pictograms.length / perRow);
  if (topMm + rows * boxMm > bottomMm + 1e-6) return undefined;
  return {
    elements: pictograms.map(({ code, name }, i) =>
      pictogramFigure(code, name, {
        xMm: xMm + (i % perRow) * boxMm,
        yMm: topMm + Math.floor(i / perRow) * boxMm,
        sideMm: boxMm,
      }),
    ),
    bottomMm: topMm + rows * boxMm,
  };
}

/** The upright square [mm] that a diamond of a side stands in, drawn on its point. */
export function pictogramBoxMm(sideMm: number): number {
  return (sideMm * Math.SQRT2) / PICTOGRAM_SPAN;
}
