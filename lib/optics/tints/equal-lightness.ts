/** Where a ladder stands at a chosen lightness, so that whites are compared like with like. */
import { at } from "../../quantities/at.ts";
import { deltaE00 } from "../../colorimetry/difference.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import { LADDER_BEYOND, predictedTint, type LadderModel, type PredictedTint } from "./ladder.ts";
import {
  predictionUncertainty,
  type PredictionUncertainty,
} from "../fit/prediction-uncertainty.ts";

/** L* at which ladders are compared. */
export const EQUAL_LIGHTNESSES = [70, 50, 30] as const;

/** A let-down at a chosen L* (D65/10). */
export interface TintAtLightness {
  readonly L: number;
  readonly a: number;
  readonly b: number;
  /** Colour to white by mass [1]. */
  readonly massRatio: number;
  /** From a fit, or straight between measured neighbours. */
  readonly basis: "predicted" | "interpolated";
  readonly nearest: { readonly massRatio: number; readonly deltaE00: number };
  readonly uncertainty: PredictionUncertainty;
  readonly beyond: boolean;
}

/** How far the let-downs reach, where they do not reach an L*; nothing of them where there are none. */
export type NotReached = StatementOf<
  "ladder-does-not-reach",
  { readonly L: number } | { readonly L: number; readonly palest: number; readonly darkest: number }
>;

/** Why there is no let-down at an L*. */
export type NotAtLightness =
  NotReached | StatementOf<"neighbours-too-far-apart", { L: number; gap: number; limit: number }>;

/** A measured let-down, spectrum or no spectrum. */
export interface LabPoint {
  readonly massRatio: number;
  readonly lab: Lab;
}

/** Strongest ratio that is told from the masstone. */
const STRONGEST = 1e4;
/** L* [1] within which a lightness is met. */
const MET = 0.002;
const STEPS_MAX = 40;
/** Widest gap in L* between measured neighbours that is bridged without a fit. */
const INTERPOLATED_GAP_MAX = 25;

/**
 * The let-down that a fit predicts at a lightness.
 *
 * @param L L* (D65/10) [1], 0 < L < 100.
 * @returns the let-down; rule `ladder-does-not-reach` when the ladder, from the masstone to a
 *   little beyond its palest let-down, holds no such lightness.
 * @throws RangeError when L is outside its domain, or NaN.
 */
export function predictedAtLightness(ladder: LadderModel, L: number): TintAtLightness | NotReached {
  if (!(L > 0 && L < 100)) throw domainError("lightness L*", L, "0 < L* < 100");
  const least = at(ladder.used, 0).massRatio / LADDER_BEYOND;
  const points: LabPoint[] = [
    predictedTint(ladder, least),
    ...ladder.used,
    { massRatio: STRONGEST, lab: ladder.fit.masstone.lab },
  ];
  for (const [i, upper] of points.slice(1).entries()) {
    const lower = points[i];
    if (lower === undefined || (lower.lab.L - L) * (upper.lab.L - L) > 0) continue;
    return atLightness(solved(ladder, L, lower, upper), L);
  }
  return notReached(L, points);
}

/** Regula falsi on ln r with the Illinois halving: a ladder is smooth, so a handful of steps will do. */
function solved(ladder: LadderModel, L: number, lower: LabPoint, upper: LabPoint): PredictedTint {
  let [low, high] = [Math.log(lower.massRatio), Math.log(upper.massRatio)];
  let [atLow, atHigh] = [lower.lab.L - L, upper.lab.L - L];
  let tint = predictedTint(ladder, atLow === 0 ? lower.massRatio : upper.massRatio);
  if (atLow === 0 || atHigh === 0) return tint;
  for (let step = 0; step < STEPS_MAX; step++) {
    const between = (low * atHigh - high * atLow) / (atHigh - atLow);
    tint = predictedTint(ladder, Math.exp(between));
    const apart = tint.lab.L - L;
    if (Math.abs(apart) < MET) return tint;
    if (apart * atHigh < 0) {
      [low, atLow] = [high, atHigh];
    } else {
      atLow /= 2;
    }
    [high, atHigh] = [between, apart];
  }
  return tint;
}

function atLightness(
  { lab, massRatio, nearest, uncertainty, beyond }: PredictedTint,
  L: number,
): TintAtLightness {
  return { L, a: lab.a, b: lab.b, massRatio, basis: "predicted", nearest, uncertainty, beyond };
}

/**
 * The let-down at a lightness, straight between its measured neighbours (a*, b* and
 * ln r by L*): for readings without a spectrum, or without a fit.
 *
 * @param points measured let-downs in one white; the masstone does not count, since
 *   the way from the strongest let-down to it is anything but straight.
 * @returns the let-down; rule `ladder-does-not-reach`, or `neighbours-too-far-apart`.
 * @throws RangeError when L is outside its domain, or NaN.
 */
export function interpolatedAtLightness(
  points: readonly LabPoint[],
  L: number,
): TintAtLightness | NotAtLightness {
  if (!(L > 0 && L < 100)) throw domainError("lightness L*", L, "0 < L* < 100");
  const sorted = points.toSorted((one, other) => one.massRatio - other.massRatio);
  for (const [i, upper] of sorted.entries()) {
    const lower = sorted[Math.max(i - 1, 0)];
    if (lower === undefined || (lower.lab.L - L) * (upper.lab.L - L) > 0) continue;
    const gap = Math.abs(lower.lab.L - upper.lab.L);
    if (gap > INTERPOLATED_GAP_MAX)
      return {
        rule: "neighbours-too-far-apart",
        values: { L, gap, limit: INTERPOLATED_GAP_MAX },
        source: "optics-practice",
      };
    const share = gap === 0 ? 0 : (L - lower.lab.L) / (upper.lab.L - lower.lab.L);
    const mix = (one: number, other: number): number => one + share * (other - one);
    const lab = { L, a: mix(lower.lab.a, upper.lab.a), b: mix(lower.lab.b, upper.lab.b) };
    const near = [lower, upper]
      .map((point) => ({ massRatio: point.massRatio, deltaE00: deltaE00(point.lab, lab) }))
      .reduce((one, other) => (other.deltaE00 < one.deltaE00 ? other : one));
    return {
      ...lab,
      massRatio: Math.exp(mix(Math.log(lower.massRatio), Math.log(upper.massRatio))),
      basis: "interpolated",
      nearest: near,
      uncertainty: predictionUncertainty(near.deltaE00),
      beyond: false,
    };
  }
  return notReached(L, points);
}

function notReached(L: number, points: readonly LabPoint[]): NotReached {
  const lightnesses = points.map(({ lab }) => lab.L);
  return {
    rule: "ladder-does-not-reach",
    values:
      points.length === 0
        ? { L }
        : { L, palest: Math.max(...lightnesses), darkest: Math.min(...lightnesses) },
  };
}
