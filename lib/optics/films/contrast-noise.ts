import { tristimulus } from "../../colorimetry/tristimulus.ts";
import { at } from "../../quantities/at.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";
import { contrastRatio } from "./hiding.ts";
import { FILM_ERRORS } from "./two-ground-film.ts";

/**
 * Y [0-100], gloss included, by which the two halves of a film that hides were seen to differ, however dark:
 * its surface is not alike all over.
 * @source reconstructed-oil-paints
 */
const HALVES_APART_Y = 0.1;

/**
 * By how much a film's contrast ratio may be off though nothing of its ground shows: what two readings of one
 * sitting differ by, and what its two halves do.
 *
 * @param overBlack, overWhite as read, gloss included, on one grid.
 * @param sigma noise of the reading over black [1], shape of its values.
 * @returns standard uncertainty [1], > 0.
 */
export function contrastNoise(
  overBlack: Spectrum,
  overWhite: Spectrum,
  sigma: readonly number[],
): number {
  const values = overBlack.values.map((value, i) => value + FILM_ERRORS.apart * at(sigma, i));
  return Math.hypot(
    contrastRatio({ ...overBlack, values }, overWhite) - contrastRatio(overBlack, overWhite),
    HALVES_APART_Y / tristimulus(overWhite, "D65/10").Y,
  );
}
