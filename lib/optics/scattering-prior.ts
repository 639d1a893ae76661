import type { WavelengthGrid } from "../quantities/spectrum.ts";

/** Width [nm] over which a pigment's scattering counts as nearly the same: far less structure than absorption has. */
const WIDTH_NM = 40;

/**
 * Where a fit expects ln S of a colour: at each wavelength the mean of its
 * neighbours, weighted by how well each knows it and how near it is.
 *
 * Where a colour reflects as its white does, a let-down says nothing of S, and
 * only the neighbours do; where it does say something, they hardly count.
 *
 * @param logScattering ln S, shape (count); `weights` 1/variance of each, >= 0.
 * @returns shape (count); 0 (S as the white's) where nothing is known anywhere.
 */
export function scatteringPrior(grid: WavelengthGrid, logScattering: Float64Array, weights: Float64Array): Float64Array {
  const reach = Math.ceil((3 * WIDTH_NM) / grid.stepNm);
  const kernel = Float64Array.from({ length: reach + 1 }, (_, k) => Math.exp(-(((k * grid.stepNm) / WIDTH_NM) ** 2) / 2));
  return logScattering.map((_, i) => {
    let sum = 0;
    let total = 0;
    for (let m = Math.max(0, i - reach); m <= Math.min(logScattering.length - 1, i + reach); m++) {
      const weight = (kernel[Math.abs(m - i)] ?? 0) * (weights[m] ?? 0);
      sum += weight * (logScattering[m] ?? 0);
      total += weight;
    }
    return total > 0 ? sum / total : 0;
  });
}
