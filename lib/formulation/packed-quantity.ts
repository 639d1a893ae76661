/** How far what a package holds may fall short of what is written on it. */
import { domainError } from "../diagnostics/diagnostic.ts";
import { heldMassG } from "./container-fill.ts";

/** Of nominal contents up to and with so much [ml], as a share of them [1] or in all [ml]. */
const SHORTFALLS: readonly (
  { readonly toMl: number; readonly share: number } | { readonly toMl: number; readonly ml: number }
)[] = [
  { toMl: 50, share: 0.09 },
  { toMl: 100, ml: 4.5 },
  { toMl: 200, share: 0.045 },
  { toMl: 300, ml: 9 },
  { toMl: 500, share: 0.03 },
  { toMl: 1_000, ml: 15 },
  { toMl: 10_000, share: 0.015 },
];

/** Nominal contents that the table reaches [ml], both included. */
const PACKED_REACH_ML = [5, 10_000] as const;

/** Whether the law of packages speaks of so much [ml]. */
export function isPackedSize(ml: number): boolean {
  const [least, most] = PACKED_REACH_ML;
  return ml >= least && ml <= most;
}

/** Below this, mass and density as they are weighed do not tell volumes apart [ml]. Our own choice. */
const WEIGHED_TO_ML = 0.05;

/** Whether packages hold less on the mean [ml] than stands on them [ml]. */
export function isShort(heldMl: number, nominalMl: number): boolean {
  return heldMl < nominalMl - WEIGHED_TO_ML;
}

/**
 * Tolerable negative error T of a package by its nominal contents Qn [ml]; what is reckoned as a
 * share is rounded up to a tenth.
 * @param nominalMl Qn [ml], 5 to 10 000.
 * @throws RangeError for any other.
 * @source packed-quantity-76-211-eec Annex I, 2.4
 * @example tolerableShortfallMl(40) // 3.6
 */
export function tolerableShortfallMl(nominalMl: number): number {
  const [least, most] = PACKED_REACH_ML;
  if (!(nominalMl >= least && nominalMl <= most))
    throw domainError("contents of a package", nominalMl, `${least} <= Qn <= ${most} ml`);
  const row = SHORTFALLS.find(({ toMl }) => nominalMl <= toMl);
  if (row === undefined || "ml" in row) return row?.ml ?? 0;
  // Rounded up, but not for the sake of a last binary digit.
  return Math.ceil(Number((10 * row.share * nominalMl).toFixed(6))) / 10;
}

/** What packages of one size have to hold [g], of a filling of a density. */
export interface PackedMasses {
  readonly shortfallMl: number;
  /** On the mean of a lot. */
  readonly meanG: number;
  /** What all but few hold. */
  readonly fewBelowG: number;
  /** What every one holds. */
  readonly noneBelowG: number;
}

/**
 * The three rules of packages of equal nominal contents: on the mean no less than these, few short
 * by more than T, none by more than 2 T.
 * @param nominalMl Qn [ml], 5 to 10 000.
 * @param densityGPerCm3 of the filling at 20 degrees C [g/cm3], above 0.
 * @throws RangeError for any other.
 * @source packed-quantity-76-211-eec Annex I, 1 and 2
 */
export function packedMasses(nominalMl: number, densityGPerCm3: number): PackedMasses {
  const shortfallMl = tolerableShortfallMl(nominalMl);
  const heldG = (ml: number): number => heldMassG(ml, densityGPerCm3);
  return {
    shortfallMl,
    meanG: heldG(nominalMl),
    fewBelowG: heldG(nominalMl - shortfallMl),
    noneBelowG: heldG(nominalMl - 2 * shortfallMl),
  };
}
