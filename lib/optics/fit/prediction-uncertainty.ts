import type { Lab } from "../../colorimetry/viewing.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";

/** Two figures of a predicted let-down's uncertainty, in Delta-E00. */
export interface PredictionUncertainty {
  /** About 68 in 100 predictions are nearer than this. */
  readonly p68: number;
  /** About 90 in 100. */
  readonly p90: number;
}

/** Delta-E00 beside a measured let-down, how much is added far from one, and how fast [Delta-E00]. */
const P68 = { near: 0.8, far: 2.45 } as const;
const P90 = { near: 1.2, far: 3.8 } as const;
const REACH = 1.5;

/** Share of the middle leave-one-out error of the colour's own let-downs that 68 % is never under. */
const OWN_SHARE = 0.5;

/** How many times further a mixture without white is missed than a let-down as far from a drawdown. */
const MIXTURE = 1.4;

/** What widens a prediction beside its distance. */
export interface Doubts {
  /** Middle leave-one-out Delta-E00 of the colour's own let-downs, >= 0; absent where none can be left out. */
  readonly ownMiss?: number;
  /** Contrast ratio [1] of the film that stands for a masstone; absent where the masstone hides. */
  readonly masstoneContrast?: number;
  /** Whether several colours are mixed. */
  readonly isMixture?: boolean;
}

/**
 * Uncertainty of a predicted let-down by its distance from the nearest measured one: it soon
 * saturates, since what a model misses does not grow with the distance for ever. A masstone that
 * lets its ground through widens it by up to three times, a mixture by 1.4.
 *
 *     68 %: sqrt(0.8^2 + (2.45 (1 - exp(-d/1.5)))^2),  90 %: sqrt(1.2^2 + (3.8 (1 - exp(-d/1.5)))^2)
 *
 * @param distance d, Delta-E00 to the nearest measured let-down in the same white, >= 0.
 * @returns Delta-E00; an estimate, from measured oil paints. Hue is predicted better than lightness.
 * @throws RangeError when the distance or an own miss is negative, NaN or infinite.
 * @source reconstructed-oil-paints
 */
export function predictionUncertainty(
  distance: number,
  { ownMiss = 0, masstoneContrast = 1, isMixture = false }: Doubts = {},
): PredictionUncertainty {
  if (!(distance >= 0 && distance < Infinity))
    throw domainError("distance to the nearest let-down", distance, "0 <= Delta-E00 < Infinity");
  if (!(ownMiss >= 0 && ownMiss < Infinity))
    throw domainError("leave-one-out error", ownMiss, "0 <= Delta-E00 < Infinity");
  const away = 1 - Math.exp(-distance / REACH);
  const wider = (1 + 2 * Math.max(1 - masstoneContrast, 0)) * (isMixture ? MIXTURE : 1);
  const least = OWN_SHARE * ownMiss * away;
  return {
    p68: Math.max(Math.hypot(P68.near, P68.far * wider * away), least),
    p90: Math.max(Math.hypot(P90.near, P90.far * wider * away), 1.645 * least),
  };
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
