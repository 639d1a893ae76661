import { HAND_HELD_NOISE, reflectanceSigma } from "../../colorimetry/reading-noise.ts";
import type { Measurement } from "./measurement.ts";
import { at } from "../../quantities/at.ts";

/**
 * What a drawdown is uncertain by beside its reading, before any model.
 * @source oil-paint-outs, drawdown-practice
 */
export const DRAWDOWN_NOISE = {
  /** What films of one paint differ by, relative to the reflectance factor [1]. */
  relative: 0.01,
  /** Weighing of a mass ratio, relative [1]. */
  massRatio: 0.03,
  /** Thickness of a film from an applicator, relative [1]. */
  thickness: 0.05,
} as const;

/**
 * Standard uncertainty of each reflectance factor of a drawdown [1]: the reading's own noise,
 * and what two films of one paint differ by.
 *
 * Nearly relative, so that a fit weighs a dark drawdown as the eye does, with the noise of
 * the instrument's zero as its floor, so that a black's last digit does not rule it.
 *
 * @returns shape of the spectrum's values, each > 0.
 * @source walowit-1987, centore-2013 : weights by relative reflectance, never raw K/S
 */
export function readingNoise({ spectrum, noise = HAND_HELD_NOISE }: Measurement): number[] {
  return reflectanceSigma(noise, spectrum).map((sigma, i) =>
    Math.hypot(sigma, DRAWDOWN_NOISE.relative * Math.max(at(spectrum.values, i), 0)),
  );
}
