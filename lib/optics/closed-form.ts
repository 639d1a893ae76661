/**
 * K and S by closed form from the masstone and each let-down alone: where the
 * least squares start, and what they expect of ln S.
 *
 * @source duncan-1940
 */
import type { FitProblem } from "./fit-problem.ts";
import { DRAWDOWN_NOISE } from "./reading-noise.ts";
import { internalOf, keptRatio, keptReflectance, masstoneReading, scatteringSlope, shares, tintReading, type ReadingSlopes } from "./tint-reading.ts";

export interface ClosedForm {
  /** Internal R-infinity of the colour [1], shape (count). */
  readonly masstone: Float64Array;
  /** For each white ln S and its weight 1/variance, 0 where no let-down gives one; shape (count) each. */
  readonly scattering: readonly { readonly logScattering: Float64Array; readonly weights: Float64Array }[];
}

/** Beyond these a let-down says nothing of the colour, only of its own noise. */
const EXTINCTION_MIN = 1e-6;
const EXTINCTION_MAX = 1e6;

/**
 * S from the masstone and each let-down, averaged by what each can tell.
 *
 *     S_b = (theta_t Sw - Kw)/(r (theta_m - theta_t)), Sw = 1
 */
export function closedForm({ grid, masstone, whiteRatios, tints }: FitProblem): ClosedForm {
  const slopes: ReadingSlopes = { reading: NaN, byLogE: NaN, byLogRho: NaN };
  const rhos = Float64Array.from(masstone.measured, (value) => keptReflectance(internalOf(masstone.form, value)));
  const scattering = whiteRatios.map((whiteRatio, j) => {
    const [logScattering, weights] = [new Float64Array(grid.count), new Float64Array(grid.count)];
    const own = tints.filter(({ white }) => white === j);
    for (let i = 0; i < grid.count; i++) {
      const rho = rhos[i] ?? NaN;
      const { k, s } = shares(rho);
      masstoneReading(slopes, masstone.form, rho);
      const masstoneVariance = ((scatteringSlope(rho) * (masstone.sigma[i] ?? NaN)) / slopes.byLogRho) ** 2;
      let [sum, total] = [0, 0];
      for (const { form, measured, sigma, massRatio } of own) {
        const theta = keptRatio(internalOf(form, measured[i] ?? NaN));
        const extinction = (theta - (whiteRatio[i] ?? NaN)) / (massRatio * (k - theta * s));
        if (!(extinction > EXTINCTION_MIN && extinction < EXTINCTION_MAX)) continue;
        tintReading(slopes, form, massRatio, extinction, rho, whiteRatio[i] ?? NaN);
        const weight = 1 / (((sigma[i] ?? NaN) / slopes.byLogE) ** 2 + DRAWDOWN_NOISE.massRatio ** 2 + masstoneVariance);
        sum += weight * Math.log(extinction * s);
        total += weight;
      }
      logScattering[i] = total > 0 ? sum / total : 0;
      weights[i] = total;
    }
    return { logScattering, weights };
  });
  return { masstone: rhos, scattering };
}
