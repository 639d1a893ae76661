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
  /** Below: what the labels count, with its unit ("colour : white, paint by mass"). */
  readonly axisLabel: string;
  /** On the hatching where a colour is not known. */
  readonly missing: string;
}

const MARGIN = 16;

/** Swatches in a row on one panel, captioned: the shape that ladders, glazes and finishes share. */
export function writtenSwatchStrip(
  kind: string,
  words: SwatchStrip,
  steps: readonly RowStep[],
  swatchSize: { readonly width: readonly [number, number]; readonly height: number },
): string {
  if (steps.length === 0) throw refusal("steps", "none", "at least one");
  const width = pictureWidth(words);
  const axis = wrappedLines(words.axisLabel, width - 2 * MARGIN, TEXT_SIZE);
  const size = {
    left: MARGIN,
    width: width - 2 * MARGIN,
    swatchWidth: swatchSize.width,
    swatchHeight: swatchSize.height,
  };
  const rows = swatchRows(steps, words.missing, size, MARGIN);
  const axisTop = rows.bottom + (axis.length > 0 ? 8 : 0);
  const height = Math.ceil(axisTop + axis.length * LINE_HEIGHT + MARGIN - 4);
  return writtenPicture(kind, words, { width, height }, [
    panel({ left: 0, top: 0, right: width, bottom: height }),
    onPanel([
      ...rows.nodes,
      ...textLines(axis, { x: MARGIN, y: axisTop + TEXT_SIZE }, { role: "axis-label" }),
    ]),
  ]);
}
