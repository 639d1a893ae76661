/** How well the fits of one workshop predict, told by its own left-out let-downs. */
import { at } from "../../quantities/at.ts";
import { deltaE00 } from "../../colorimetry/difference.ts";
import { isUsed } from "./outlier-drawdown.ts";
import type { PredictingFit, FittedWhite, MeasuredStep } from "./colour-fit.ts";
import { letDownNoise } from "./let-down-noise.ts";
import { usualUncertainty, type Doubts } from "./prediction-uncertainty.ts";

/** What 68 and 90 in 100 errors lie within, in units of the usual law's 68 % [1]. */
export interface Experience {
  readonly p68: number;
  readonly p90: number;
  /** Left-out let-downs that it goes by. */
  readonly count: number;
}

/** Errors as the usual law expects them: ten normal ones by their size, at shares .05 to .95. */
const USUAL_ERRORS: readonly number[] = [
  0.063, 0.189, 0.319, 0.454, 0.598, 0.755, 0.935, 1.15, 1.44, 1.96,
];

/**
 * Shares of errors of a workshop: its own left-out let-downs, beside which ten of the usual law
 * stand, so that a workshop of few let-downs goes by the law and one of many by itself.
 *
 * @param misses of left-out let-downs of all its colours, in units of the usual 68 % [1], each >= 0.
 * @example workshopExperience([]).p68 // 0.99
 */
export function workshopExperience(misses: readonly number[]): Experience {
  const errors = [...USUAL_ERRORS, ...misses].sort((one, other) => one - other);
  return { p68: quantile(errors, 0.68), p90: quantile(errors, 0.9), count: misses.length };
}

/** Left-out let-downs of a fit that nothing contradicts, each in units of the usual 68 % at its distance from the nearest other. */
export function leftOutMisses(fit: PredictingFit): number[] {
  return fit.whites.flatMap((white) => {
    const used = white.steps.filter(isUsed);
    return used.flatMap((step): number[] => {
      const verdict = fit.drawdowns.find(({ drawdown }) => drawdown === step.tint);
      const others = used.filter((other) => other !== step);
      if (typeof verdict?.leaveOneOutDeltaE00 !== "number" || others.length === 0) return [];
      const distance = Math.min(...others.map(({ lab }) => deltaE00(lab, step.lab)));
      const predicted = withoutOwnNoise(verdict.leaveOneOutDeltaE00, step, white, fit);
      return [predicted / usualUncertainty(distance, drawnDoubts(fit, white))];
    });
  });
}

/** Share of the square of a miss [1] that is the prediction's at the least. */
const PREDICTED_SHARE_MIN = 0.5;

/**
 * What of a left-out let-down's miss is the prediction's: the let-down's own weighing, film and reading taken
 * off in quadrature, since a prediction is not to blame for them. How far one bench errs is only expected, so
 * that never more than half of the square is taken for its own.
 *
 *     predicted = sqrt(max(miss^2 - own^2, miss^2 / 2)), Delta-E00
 */
function withoutOwnNoise(
  miss: number,
  step: MeasuredStep,
  white: FittedWhite,
  fit: PredictingFit,
): number {
  const own = letDownNoise(step, white, fit);
  return Math.sqrt(Math.max(miss * miss - own * own, PREDICTED_SHARE_MIN * miss * miss));
}

/** What of a fit's drawdowns widens its predictions, whatever the errors of its let-downs. */
export function drawnDoubts(
  { masstone }: Pick<PredictingFit, "masstone">,
  { hasFilms }: Pick<FittedWhite, "hasFilms">,
): Doubts {
  const { filmContrast } = masstone;
  return { hasFilms, ...(filmContrast !== undefined && { masstoneContrast: filmContrast }) };
}

/** Value that a share of a sorted list does not pass, each value in the middle of its own share. */
function quantile(sorted: readonly number[], share: number): number {
  const place = Math.min(Math.max(sorted.length * share - 0.5, 0), sorted.length - 1);
  const low = at(sorted, Math.floor(place));
  return low + (place - Math.floor(place)) * (at(sorted, Math.ceil(place)) - low);
}
