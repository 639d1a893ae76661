import type { PictogramCode } from "../hazard/classify/hazard-class.ts";
import { LINE_SPACING } from "../hazard/label/label-sizes.ts";
import { PICTOGRAM_SPAN } from "../hazard/label/pictogram-drawings.ts";
import type { Block, BlockTag } from "./mark.ts";
import { pictogramBlock } from "./pictogram-block.ts";
import type { Face } from "./print-font.ts";
import { placedText } from "./set-text.ts";
import { MM_PER_PT, wrappedLines, type Measure } from "./text-lines.ts";

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
  readonly tag?: BlockTag;
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
 * Items down a row of columns, nothing left out.
 * @returns undefined where the columns do not hold them.
 */
export function flowed(
  items: readonly FlowItem[],
  columns: readonly Column[],
  measure: Measure,
): Block[] | undefined {
  const blocks: Block[] = [];
  let at = 0;
  let y: number | undefined;
  for (const item of items) {
    let lines: readonly string[] | undefined;
    for (;;) {
      const column = columns[at];
      if (column === undefined) return undefined;
      const top = y === undefined ? column.topMm : y + item.gapMm;
      if (item.kind === "pictograms") {
        const placed = pictogramRows(item, column, top);
        if (placed !== undefined) {
          blocks.push(...placed.blocks);
          y = placed.bottomMm;
          break;
        }
        if (y === undefined) return undefined;
      } else {
        const setting = {
          face: item.face,
          sizePt: item.sizePt,
          leadingPt: LINE_SPACING * item.sizePt,
        };
        lines ??= wrappedLines(item.text, column.widthMm, setting, measure);
        const room = Math.floor(
          (column.bottomMm - top - item.sizePt * MM_PER_PT) / (setting.leadingPt * MM_PER_PT) +
            1 +
            1e-6,
        );
        const taken =
          item.whole === true && room < lines.length ? [] : lines.slice(0, Math.max(0, room));
        if (taken.length > 0) {
          const placed = placedText({ setting, lines: taken }, column.xMm, top);
          blocks.push({
            tag: item.tag ?? "P",
            ...(item.language === undefined ? {} : { language: item.language }),
            marks: placed.marks,
          });
          y = placed.bottomMm;
          lines = lines.slice(taken.length);
        } else if (y === undefined) return undefined;
        if (lines.length === 0) break;
        // A further column may be of another width.
        lines = wrappedLines(lines.join(" "), columns[at + 1]?.widthMm ?? 1, setting, measure);
      }
      at++;
      y = undefined;
    }
  }
  return blocks;
}

function pictogramRows(
  { pictograms, sideMm }: FlowPictograms,
  { xMm, widthMm, bottomMm }: Column,
  topMm: number,
): { readonly blocks: readonly Block[]; readonly bottomMm: number } | undefined {
  const boxMm = pictogramBoxMm(sideMm);
  const perRow = Math.floor((widthMm + 1e-6) / boxMm);
  if (perRow < 1) return undefined;
  const rows = Math.ceil(pictograms.length / perRow);
  if (topMm + rows * boxMm > bottomMm + 1e-6) return undefined;
  return {
    blocks: pictograms.map(({ code, name }, i) =>
      pictogramBlock(code, name, {
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
