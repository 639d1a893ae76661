import type { Lab } from "../../colorimetry/viewing.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import { NINETY_PERCENT } from "../../quantities/coverage.ts";
import type { Experience } from "./workshop-experience.ts";

/** Two figures of a predicted let-down's uncertainty, in Delta-E00. */
export interface PredictionUncertainty {
  /** About 68 in 100 predictions are nearer than this. */
  readonly p68: number;
  /** About 90 in 100. */
  readonly p90: number;
}

/** Delta-E00 beside a measured let-down, how much is added far from one, and how fast [Delta-E00]. */
const LAW = { near: 0.8, far: 2.45, reach: 1.5 } as const;

/** Share of the middle leave-one-out error of the colour's own let-downs that 68 % is never under. */
const OWN_SHARE = 0.5;

/**
 * How many times further a prediction is missed where no film tells R-infinity and S, and a mixture
 * without white than a let-down as far from a drawdown, with films of all its colours and without.
 */
export const WIDER = {
  withoutFilms: 1.6,
  mixture: 1.3,
  mixtureWithoutFilms: 3.5,
  otherWhite: 2,
} as const;

/** What widens a prediction beside its distance. */
export interface Doubts {
  /** Whether films over black and white of colour and white were handed to the fit. */
  readonly hasFilms?: boolean;
  /** Middle leave-one-out Delta-E00 of the colour's own let-downs, >= 0; absent where none can be left out. */
  readonly ownMiss?: number;
  /** What one of the colour's let-downs would differ by if it were made again, Delta-E00: nothing predicted from it is surer. */
  readonly letDownNoise?: number;
  /** Contrast ratio [1] of the film that stands for a masstone; absent where the masstone hides. */
  readonly masstoneContrast?: number;
  /** Whether several colours are mixed. */
  readonly isMixture?: boolean;
  /** Whether the colour was never let down in that white. */
  readonly isOtherWhite?: boolean;
  /** What left-out let-downs of all the workshop's colours show. */
  readonly experience?: Experience;
}

/** 68 % of the usual law, Delta-E00, before a workshop's own errors are known: see {@link predictionUncertainty}. */
export function usualUncertainty(
  distance: number,
  { hasFilms = false, masstoneContrast = 1, isMixture = false, isOtherWhite = false }: Doubts = {},
  widths: Readonly<Record<keyof typeof WIDER, number>> = WIDER,
): number {
  if (!(distance >= 0 && distance < Infinity))
    throw domainError("distance to the nearest let-down", distance, "0 <= Delta-E00 < Infinity");
  const byFilms = isMixture
    ? widths[hasFilms ? "mixture" : "mixtureWithoutFilms"]
    : hasFilms
      ? 1
      : widths.withoutFilms;
  const byWhite = isOtherWhite ? widths.otherWhite : 1;
  const wider = byFilms * byWhite * (1 + 2 * Math.max(1 - masstoneContrast, 0));
  return Math.hypot(LAW.near, LAW.far * wider * away(distance));
}

/**
 * Uncertainty of a predicted let-down by its distance from the nearest measured one: it soon
 * saturates, since what a model misses does not grow with the distance for ever. Widened where no
 * films were read, of a mixture, and up to three times by a masstone that lets its ground through;
 * scaled by how the workshop's own left-out let-downs are missed, and never below what a let-down
 * of the colour made again would differ by.
 *
 *     68 %: sqrt(0.8^2 + (2.45 w (1 - exp(-d/1.5)))^2),  90 %: 1.645 times as much
 *
 * @param distance d, Delta-E00 to the nearest measured let-down in the same white, >= 0.
 * @returns Delta-E00; an estimate, from measured oil paints. Hue is predicted better than lightness.
 * @throws RangeError when the distance or an own miss is negative, NaN or infinite.
 * @source reconstructed-oil-paints
 */
export function predictionUncertainty(
  distance: number,
  doubts: Doubts = {},
  widths: Readonly<Record<keyof typeof WIDER, number>> = WIDER,
): PredictionUncertainty {
  const { ownMiss = 0, letDownNoise = 0, experience = { p68: 1, p90: NINETY_PERCENT } } = doubts;
  if (!(ownMiss >= 0 && ownMiss < Infinity))
    throw domainError("leave-one-out error", ownMiss, "0 <= Delta-E00 < Infinity");
  const usual = usualUncertainty(distance, doubts, widths);
  const least = Math.max(OWN_SHARE * ownMiss * away(distance), letDownNoise);
  return {
    p68: Math.max(usual * experience.p68, least),
    p90: Math.max(usual * experience.p90, NINETY_PERCENT * least),
  };
}

/** The same with another standard uncertainty beside it [Delta-E00], in quadrature. */
export function withOwn(
  { p68, p90 }: PredictionUncertainty,
  deltaE00: number,
): PredictionUncertainty {
  return { p68: Math.hypot(p68, deltaE00), p90: Math.hypot(p90, NINETY_PERCENT * deltaE00) };
}

/** How far from a measured let-down a prediction counts [1]. */
function away(distance: number): number {
  return 1 - Math.exp(-distance / LAW.reach);
}

/** Half widths of L*, a* and b* that a Delta-E00 stands for. */
export interface AxisUncertainty {
  readonly L: number;
  readonly a: number;
  readonly b: number;
}

/** Share of the square of a predicted Delta-E00 that is lightness: the larger part, as measured paints show. */
const LIGHTNESS_SHARE = 0.5;

/**
 * A Delta-E00 shared out among L*, a* and b*: half of its square is lightness, the rest a* and b*
 * alike, which grow with chroma as CIEDE2000's S_C does.
 *
 *     S_C = 1 + 0.045 C*,  S_L = 1 + 0.015 (L* - 50)^2 / sqrt(20 + (L* - 50)^2)
 *
 * @source sharma-2005
 */
export function axisUncertainty(deltaE00: number, { L, a, b }: Lab): AxisUncertainty {
  const lightness = 1 + (0.015 * (L - 50) ** 2) / Math.sqrt(20 + (L - 50) ** 2);
  const chroma = 1 + 0.045 * Math.hypot(a, b);
  const each = deltaE00 * chroma * Math.sqrt((1 - LIGHTNESS_SHARE) / 2);
  return { L: deltaE00 * lightness * Math.sqrt(LIGHTNESS_SHARE), a: each, b: each };
}
