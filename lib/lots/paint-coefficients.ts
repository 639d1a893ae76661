import { requirePositive } from "../quantities/positive.ts";
import { at } from "../quantities/at.ts";

/** A paint's absorption and scattering per part by mass, in units of its white's scattering [1], shape (count) each. */
export interface PaintCoefficients {
  readonly K: readonly number[];
  readonly S: readonly number[];
}

/** No paint of a workshop scatters more than so many times its white, nor less than so little of it [1]. */
const S_MAX = 3;
const S_MIN = 1e-3;

/**
 * K and S of a paint from its masstone and one let-down, by the two-constant theory.
 *
 *     S = (theta_t - theta_w) / (rho (theta_m - theta_t)),  K = theta_m S
 *
 * theta = K/S of masstone m, tint t and white w; rho colour to white by mass. Where the tint hardly
 * absorbs, S is kept between bounds and the masstone is met all the same.
 *
 * @param massRatio rho [1], > 0.
 * @throws RangeError for a ratio that is not above 0.
 * @source walowit-1987, duncan-1940
 */
export function paintCoefficients(
  masstone: readonly number[],
  letDown: readonly number[],
  white: readonly number[],
  massRatio: number,
): PaintCoefficients {
  requirePositive("mass ratio", massRatio, "", "ratio");
  const S = masstone.map((theta, i) => {
    const raw = (at(letDown, i) - at(white, i)) / (massRatio * (theta - at(letDown, i)));
    return Math.min(Math.max(Number.isFinite(raw) ? raw : S_MIN, S_MIN), S_MAX);
  });
  return { S, K: masstone.map((theta, i) => theta * at(S, i)) };
}

/** A white as a paint: its own scattering is the unit. */
export function whiteCoefficients(white: readonly number[]): PaintCoefficients {
  return { K: white, S: white.map(() => 1) };
}

/** A mixture of two paints, `share` of the second by mass [1]. */
export function mixedPaint(
  first: PaintCoefficients,
  second: PaintCoefficients,
  share: number,
): PaintCoefficients {
  const mixed = (one: readonly number[], other: readonly number[]): number[] =>
    one.map((value, i) => (1 - share) * value + share * at(other, i));
  return { K: mixed(first.K, second.K), S: mixed(first.S, second.S) };
}

/** K/S of a paint as masstone [1], shape (count). */
export function masstoneAbsorption({ K, S }: PaintCoefficients): number[] {
  return K.map((value, i) => value / at(S, i));
}

/** K/S of a paint let down in its white [1], shape (count). @param massRatio colour to white. */
export function letDownAbsorption(
  { K, S }: PaintCoefficients,
  white: readonly number[],
  massRatio: number,
): number[] {
  return K.map((value, i) => (massRatio * value + at(white, i)) / (massRatio * at(S, i) + 1));
}
