import type { Measurement } from "./measurement.ts";

/**
 * What a drawdown is uncertain by, before any model: reading and weighing.
 * @source oil-paint-outs : noise that accounts for 0.4 of Delta-E00 there
 */
export const DRAWDOWN_NOISE = {
  /** Of a reflectance factor [1], where the workshop states none. */
  absolute: 0.002,
  /** Of a reflectance factor, relative [1]. */
  relative: 0.01,
  /** Of a mass ratio, relative [1]. */
  massRatio: 0.05,
} as const;

/**
 * Standard uncertainty of each reflectance factor of a reading [1].
 *
 * Nearly relative, so that a fit weighs a dark drawdown as the eye does, with a
 * floor, so that a black's last digit does not rule it.
 *
 * @returns shape of the spectrum's values, each > 0.
 * @source walowit-1987, centore-2013 : weights by relative reflectance, never raw K/S
 */
export function readingNoise({ spectrum, uncertainty }: Measurement): number[] {
  const floor = uncertainty ?? DRAWDOWN_NOISE.absolute;
  return spectrum.values.map((value) => floor + DRAWDOWN_NOISE.relative * Math.max(value, 0));
}
