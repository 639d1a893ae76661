/** What a film hides: contrast ratio, the film for a contrast ratio, area covered, opacity class. */
import { requirePositive } from "../../quantities/positive.ts";
import { tristimulus } from "../../colorimetry/tristimulus.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import type { Interval } from "../../quantities/interval.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";
import { filmReflectance } from "./film.ts";
import type { FilmCoefficients } from "./film-coefficients.ts";
import { internalReflectances } from "../surface/measurement-in-geometry.ts";
import type { Geometry, Measurement } from "../fit/measurement.ts";
import { surfaceForm } from "../surface/surface.ts";
import { readingOf } from "../tints/tint-reading.ts";
import { at, certain } from "../../quantities/at.ts";

/** Contrast ratio [1] of a film that is taken to hide its ground (ISO 6504-3, ASTM D2805; memory). */
export const HIDING_CONTRAST_RATIO = 0.98;

/** Thickest film [um] that is still a film of paint. */
const FILM_MAX_UM = 5000;

/** The two grounds a film is drawn down on. */
export interface Grounds {
  readonly black: Measurement;
  readonly white: Measurement;
}

/** A figure that follows from films, with its standard uncertainty. */
export interface FilmFigure {
  readonly value: number;
  readonly uncertainty: number;
}

/**
 * Contrast ratio of a film from its readings over black and white, gloss included.
 *
 *     Y over black / Y over white, D65/10
 *
 * @returns ratio [1], >= 0; a little above 1 only by noise.
 * @throws RangeError when the film over white reads no light.
 * @example contrastRatio(flat .49, flat .5) // 0.98
 */
export function contrastRatio(overBlack: Spectrum, overWhite: Spectrum): number {
  const white = tristimulus(overWhite, "D65/10").Y;
  if (!(white > 0)) throw domainError("Y over white", white, "Y > 0");
  return tristimulus(overBlack, "D65/10").Y / white;
}

/** Reading of a film of a thickness over a ground, in a geometry, from K and S. */
export function filmSpectrum(
  paint: FilmCoefficients,
  filmUm: number,
  ground: Measurement,
  geometry: Geometry,
): Spectrum {
  const form = surfaceForm(geometry, paint.surface);
  const grounds = internalReflectances(ground, paint.surface).values;
  const values = paint.K.map((K, i) =>
    readingOf(form, Math.max(filmReflectance(K, at(paint.S, i), filmUm, at(grounds, i)), 0)),
  );
  return { grid: paint.grid, values };
}

/** Contrast ratio [1] of a film of a thickness from K and S, gloss included unless said otherwise. */
export function filmContrastRatio(
  paint: FilmCoefficients,
  filmUm: number,
  { black, white }: Grounds,
  geometry: Geometry = "d/8 included",
): number {
  return contrastRatio(
    filmSpectrum(paint, filmUm, black, geometry),
    filmSpectrum(paint, filmUm, white, geometry),
  );
}

/** The same with what the scale of K and S moves it by. */
export function filmContrast(
  paint: FilmCoefficients,
  filmUm: number,
  grounds: Grounds,
): FilmFigure {
  const value = filmContrastRatio(paint, filmUm, grounds);
  const thinner = filmContrastRatio(paint, filmUm / (1 + paint.scaleUncertainty), grounds);
  return { value, uncertainty: Math.abs(value - thinner) };
}

/**
 * Contrast ratios of a film with and without its gloss that lie further apart than this are both told, where
 * the film over white throws back so much more of the light [Y, 0-100] than over black: less is noise of a black.
 */
const GLOSS_TELLS = { apart: 0.05, luminance: 0.5 } as const;

/** A film's contrast ratios with and without its gloss. */
export interface GlossContrasts {
  readonly filmUm: number;
  readonly included: number;
  readonly excluded: number;
  /** Y over white less Y over black, gloss excluded, 0-100. */
  readonly luminanceApart: number;
}

/** Both contrast ratios of a film of a thickness from K and S. */
export function glossContrasts(
  paint: FilmCoefficients,
  filmUm: number,
  grounds: Grounds,
): GlossContrasts {
  const [black, white] = [grounds.black, grounds.white].map((ground) =>
    luminanceOf(paint, filmUm, ground),
  );
  return {
    filmUm,
    included: filmContrastRatio(paint, filmUm, grounds),
    excluded: filmContrastRatio(paint, filmUm, grounds, "d/8 excluded"),
    luminanceApart: certain(white) - certain(black),
  };
}

