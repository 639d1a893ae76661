import { domainError } from "../../diagnostics/diagnostic.ts";

/** Two figures of a predicted let-down's uncertainty, in Delta-E00. */
export interface PredictionUncertainty {
  /** About 68 in 100 predictions are nearer than this. */
  readonly p68: number;
  /** About 90 in 100. */
  readonly p90: number;
}

/** Delta-E00 beside a measured let-down, and how much of the distance to it is added. */
const P68 = { near: 1.2, share: 0.3 } as const;
const P90 = { near: 1.5, share: 0.5 } as const;

/**
 * Uncertainty of a predicted let-down by its distance from the nearest measured one.
 *
 *     68 %: sqrt(1.2^2 + (0.3 d)^2),  90 %: sqrt(1.5^2 + (0.5 d)^2)
 *
 * @param distance d, Delta-E00 to the nearest measured let-down in the same white, >= 0.
 * @returns Delta-E00; an estimate, from one set of paint-outs. Hue is predicted better than lightness.
 * @throws RangeError when the distance is negative, NaN or infinite.
 * @source oil-paint-outs
 */
export function predictionUncertainty(distance: number): PredictionUncertainty {
  if (!(distance >= 0 && distance < Infinity))
    throw domainError("distance to the nearest let-down", distance, "0 <= Delta-E00 < Infinity");
  return {
    p68: Math.hypot(P68.near, P68.share * distance),
    p90: Math.hypot(P90.near, P90.share * distance),
  };
}
