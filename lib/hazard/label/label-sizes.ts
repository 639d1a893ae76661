/**
 * How large a label, its pictograms and its letters are by the capacity of the package.
 *
 * @source clp-label-sizes : Table 1.3
 * @source clp-letter-sizes : smallest letters
 */
export interface LabelSizes {
  /** Smallest label [mm], the shorter side first. */
  readonly labelMm: readonly [number, number];
  /** Whether the label may be smaller where that size is not possible. */
  readonly labelIfPossible: boolean;
  /** Side of the red frame [mm], not of the upright square that it stands in. */
  readonly pictogramMm: number;
  /** Never below this [mm]; as `pictogramMm` where nothing smaller is allowed. */
  readonly leastPictogramMm: number;
  /** Height of a lower-case x [mm], at least. */
  readonly xHeightMm: number;
}

/** From what day letters have a least height. */
export const LETTERS_FROM = "2028-01-01";

/** Between baselines, as a share of the size of the letters. @source clp-letter-sizes */
export const LINE_SPACING = 1.2;

const LITRE_ML = 1000;

/**
 * Sizes for a package, limits included.
 * @param capacityMl above 0.
 * @throws RangeError for any other.
 */
export function labelSizes(capacityMl: number): LabelSizes {
  if (!(capacityMl > 0))
    throw new RangeError(`The capacity of a package is above 0 ml, and this one is ${capacityMl}`);
  if (capacityMl <= 3 * LITRE_ML)
    return {
      labelMm: [52, 74],
      labelIfPossible: true,
      pictogramMm: 16,
      leastPictogramMm: 10,
      xHeightMm: capacityMl <= 0.5 * LITRE_ML ? 1.2 : 1.4,
    };
  const [labelMm, pictogramMm, xHeightMm] =
    capacityMl <= 50 * LITRE_ML
      ? ([[74, 105], 23, 1.8] as const)
      : capacityMl <= 500 * LITRE_ML
        ? ([[105, 148], 32, 2] as const)
        : ([[148, 210], 46, 2] as const);
  return { labelMm, labelIfPossible: false, pictogramMm, leastPictogramMm: pictogramMm, xHeightMm };
}
