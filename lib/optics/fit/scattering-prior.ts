import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import type { FilmScattering } from "./film-scattering.ts";

/** Width [nm] over which a pigment's scattering counts as nearly the same: far less structure than absorption has. */
const WIDTH_NM = 40;

/** What a fit expects of ln S, and how far it may be from it; shape (count) each. */
export interface ScatteringPrior {
  readonly logScattering: Float64Array;
  readonly sigma: Float64Array;
  /** The same of the level of S: what neighbours share is told by none of them. */
  readonly levelSigma: Float64Array;
}

/**
 * Spread of ln S about its neighbours' mean: films of measured oil paints show .07, and twice that is
 * taken, since a film tells S only where it lets its ground through.
 * @source reconstructed-oil-paints
 */
const NEIGHBOURS_SIGMA = 0.15;
/** Spread of the level of S that is expected before any drawdown: a factor of 2.2 either way. */
const LEVEL_SIGMA = 0.8;
/** Spread of ln S in a mixture about what a film of the colour alone tells. */
const FILM_SIGMA = 0.1;
/** What let-downs of one weighing share. */
const LET_DOWNS_SIGMA = 0.1;

/**
 * Where a fit expects ln S of a colour: where its film over black and white tells it,
 * there; else at the mean of its neighbours, weighted by how well each knows it and
 * how near it is.
 *
 * Where a colour reflects as its white does, a let-down says nothing of S, and
 * only film and neighbours do; where it does say something, they hardly count.
 *
 * @param logScattering ln S by the let-downs, shape (count); `weights` 1/variance of each, >= 0.
 * @param film S by its own film, its scale set by the let-downs as far as they tell it.
 * @param width how many times as wide as measured paints ask for [1], > 0.
 */
export function scatteringPrior(
  grid: WavelengthGrid,
  logScattering: Float64Array,
  weights: Float64Array,
  film?: FilmScattering,
  width = 1,
): ScatteringPrior {
  const [neighboursSigma, filmSigma] = [width * NEIGHBOURS_SIGMA, width * FILM_SIGMA];
  const sigma = new Float64Array(grid.count).fill(neighboursSigma);
  const levelSigma = new Float64Array(grid.count).fill(LEVEL_SIGMA);
  if (film === undefined)
    return { logScattering: smoothed(grid, logScattering, weights), sigma, levelSigma };
  const scale = scaleOfFilm(film, logScattering, weights);
  const [both, bothWeights] = [new Float64Array(grid.count), new Float64Array(grid.count)];
  for (let i = 0; i < grid.count; i++) {
    const told = (film.logScattering[i] ?? NaN) + scale;
    const weight = told === told ? 1 / ((film.sigma[i] ?? NaN) ** 2 + filmSigma ** 2) : 0;
    const own = weights[i] ?? 0;
    bothWeights[i] = weight + own;
    both[i] =
      weight + own > 0
        ? ((weight > 0 ? weight * told : 0) + own * (logScattering[i] ?? NaN)) / (weight + own)
        : 0;
  }
  const prior = smoothed(grid, both, bothWeights);
  for (let i = 0; i < grid.count; i++) {
    const told = (film.logScattering[i] ?? NaN) + scale;
    if (!(told === told)) continue;
    prior[i] = told;
    const ofFilm = Math.hypot(film.sigma[i] ?? NaN, filmSigma);
    sigma[i] = Math.min(ofFilm, neighboursSigma);
    levelSigma[i] = Math.min(Math.hypot(ofFilm, film.scaleSigma), LEVEL_SIGMA);
  }
  return { logScattering: prior, sigma, levelSigma };
}

/** By how much let-downs lift a film's ln S at all wavelengths alike: densities and thicknesses are known only so far. */
function scaleOfFilm(
  film: FilmScattering,
  logScattering: Float64Array,
  weights: Float64Array,
): number {
  let [sum, total] = [0, 0];
  for (let i = 0; i < weights.length; i++) {
    const told = film.logScattering[i] ?? NaN;
    if (!(told === told) || !((weights[i] ?? 0) > 0)) continue;
    const weight = 1 / (1 / (weights[i] ?? NaN) + (film.sigma[i] ?? NaN) ** 2);
    sum += weight * ((logScattering[i] ?? NaN) - told);
    total += weight;
  }
  if (!(total > 0)) return 0;
  const own = 1 / (LET_DOWNS_SIGMA ** 2 + 1 / total);
  return ((sum / total) * own) / (own + 1 / film.scaleSigma ** 2);
}

/**
 * Lines through near neighbours, each read at its own wavelength: at the ends of the spectrum a mean
 * would lean toward the middle. Their slope is drawn toward 0, the more the closer the neighbours
 * stand together.
 * @param values shape (count); `weights` of each, >= 0: a value of weight 0 is not looked at.
 * @returns shape (count); `untold` where nothing near is known, which for ln S is S as the white's.
 */
export function smoothed(
  grid: WavelengthGrid,
  values: Float64Array,
  weights: Float64Array,
  untold = 0,
): Float64Array {
  const kernel = nearness(grid.stepNm);
  const reach = kernel.length - 1;
  const told = new Float64Array(values.length).fill(untold);
  for (let i = 0; i < told.length; i++) {
    const last = Math.min(told.length - 1, i + reach);
    let [total, byX, byXX, byY, byXY] = [0, 0, 0, 0, 0];
    for (let m = Math.max(0, i - reach); m <= last; m++) {
      const weight = (kernel[m < i ? i - m : m - i] ?? 0) * (weights[m] ?? 0);
      if (!(weight > 0)) continue;
      const [x, y] = [(m - i) * grid.stepNm, values[m] ?? 0];
      total += weight;
      byX += weight * x;
      byXX += weight * x * x;
      byY += weight * y;
      byXY += weight * x * y;
    }
    if (!(total > 0)) continue;
    const [x, y] = [byX / total, byY / total];
    const slope = (byXY / total - x * y) / (byXX / total - x * x + WIDTH_NM * WIDTH_NM);
    told[i] = y - slope * x;
  }
  return told;
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
