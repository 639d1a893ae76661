import { tristimulus } from "../../colorimetry/tristimulus.ts";
import type { Interval } from "../../quantities/interval.ts";
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import type { FilmCoefficients } from "./film-coefficients.ts";
import { at } from "../../quantities/at.ts";

/** Share [1] of a paint's light at wavelengths where its films hid the chart, up to which they still tell S. */
const HIDDEN_SHARE_MAX = 0.25;
/** How far [1] S of films is trusted: thickness and reading are rarely better. @source optics-practice */
const FILM_SPREAD = 0.15;

/**
 * Weights by which S of a paint is averaged: the light of D65 that the paint throws back, as the
 * eye of the 10 degree observer takes it. Where a paint is black its S is neither known nor seen.
 *
 * @param reflectance of the masstone, internal or as read without gloss [1], shape (count).
 * @returns weights of sum 1, shape (count).
 */
export function seenWeights(grid: WavelengthGrid, reflectance: readonly number[]): number[] {
  const weights = reflectance.map((R, at) => {
    const values = reflectance.map((_, i) => (i === at ? 1 : 0));
    return tristimulus({ grid, values }, "D65/10").Y * Math.max(R, 0);
  });
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / whole);
}

/** S X [1] of a film. @param scattering S [1/um], shape (count). */
export function scatteringPowerSeen(
  scattering: readonly number[],
  weights: readonly number[],
  filmUm: number,
): number {
  return scattering.reduce((sum, S, i) => sum + S * filmUm * at(weights, i), 0);
}

/**
 * Range of S X of a film from the paint's own films.
 * @returns undefined where the films hid the chart at most of the light that is seen of the paint:
 *   their S is then only an "at least" figure.
 */
export function scatteringPowerOfFilms(
  paint: FilmCoefficients,
  weights: readonly number[],
  filmUm: number,
): Interval | undefined {
  const hidden = paint.atLeast.reduce((sum, i) => sum + (weights[i] ?? 0), 0);
  if (hidden > HIDDEN_SHARE_MAX) return undefined;
  const most = scatteringPowerSeen(paint.S, weights, filmUm) * (1 + FILM_SPREAD);
  return [leastScatteringPower(paint, weights, filmUm), most];
}

/**
 * The least S X [1] of a film that the paint's own films allow, films that hid the chart included: at a
 * wavelength at which a thin film throws much light back, that film scatters, whatever it absorbs.
 */
export function leastScatteringPower(
  paint: FilmCoefficients,
  weights: readonly number[],
  filmUm: number,
): number {
  return scatteringPowerSeen(paint.S, weights, filmUm) / (1 + FILM_SPREAD);
}
