import { PAPER_SIZES } from "./card-size.ts";
import { imposition } from "./imposition.ts";
import type { PackageSize } from "./package-size.ts";

/** Where labels of a size lie on a sheet of paper. */
export interface LabelSheet {
  readonly paperMm: { readonly width: number; readonly height: number };
  readonly perSheet: number;
  /** Top left corner of a place, counted along the rows [mm]. */
  readonly place: (index: number) => { readonly xMm: number; readonly yMm: number };
  /** Colour reaches so far beyond a label [mm]. */
  readonly bleedMm: number;
  /** Where a knife goes [mm]; none of labels that are cut already. */
  readonly cuts?: { readonly x: readonly number[]; readonly y: readonly number[] };
}

/** Beyond a label that is cut already, where the gutter leaves room for it [mm]. */
const MOST_BLEED_MM = 1;
const MARKED_BLEED_MM = 3;

/**
 * The workshop's own sheet of labels cut beforehand, or as many as the paper holds, to be cut along marks.
 * @throws RangeError where the paper does not hold them.
 */
export function labelSheet(size: PackageSize): LabelSheet {
  const { name, widthMm, heightMm, paper, sheet } = size;
  const { widthMm: width, heightMm: height } = PAPER_SIZES[paper];
  const paperMm = { width, height };
  if (sheet === undefined) {
    const laid = imposition({ name, widthMm, heightMm, paper, twoSided: true });
    const { perSheet, place, cuts } = laid;
    return {
      paperMm: laid.paperMm,
      perSheet,
      place: (index) => place(index, "front"),
      bleedMm: MARKED_BLEED_MM,
      cuts,
    };
  }
  const { columns, rows, leftMm, topMm, gutterXMm = 0, gutterYMm = 0 } = sheet;
  const rightMm = leftMm + columns * widthMm + (columns - 1) * gutterXMm;
  const bottomMm = topMm + rows * heightMm + (rows - 1) * gutterYMm;
  if (rightMm > width + 0.5 || bottomMm > height + 0.5)
    throw new RangeError(
      `The sheet of the label ${name} reaches ${tenth(rightMm)} x ${tenth(bottomMm)} mm from its top left corner, and ${paper} is ${width} x ${height} mm`,
    );
  return {
    paperMm,
    perSheet: columns * rows,
    place: (index) => ({
      xMm: leftMm + (index % columns) * (widthMm + gutterXMm),
      yMm: topMm + Math.floor(index / columns) * (heightMm + gutterYMm),
    }),
    bleedMm: Math.min(MOST_BLEED_MM, gutterXMm / 2, gutterYMm / 2),
  };
}

function tenth(mm: number): number {
  return Math.round(mm * 10) / 10;
}
