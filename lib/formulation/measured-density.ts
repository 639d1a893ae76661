/** Density of a paint as lots of it were weighed, beside what follows from its parts. */
import { ends, type Quantity } from "../quantities/interval.ts";
import { median } from "../quantities/median.ts";
import type { StatementOf } from "../quantities/statement.ts";
import { requirePositive } from "../quantities/positive.ts";

export interface MeasuredDensity {
  /** Median of the lots [g/cm3]. */
  readonly densityGPerCm3: number;
  /** What one lot differs by from another, as a standard deviation [g/cm3]; absent of a single one. */
  readonly spreadGPerCm3?: number;
}

/** Air that was stirred in, an oil index or a grain's density that is off: which one, the two densities don't tell. */
export type DensityStatement = StatementOf<
  "lots-lighter-than-reckoned" | "lots-heavier-than-reckoned",
  { readonly measuredGPerCm3: number; readonly reckonedGPerCm3: Quantity; readonly lots: number }
>;

/**
 * @param lots density of each lot [g/cm3], > 0.
 * @throws RangeError for no lot, or a density that is not above 0.
 * @example measuredDensity([1.34, 1.35, 1.33]).densityGPerCm3 // 1.34
 */
export function measuredDensity(lots: readonly number[]): MeasuredDensity {
  if (lots.length === 0) throw new RangeError("No lot was weighed; right would be at least one");
  for (const density of lots) requirePositive("density of a lot", density, "g/cm3");
  const densityGPerCm3 = median(lots);
  if (lots.length === 1) return { densityGPerCm3 };
  const mean = lots.reduce((sum, one) => sum + one, 0) / lots.length;
  const squares = lots.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  return { densityGPerCm3, spreadGPerCm3: Math.sqrt(squares / (lots.length - 1)) };
}

/**
 * @param tolerancePercent what a lot's density may differ by [%].
 * @returns undefined where the lots lie within it of what was reckoned, or of the nearer end of an estimate.
 */
export function densityContradiction(
  measuredGPerCm3: number,
  reckonedGPerCm3: Quantity,
  lots: number,
  tolerancePercent: number,
): DensityStatement | undefined {
  const [least, most] = ends(reckonedGPerCm3);
  const isLighter = measuredGPerCm3 < least * (1 - tolerancePercent / 100);
  if (!isLighter && measuredGPerCm3 <= most * (1 + tolerancePercent / 100)) return undefined;
  return {
    rule: isLighter ? "lots-lighter-than-reckoned" : "lots-heavier-than-reckoned",
    values: { measuredGPerCm3, reckonedGPerCm3, lots },
    standing: "derived",
    source: "practice-formulation",
  };
}
