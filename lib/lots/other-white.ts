/** A white beside another: how strongly it scatters, by paints that were let down in both. */
import { requirePositive } from "../quantities/positive.ts";
import { at } from "../quantities/at.ts";
import type { PaintCoefficients } from "./paint-coefficients.ts";

/** A paint with its let-down in the white that is asked for. */
export interface LetDownInBoth {
  /** In units of the known white's scattering [1], shape (count) each. */
  readonly paint: PaintCoefficients;
  /** K/S of its let-down in the other white [1], shape (count). */
  readonly letDown: readonly number[];
  /** Colour to white by mass [1], > 0. */
  readonly massRatio: number;
}

/** A white as a paint, in units of the known white's scattering, and how well that is known [1]. */
export interface OtherWhite {
  readonly paint: PaintCoefficients;
  /** Scattering by mass beside the known white's [1]. */
  readonly scattering: number;
  /** Relative standard uncertainty of it [1]. */
  readonly spread: number;
}

/** What one paint tells of a white's scattering is off by [1]; several that agree are not trusted past the second. Our own estimate. */
const SPREAD_OF_ONE = 0.15;
const LEAST_SPREAD = 0.05;

/**
 * Scattering of a white by mass in units of another's, by least squares over the wavelengths.
 *
 *     theta_t = (rho K + s theta_w) / (rho S + s),  so  s (theta_t - theta_w) = rho (K - theta_t S)
 *
 * @param white K/S of the white that is asked for [1], shape (count).
 * @returns s [1]; undefined where the let-down absorbs no more than its white.
 * @throws RangeError for a ratio that is not above 0.
 * @validity The ratio of two whites' scattering is taken alike at all wavelengths.
 * @source duncan-1940
 */
export function relativeScattering(
  { paint: { K, S }, letDown, massRatio }: LetDownInBoth,
  white: readonly number[],
): number | undefined {
  requirePositive("mass ratio", massRatio, "", "ratio");
  let [sum, squares] = [0, 0];
  letDown.forEach((theta, i) => {
    const above = theta - at(white, i);
    sum += above * massRatio * (at(K, i) - theta * at(S, i));
    squares += above ** 2;
  });
  const s = sum / squares;
  return s > 0 && s < Infinity ? s : undefined;
}

/**
 * Another white as a paint, by all that were let down in both: the geometric mean of what each tells.
 * @returns undefined where none tells anything.
 */
export function otherWhite(
  white: readonly number[],
  inBoth: readonly LetDownInBoth[],
): OtherWhite | undefined {
  const logs = inBoth.flatMap((one) => {
    const s = relativeScattering(one, white);
    return s === undefined ? [] : [Math.log(s)];
  });
  if (logs.length === 0) return undefined;
  const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  const scattering = Math.exp(mean);
  const deviation = Math.sqrt(
    logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / Math.max(1, logs.length - 1),
  );
  return {
    paint: { K: white.map((theta) => theta * scattering), S: white.map(() => scattering) },
    scattering,
    spread: logs.length === 1 ? SPREAD_OF_ONE : Math.max(LEAST_SPREAD, deviation),
  };
}
