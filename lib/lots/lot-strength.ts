/** Tinting strength of a lot beside its standard, both let down alike in one white. */
import { summationWeights } from "../colorimetry/summation-weights.ts";
import { spectrumLab } from "../colorimetry/spectrum-lab.ts";
import { domainError } from "../diagnostics/diagnostic.ts";
import type { Measurement } from "../optics/fit/measurement.ts";
import { at } from "../quantities/at.ts";
import { sameGrid, wavelengthNm, type WavelengthGrid } from "../quantities/spectrum.ts";
import { differenceParts, type DifferenceParts } from "./difference-parts.ts";
import { absorptionOf, labOfAbsorption, type Bench } from "./let-down-absorption.ts";

export interface LotStrength {
  /** Where the standard absorbs most [%]: 105 is a lot five percent stronger. */
  readonly percent: number;
  readonly strongestNm: number;
  /** The same with K/S weighted by what the eye takes of daylight over all wavelengths [%]. */
  readonly weightedPercent: number;
  /** What would be left of the difference if the lot were let down to the standard's strength. */
  readonly residual: DifferenceParts;
}

/**
 * Relative tinting strength from equal let-downs, the white's own absorption taken off.
 *
 *     strength = 100 (theta_lot - theta_white) / (theta_standard - theta_white),  theta = K/S
 *
 * taken at the wavelength at which the standard absorbs most, and as a ratio of sums weighted by
 * S(D65) (x + y + z) of the 10 degree observer. At equal strength the lot's theta less the white's is
 * divided by the strength, by which of both is said.
 *
 * @param standard, lot let-downs of one mass ratio in one white, films that hide, read alike.
 * @param white the white alone, read alike; without it its K/S is taken as 0.
 * @throws RangeError when the readings are not of one grid and geometry, or the standard's let-down
 *   does not absorb more than the white.
 * @validity Ratios at which K/S is proportional to what colours: let-downs, not masstones.
 * @source iso-787-24, astm-d387 : in spirit, by photometry of one let-down each
 */
export function lotStrength(
  standard: Measurement,
  lot: Measurement,
  white: Measurement | undefined,
  bench: Bench,
): LotStrength {
  for (const reading of [lot, ...(white === undefined ? [] : [white])])
    if (!sameGrid(reading.spectrum.grid, bench.grid) || reading.geometry !== bench.geometry)
      throw new RangeError("The readings are of several grids or geometries; right would be one");
  const own = white === undefined ? undefined : absorptionOf(white, bench.surface);
  const above = (reading: Measurement): number[] =>
    absorptionOf(reading, bench.surface).map((ratio, i) => ratio - (own?.[i] ?? 0));
  const [ofStandard, ofLot] = [above(standard), above(lot)];
  const strongest = ofStandard.indexOf(Math.max(...ofStandard));
  if (!(at(ofStandard, strongest) > 0))
    throw domainError("absorption of the standard's let-down", at(ofStandard, strongest), "> 0");
  const strength = at(ofLot, strongest) / at(ofStandard, strongest);
  const weights = eyeWeights(bench.grid);
  const weighted = weightedSum(ofLot, weights) / weightedSum(ofStandard, weights);
  const atEqual = ofLot.map((ratio, i) => ratio / weighted + (own?.[i] ?? 0));
  return {
    percent: 100 * strength,
    strongestNm: wavelengthNm(bench.grid, strongest),
    weightedPercent: 100 * weighted,
    residual: differenceParts(spectrumLab(standard.spectrum), labOfAbsorption(atEqual, bench)),
  };
}

/** S(D65) (x + y + z) of the 10 degree observer [1], shape (count). */
export function eyeWeights(grid: WavelengthGrid): number[] {
  const { X, Y, Z } = summationWeights(grid, "D65/10");
  return [...X].map((x, i) => x + (Y[i] ?? 0) + (Z[i] ?? 0));
}

function weightedSum(values: readonly number[], weights: readonly number[]): number {
  return values.reduce((sum, value, i) => sum + value * at(weights, i), 0);
}
