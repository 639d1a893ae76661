import type { WavelengthGrid } from "../../quantities/spectrum.ts";

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
export function scatteringPrior(
  grid: WavelengthGrid,
  logScattering: Float64Array,
  weights: Float64Array,
): Float64Array {
  const kernel = nearness(grid.stepNm);
  const reach = kernel.length - 1;
  const prior = new Float64Array(logScattering.length);
  for (let i = 0; i < prior.length; i++) {
    const last = Math.min(prior.length - 1, i + reach);
    let sum = 0;
    let total = 0;
    for (let m = Math.max(0, i - reach); m <= last; m++) {
      const weight = (kernel[m < i ? i - m : m - i] ?? 0) * (weights[m] ?? 0);
      sum += weight * (logScattering[m] ?? 0);
      total += weight;
    }
    prior[i] = total > 0 ? sum / total : 0;
  }
  return prior;
}

/** Weight of a neighbour by how many steps it is away, kept by step: a fit asks for it with every let-down that it leaves out. */
const KERNELS = new Map<number, Float64Array>();

function nearness(stepNm: number): Float64Array {
  const kept = KERNELS.get(stepNm);
  if (kept !== undefined) return kept;
  const kernel = Float64Array.from({ length: Math.ceil((3 * WIDTH_NM) / stepNm) + 1 }, (_, k) =>
    Math.exp(-(((k * stepNm) / WIDTH_NM) ** 2) / 2),
  );
  KERNELS.set(stepNm, kernel);
  return kernel;
}
