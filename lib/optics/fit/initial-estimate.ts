/**
 * K and S by closed form from the masstone and each let-down alone: where the
 * least squares start, and what they expect of ln S.
 *
 * @source duncan-1940
 */
import type { ClosedContribution, FitColumn, FitProblem, TintColumn } from "./fit-problem.ts";
import { DRAWDOWN_NOISE } from "./reading-noise.ts";
import {
  internalOf,
  keptRatio,
  keptReflectance,
  masstoneReading,
  scatteringSlope,
  shares,
  tintReading,
  type ReadingSlopes,
} from "../tints/tint-reading.ts";
import { at } from "../../quantities/at.ts";

export interface ClosedForm {
  /** Internal R-infinity of the colour [1], shape (count). */
  readonly masstone: Float64Array;
  /** For each white ln S and its weight 1/variance, 0 where no let-down gives one; shape (count) each. */
  readonly scattering: readonly {
    readonly logScattering: Float64Array;
    readonly weights: Float64Array;
  }[];
}

/** Beyond these a let-down says nothing of the colour, only of its own noise. */
const EXTINCTION_MIN = 1e-6;
const EXTINCTION_MAX = 1e6;

/** S from the masstone and each let-down, averaged by what each can tell. */
export function closedForm({ grid, masstone, whiteRatios, tints }: FitProblem): ClosedForm {
  const rhos = new Float64Array(grid.count);
  for (let i = 0; i < grid.count; i++)
    rhos[i] = keptReflectance(internalOf(masstone.form, at(masstone.measured, i)));
  const scattering = whiteRatios.map((whiteRatio, j) => {
    const [logScattering, weights] = [new Float64Array(grid.count), new Float64Array(grid.count)];
    for (const tint of tints) {
      if (tint.white !== j) continue;
      const own = tint.contribution ?? closedContribution(masstone, whiteRatio, tint);
      for (let i = 0; i < grid.count; i++) {
        logScattering[i] = at(logScattering, i) + at(own.weighted, i);
        weights[i] = at(weights, i) + at(own.weights, i);
      }
    }
    for (let i = 0; i < grid.count; i++)
      logScattering[i] = at(weights, i) > 0 ? at(logScattering, i) / at(weights, i) : 0;
    return { logScattering, weights };
  });
  return { masstone: rhos, scattering };
}

/**
 * What one let-down tells of S with its masstone and white alone.
 *
 *     S_b = (theta_t Sw - Kw)/(r (theta_m - theta_t)), Sw = 1
 */
export function closedContribution(
  masstone: FitColumn,
  whiteRatio: ArrayLike<number>,
  {
    form,
    measured,
    sigma,
    massRatio,
  }: Pick<TintColumn, "form" | "measured" | "sigma" | "massRatio">,
): ClosedContribution {
  const slopes: ReadingSlopes = { reading: NaN, byLogE: NaN, byLogRho: NaN };
  const [weighted, weights] = [
    new Float64Array(measured.length),
    new Float64Array(measured.length),
  ];
  for (let i = 0; i < measured.length; i++) {
    const rho = keptReflectance(internalOf(masstone.form, at(masstone.measured, i)));
    const shared = shares(rho);
    const theta = keptRatio(internalOf(form, at(measured, i)));
    const extinction = (theta - at(whiteRatio, i)) / (massRatio * (shared.k - theta * shared.s));
    if (!(extinction > EXTINCTION_MIN && extinction < EXTINCTION_MAX)) continue;
    masstoneReading(slopes, masstone.form, rho);
    const ofMasstone = (scatteringSlope(rho) * at(masstone.sigma, i)) / slopes.byLogRho;
    tintReading(slopes, form, massRatio * extinction, rho, shared, at(whiteRatio, i));
    const ofTint = at(sigma, i) / slopes.byLogE;
    const weight =
      1 /
      (ofTint * ofTint +
        DRAWDOWN_NOISE.massRatio * DRAWDOWN_NOISE.massRatio +
        ofMasstone * ofMasstone);
    weighted[i] = weight * Math.log(extinction * shared.s);
    weights[i] = weight;
  }
  return { weighted, weights };
}