/** Said where gloss makes a film look as if it hid more: a dark glaze's contrast ratio with and without it. */
export function contrastByGlossRuling({
  filmUm,
  included,
  excluded,
  luminanceApart,
}: GlossContrasts): ContrastByGlossStatement | undefined {
  return Math.abs(included - excluded) > GLOSS_TELLS.apart && luminanceApart > GLOSS_TELLS.luminance
    ? {
        rule: "contrast-without-gloss",
        values: { filmUm, included, excluded },
        source: "kubelka-1948",
      }
    : undefined;
}

function luminanceOf(paint: FilmCoefficients, filmUm: number, ground: Measurement): number {
  return tristimulus(filmSpectrum(paint, filmUm, ground, "d/8 excluded"), "D65/10").Y;
}

export type ContrastByGlossStatement = StatementOf<
  "contrast-without-gloss",
  { filmUm: number; included: number; excluded: number }
>;

/**
 * Thinnest film that reaches a contrast ratio.
 *
 * @param target contrast ratio [1], 0 < target < 1.
 * @returns thickness of the dried film [um]; rule `does-not-hide` when not even 5 mm reaches it. Where the
 *   coefficients are "at least" figures, the true film is thinner.
 * @throws RangeError when the target is outside its domain, or NaN.
 * @source kubelka-1948
 */
export function hidingFilmUm(
  paint: FilmCoefficients,
  grounds: Grounds,
  target: number = HIDING_CONTRAST_RATIO,
): number | DoesNotHide {
  if (!(target > 0 && target < 1)) throw domainError("contrast ratio", target, "0 < ratio < 1");
  const thickest = filmContrastRatio(paint, FILM_MAX_UM, grounds);
  if (thickest < target)
    return {
      rule: "does-not-hide",
      values: { filmUm: FILM_MAX_UM, contrastRatio: thickest, target },
    };
  let [thin, thick] = [0, FILM_MAX_UM];
  while (thick - thin > 1e-6 * thick) {
    const middle = (thin + thick) / 2;
    if (filmContrastRatio(paint, middle, grounds) < target) thin = middle;
    else thick = middle;
  }
  return thick;
}

export type DoesNotHide = StatementOf<
  "does-not-hide",
  { filmUm: number; contrastRatio: number; target: number }
>;

/**
 * Said where a paint's films hid their grounds at most wavelengths and by Y: K and S are then "at least" figures.
 * A lake whose films hide where they absorb, and let through what is seen of them, does not hide.
 * @param filmsUm thinnest and thickest film read [um].
 */
export function filmsHidRuling(
  paint: FilmCoefficients,
  filmsUm: Interval,
  grounds: Grounds,
): FilmsHidStatement | undefined {
  const { grid, atLeast } = paint;
  const thickest = filmContrastRatio(paint, filmsUm[1], grounds, "d/8 excluded");
  return atLeast.length > grid.count / 2 && thickest >= HIDING_CONTRAST_RATIO
    ? {
        rule: "films-hid-their-grounds",
        values: { filmsUm, wavelengths: atLeast.length },
        source: "kubelka-1948",
      }
    : undefined;
}

export type FilmsHidStatement = StatementOf<
  "films-hid-their-grounds",
  { filmsUm: Interval; wavelengths: number }
>;

/**
 * Said of a masstone that was read on a film which lets its ground through.
 * @param contrast Y over black to Y over white of that film [1].
 * @param isKnownBeneath whether both grounds were read, so that what lies beneath follows from them.
 * @returns undefined where the film hides.
 * @source kubelka-1948
 */
export function masstoneFilmRuling(
  contrast: number,
  isKnownBeneath: boolean,
): MasstoneFilmStatement | undefined {
  return contrast < HIDING_CONTRAST_RATIO
    ? {
        rule: isKnownBeneath ? "masstone-by-both-grounds" : "masstone-is-a-film",
        values: { contrast },
        source: "kubelka-1948",
      }
    : undefined;
}

export type MasstoneFilmStatement = StatementOf<
  "masstone-by-both-grounds" | "masstone-is-a-film",
  { contrast: number }
>;

/**
 * Area that a millilitre of dried paint covers at a thickness.
 * @param filmUm [um], > 0.
 * @returns [cm2/ml].
 * @example coverageCm2PerMl(100) // 100
 */
export function coverageCm2PerMl(filmUm: number): number {
  requirePositive("film thickness", filmUm, "um", "X");
  return 1e4 / filmUm;
}
