import { domainError } from "../../diagnostics/diagnostic.ts";
import {
  sameGrid,
  wavelengthNm,
  type Spectrum,
  type WavelengthGrid,
} from "../../quantities/spectrum.ts";
import { at } from "../../quantities/at.ts";

/**
 * Mean of several readings of one drawdown, and how far they lie apart: the
 * sample standard deviation at each wavelength,
 *
 *     s = sqrt(Sum (R - mean)^2 / (n - 1))
 *
 * @param spectra reflectance factors [1], at least one, all on one grid.
 * @returns mean on the same grid; spread [1], shape (grid.count), empty for a
 *   single reading, which has none.
 * @throws RangeError when there is no reading, the grids differ, or a value is NaN or infinite.
 */
export function averaged(spectra: readonly Spectrum[]): {
  readonly mean: Spectrum;
  readonly spread: readonly number[];
} {
  const [first] = spectra;
  if (first === undefined) throw domainError("count of readings", 0, "count >= 1");
  for (const { grid, values } of spectra) {
    if (!sameGrid(grid, first.grid))
      throw new RangeError(
        `The wavelength grid is ${inWords(grid)}; right would be ${inWords(first.grid)}`,
      );
    if (values.length !== grid.count)
      throw domainError(
        "count of reflectance factors",
        values.length,
        `${grid.count}, one a wavelength`,
      );
    values.forEach((value, i) => {
      if (!Number.isFinite(value))
        throw domainError(
          `reflectance factor at ${wavelengthNm(grid, i)} nm`,
          value,
          "a finite number",
        );
    });
  }
  if (spectra.length === 1) return { mean: first, spread: [] };
  const atWavelength = first.values.map((_, i) => spectra.map(({ values }) => at(values, i)));
  const means = atWavelength.map(mean);
  const spread = atWavelength.map(
    (values, i) =>
      Math.hypot(...values.map((value) => value - at(means, i))) / Math.sqrt(values.length - 1),
  );
  return { mean: { grid: first.grid, values: means }, spread };
}

/** Summed as differences from the first: equal readings have exactly their own mean. */
function mean(values: readonly number[]): number {
  const [first = NaN] = values;
  return first + values.reduce((sum, value) => sum + (value - first), 0) / values.length;
}

function inWords(grid: WavelengthGrid): string {
  return `${grid.startNm} nm, step ${grid.stepNm} nm, ${grid.count} wavelengths`;
}
