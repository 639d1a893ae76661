/**
 * From rub-out to working paint and back, where one of the two is not known.
 *
 * A working paint takes more oil than the rub-out figure, which marks only where
 * the pigment first holds together. How much more:
 *  - upper end 2.0: the middle one of Church's figures over today's handbook oil
 *    absorption, 1.8, rounded (viridian 1.0 the least, raw sienna 4.1 the most);
 *  - lower end 1.1: the stiffest paste that still brushes, at a reduced PVC of
 *    about .95 (paste recipes lie at .6-.95).
 *
 * @source church-1915 ; practice-formulation
 */
import type { Quantity, Interval } from "../quantities/interval.ts";
import { estimated, type StatementOf } from "../quantities/statement.ts";
import { positiveEnds } from "./required-domain.ts";
import { requirePositive } from "../quantities/positive.ts";

/** Oil index over oil absorption [1]. */
export const WORKING_OIL_RATIO: Interval = [1.1, 2];

/** The ratios between which Church's pigments lie; outside them one of the two figures is doubtful. */
export const WORKING_OIL_REACH: Interval = [0.9, 4.1];

export type WorkingOilStatement =
  | StatementOf<
      "working-paint-takes-more-than-rub-out",
      { readonly oilAbsorptionGPer100g: Quantity; readonly ratio: Interval }
    >
  | StatementOf<
      "rub-out-takes-less-than-working-paint",
      { readonly oilIndexGPer100g: Quantity; readonly ratio: Interval }
    >
  | StatementOf<
      "oil-index-below-rub-out" | "oil-index-far-above-rub-out",
      {
        readonly oilIndexGPer100g: number;
        readonly oilAbsorptionGPer100g: number;
        /** Oil index over oil absorption [1], and the ratios that are known. */
        readonly ratio: number;
        readonly reach: Interval;
      }
    >;

export interface WorkingOilEstimate {
  readonly estimate: Interval;
  readonly reason: WorkingOilStatement;
}

/**
 * Oil index [g/100 g] expected of a pigment from its rub-out figure.
 * @param oilAbsorptionGPer100g [g/100 g], > 0, or an estimate's ends.
 * @throws RangeError when an end is not a finite number above 0.
 * @example estimatedOilIndex(20).estimate // [22, 40]
 */
export function estimatedOilIndex(oilAbsorptionGPer100g: Quantity): WorkingOilEstimate {
  const [lower, upper] = positiveEnds("oil absorption", oilAbsorptionGPer100g, "g/100 g");
  const [least, most] = WORKING_OIL_RATIO;
  return {
    estimate: [lower * least, upper * most],
    reason: estimated(
      "working-paint-takes-more-than-rub-out",
      { oilAbsorptionGPer100g, ratio: WORKING_OIL_RATIO },
      "church-1915",
    ),
  };
}

/**
 * Oil absorption [g/100 g] expected of a pigment from the oil index of its paint.
 * @throws RangeError when an end is not a finite number above 0.
 * @example estimatedOilAbsorption(40).estimate // [20, 36.36]
 */
export function estimatedOilAbsorption(oilIndexGPer100g: Quantity): WorkingOilEstimate {
  const [lower, upper] = positiveEnds("oil index", oilIndexGPer100g, "g/100 g");
  const [least, most] = WORKING_OIL_RATIO;
  return {
    estimate: [lower / most, upper / least],
    reason: estimated(
      "rub-out-takes-less-than-working-paint",
      { oilIndexGPer100g, ratio: WORKING_OIL_RATIO },
      "church-1915",
    ),
  };
}

/**
 * Whether an oil index and a rub-out figure can belong to one paint.
 *
 * @returns the contradiction, with the ratio and the reach it passes; undefined when they agree.
 * @throws RangeError when either is not a finite number above 0.
 */
export function workingOilContradiction(
  oilIndexGPer100g: number,
  oilAbsorptionGPer100g: number,
): WorkingOilStatement | undefined {
  requirePositive("oil index", oilIndexGPer100g, "g/100 g");
  requirePositive("oil absorption", oilAbsorptionGPer100g, "g/100 g");
  const ratio = oilIndexGPer100g / oilAbsorptionGPer100g;
  const [least, most] = WORKING_OIL_REACH;
  if (ratio >= least && ratio <= most) return undefined;
  return estimated(
    ratio < least ? "oil-index-below-rub-out" : "oil-index-far-above-rub-out",
    { oilIndexGPer100g, oilAbsorptionGPer100g, ratio, reach: WORKING_OIL_REACH },
    "church-1915",
  );
}
