/** K and S of particles of many sizes, log-normal by volume. */
import { requirePositive } from "../../quantities/positive.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import type { Interval } from "../../quantities/interval.ts";
import { particleCoefficients } from "./particle-coefficients.ts";
import type { IndexSet } from "./refractive-index.ts";
import { at } from "../../quantities/at.ts";

/** K and S by size and wavelength: made once, and averaged over any log-normal that it reaches. */
export interface SizeTable {
  readonly wavelengthsNm: readonly number[];
  /** Evenly spaced in ln d [um]. */
  readonly sizesUm: readonly number[];
  /** [1/um], shape (wavelengths, sizes), size by size. */
  readonly K: Float64Array;
  readonly S: Float64Array;
}

/** Step in ln d. The narrow resonances of clear spheres would ask for a finer one, but grains are no perfect spheres and have none. */
const LOG_STEP = 0.04;
/** Of what absorbs: its K and S run smoothly with size, and the coarser step moves an average by less than a thousandth part. */
const ABSORBING_LOG_STEP = 0.08;
/** From this k on nothing is left of a resonance. */
const ABSORBING_FROM = 0.05;
/** How many spreads to either side of the median are summed. */
const REACH = 3;

/**
 * K and S by size, wide enough for log-normals of these medians and spreads.
 * @param mediumIndex n of the oil [1].
 * @param logStep step in ln d, for tests of convergence.
 * @throws RangeError when a median or spread is outside its domain, or NaN.
 */
export function sizeTable(
  index: IndexSet,
  mediumIndex: number,
  wavelengthsNm: readonly number[],
  mediansUm: Interval,
  spreads: Interval,
  logStep = usualStep(index, wavelengthsNm),
): SizeTable {
  for (const median of mediansUm) requireMedian(median);
  for (const spread of spreads) requireSpread(spread);
  const reach = REACH * Math.log(spreads[1]);
  const first = Math.log(mediansUm[0]) - reach;
  const count = Math.ceil((Math.log(mediansUm[1]) + reach - first) / logStep) + 1;
  const sizesUm = Array.from({ length: count }, (_, i) => Math.exp(first + i * logStep));
  const K = new Float64Array(count * wavelengthsNm.length);
  const S = new Float64Array(count * wavelengthsNm.length);
  for (const [j, wavelengthNm] of wavelengthsNm.entries()) {
    const particle = index.at(wavelengthNm);
    for (const [i, size] of sizesUm.entries()) {
      const at = particleCoefficients(size, particle, mediumIndex, wavelengthNm);
      K[j * count + i] = at.K;
      S[j * count + i] = at.S;
    }
  }
  return { wavelengthsNm, sizesUm, K, S };
}

/**
 * Mean K and S of a log-normal by volume.
 *
 *     f(ln d) = exp(-(ln(d/d50)/ln sg)^2/2), normalised over the sizes of the table
 *
 * @param medianUm d50 by volume [um], > 0.
 * @param spread geometric standard deviation sg [1], 1.05 <= sg <= 4.
 * @returns K, S [1/um], shape (wavelengths).
 * @throws RangeError when an argument is outside its domain or NaN, or the table does not reach far enough.
 */
export function sizeAverage(
  table: SizeTable,
  medianUm: number,
  spread: number,
): { readonly K: number[]; readonly S: number[] } {
  requireMedian(medianUm);
  requireSpread(spread);
  const { sizesUm, wavelengthsNm } = table;
  const sigma = Math.log(spread);
  const [smallest, largest] = [at(sizesUm, 0), at(sizesUm, sizesUm.length - 1)];
  const reach = Math.exp(REACH * sigma * (1 - 1e-9));
  if (!(medianUm / reach >= smallest && medianUm * reach <= largest)) {
    throw domainError(
      "median diameter",
      medianUm,
      `${REACH} spreads inside the table's ${smallest.toPrecision(3)}-${largest.toPrecision(3)} um`,
    );
  }
  const weights = Float64Array.from(sizesUm, (size) =>
    Math.exp(-((Math.log(size / medianUm) / sigma) ** 2) / 2),
  );
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = (values: Float64Array, j: number): number => {
    let sum = 0;
    for (let i = 0; i < weights.length; i++)
      sum += (weights[i] ?? 0) * (values[j * weights.length + i] ?? NaN);
    return sum / total;
  };
  return {
    K: wavelengthsNm.map((_, j) => mean(table.K, j)),
    S: wavelengthsNm.map((_, j) => mean(table.S, j)),
  };
}

/**
 * Median by volume of a log-normal from its number mean.
 *
 *     d50 = dn exp((5/2) ln^2 sg)
 *
 * @throws RangeError when an argument is outside its domain, or NaN.
 * @source hatch-choate-1929
 * @example volumeMedianUm(0.22, 1.35) // 0.2756
 */
export function volumeMedianUm(numberMeanUm: number, spread: number): number {
  requireMedian(numberMeanUm);
  requireSpread(spread);
  return numberMeanUm * Math.exp(2.5 * Math.log(spread) ** 2);
}

function usualStep(index: IndexSet, wavelengthsNm: readonly number[]): number {
  return wavelengthsNm.every((nm) => index.at(nm).k >= ABSORBING_FROM)
    ? ABSORBING_LOG_STEP
    : LOG_STEP;
}

function requireMedian(um: number): void {
  requirePositive("diameter", um, "um", "d");
}

function requireSpread(spread: number): void {
  if (!(spread >= 1.05 && spread <= 4))
    throw domainError("geometric standard deviation", spread, "1.05 <= sg <= 4");
}
