import type { Markup } from "../present/views.ts";
import {
  LINE_HEIGHT,
  onPanel,
  panel,
  pictureWidth,
  TEXT_SIZE,
  writtenPicture,
  type PictureWords,
} from "./picture.ts";
import { refusal } from "./svg.ts";
import { swatchRows, type RowStep } from "./swatch-row.ts";
import { textLines } from "./text-label.ts";
import { wrappedLines } from "./text-width.ts";

export interface SwatchStrip extends PictureWords {
  /** In the order in which they are drawn. */
  readonly steps: readonly RowStep[];
  /** Below: what the labels count, with its unit ("colour : white, paint by mass"). */
  readonly axisLabel: string;
  /** On the hatching where a colour is not known. */
  readonly missing: string;
}

/**
 * Least and greatest width of a swatch and its height [user units]: of let-downs in one white, of thicker
 * and thicker films over one ground, of one paint at several finishes, of several colours under one condition.
 */
const SWATCHES = {
  "ladder-strip": { width: [30, 52], height: 56 },
  "glaze-strip": { width: [30, 52], height: 56 },
  "gloss-strip": { width: [56, 90], height: 64 },
  "colour-strip": { width: [56, 90], height: 72 },
} as const;

const MARGIN = 16;

/**
 * Swatches in a row on one panel, captioned: what was read as full swatches, what was worked out lower and in dashes.
 * @throws RangeError for no steps.
 */
export function swatchStrip(kind: keyof typeof SWATCHES, params: SwatchStrip): Markup {
  const { steps, axisLabel, missing } = params;
  if (steps.length === 0) throw refusal("steps", "none", "at least one");
  const width = pictureWidth(params);
  const axis = wrappedLines(axisLabel, width - 2 * MARGIN);
  const size = { left: MARGIN, width: width - 2 * MARGIN, swatch: SWATCHES[kind] };
  const rows = swatchRows(steps, missing, size, MARGIN);
  const axisTop = rows.bottom + (axis.length > 0 ? 8 : 0);
  const height = Math.ceil(axisTop + axis.length * LINE_HEIGHT + MARGIN - 4);
  return writtenPicture(kind, params, { height }, [
    panel({ left: 0, top: 0, right: width, bottom: height }),
    onPanel([
      ...rows.nodes,
      ...textLines(axis, { x: MARGIN, y: axisTop + TEXT_SIZE }, { role: "axis-label" }),
    ]),
  ]);
}
