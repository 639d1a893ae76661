import { axisUncertainty } from "../fit/prediction-uncertainty.ts";
import { DRAWDOWN_NOISE } from "../fit/reading-noise.ts";
import { predictedTint, type LadderModel } from "./ladder.ts";

/** Change of ln r over which the slope of L* is taken. */
const STEP = 0.05;

/** Least slope of L* by ln r: a ladder that hardly changes tells its ratio no better than this. */
const SLOPE_MIN = 1;

/**
 * How far the mass ratio at which a let-down meets its depth may be off: what the prediction's L* moves
 * it by, and the weighing.
 *
 *     sigma(ln r) = hypot(sigma(L) / |dL by d ln r|, weighing), L the lightness
 *
 * @param massRatio colour to white [1], > 0.
 * @returns relative standard uncertainty [1].
 * @source drawdown-practice
 */
export function massRatioUncertainty(ladder: LadderModel, massRatio: number): number {
  const { lab, uncertainty } = predictedTint(ladder, massRatio);
  const slope = (predictedTint(ladder, massRatio * Math.exp(STEP)).lab.L - lab.L) / STEP;
  return Math.hypot(
    axisUncertainty(uncertainty.p68, lab).L / Math.max(Math.abs(slope), SLOPE_MIN),
    DRAWDOWN_NOISE.massRatio,
  );
}
