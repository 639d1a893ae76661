/** A mix as a film of some thickness over black and white, and stretched with an extender medium. */
import { at, certain } from "../../quantities/at.ts";
import { deltaE00 } from "../../colorimetry/difference.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import { filmOnGrid, type FilmCoefficients } from "../../optics/films/film-coefficients.ts";
import { filmReflectance } from "../../optics/films/film.ts";
import { measurementOnGrid } from "../../optics/fit/common-grid.ts";
import { masstoneReflectance } from "../../optics/kubelka-munk.ts";
import { contrastRatio } from "../../optics/films/hiding.ts";
import {
  absoluteCoefficients,
  mixedCoefficients,
  type VolumePart,
} from "../../optics/mixtures/mixed-coefficients.ts";
import { internalReflectances } from "../../optics/surface/measurement-in-geometry.ts";
import { surfaceForm } from "../../optics/surface/surface.ts";
import { readingOf } from "../../optics/tints/tint-reading.ts";
import type { Measurement } from "../../optics/fit/measurement.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";
import type { FilmStatement } from "../mix.ts";
import { paintName, type MixingRange } from "../mixing-range.ts";
import type { PredictedMix } from "./predicted-mix.ts";

/** What a film is made of beside the mix. */
export interface FilmWish {
  /** Of the dried film [um]; Infinity for a coat that hides. */
  readonly filmUm: number;
  /** An extender medium, and its volumes to one of the mix. */
  readonly medium?: { readonly slug: string; readonly volumes: number };
}

/**
 * What a film of a mix is off by beside its colour, relative in K and S together [1], and of its contrast
 * ratio [1] where it nearly hides: chosen by let-downs that were left out and drawn by one bar.
 * @source reconstructed-oil-paints
 */
const MIX_FILM_ERRORS = { scale: 0.4, contrast: 0.02 } as const;

export interface MixFilm {
  /** K and S of what it is made of. */
  readonly coefficients: FilmCoefficients;
  readonly overBlack: Spectrum;
  readonly overWhite: Spectrum;
  /** D65/10, of either. */
  readonly labs: { readonly overBlack: Lab; readonly overWhite: Lab };
  /** Y over black to Y over white [1], and its 68 %. */
  readonly contrastRatio: number;
  readonly contrastUncertainty: number;
  /** 68 %, Delta-E00, over either ground: the mix's own, and the scale of K and S. */
  readonly p68: number;
}

/**
 * A mix drawn down over both halves of the workshop's chart.
 *
 * K and S come from the let-downs, in units of S of the white, which its own films tell; what the mix's
 * prediction is drawn through beyond them is carried along as a factor, so that a film that hides is the mix itself.
 *
 * @source kubelka-1948, duncan-1940
 */
export function mixFilm(
  mix: PredictedMix,
  { filmUm, medium }: FilmWish,
  range: MixingRange,
): MixFilm | FilmStatement {
  const [black, white] = [range.grounds?.black, range.grounds?.white].map(
    (ground) => ground && measurementOnGrid(ground, mix.spectrum.grid),
  );
  if (black === undefined || white === undefined) return { rule: "grounds-not-read", values: {} };
  const paint = mixCoefficients(mix, medium, range);
  if (isStatement(paint)) return paint;
  const plain = medium === undefined ? paint : mixCoefficients(mix, undefined, range);
  if (isStatement(plain)) return plain;
  const form = surfaceForm(mix.geometry, mix.surface);
  const thick = plain.K.map((K, i) => readingOf(form, masstoneReflectance(K / at(plain.S, i))));
  const factor = thick.map((reading, i) => at(mix.spectrum.values, i) / Math.max(reading, 1e-6));
  const over = (ground: Measurement, um: number): Spectrum => {
    const beneath = internalReflectances(ground, mix.surface).values;
    const values = paint.K.map((K, i) => {
      const S = at(paint.S, i);
      const internal =
        um === Infinity
          ? masstoneReflectance(K / S)
          : Math.max(filmReflectance(K, S, um, at(beneath, i)), 0);
      return Math.min(readingOf(form, internal) * at(factor, i), 1.2);
    });
    return { grid: paint.grid, values };
  };
  const [overBlack, overWhite] = [over(black, filmUm), over(white, filmUm)];
  const thinnerUm = filmUm / (1 + Math.hypot(paint.scaleUncertainty, MIX_FILM_ERRORS.scale));
  const [thinBlack, thinWhite] = [over(black, thinnerUm), over(white, thinnerUm)];
  const ratio = contrastRatio(overBlack, overWhite);
  return {
    coefficients: paint,
    overBlack,
    overWhite,
    labs: { overBlack: spectrumLab(overBlack), overWhite: spectrumLab(overWhite) },
    contrastRatio: ratio,
    contrastUncertainty: Math.hypot(
      ratio - contrastRatio(thinBlack, thinWhite),
      MIX_FILM_ERRORS.contrast,
    ),
    p68: Math.hypot(
      mix.uncertainty.p68,
      deltaE00(spectrumLab(overWhite), spectrumLab(thinWhite)),
      deltaE00(spectrumLab(overBlack), spectrumLab(thinBlack)),
    ),
  };
}

function mixCoefficients(
  { mass, spectrum }: PredictedMix,
  medium: FilmWish["medium"],
  range: MixingRange,
): FilmCoefficients | FilmStatement {
  const film = (slug: string): FilmCoefficients | undefined => {
    const read = range.film(slug);
    return read && filmOnGrid(read, spectrum.grid);
  };
  const white = film(mass.white.slug);
  if (white === undefined)
    return {
      rule: "white-films-not-read",
      values: { white: paintName(mass.white.slug, range) },
    };
  const unknown = [...mass.colours, mass.white].filter(
    ({ slug }) => inFilmGPerCm3(slug, range) === undefined,
  );
  if (unknown.length > 0)
    return {
      rule: "density-not-recorded",
      values: { paints: unknown.map(({ slug }) => paintName(slug, range)) },
    };
  const whiteGPerCm3 = certain(inFilmGPerCm3(mass.white.slug, range));
  const parts: VolumePart[] = [{ paint: white, parts: mass.white.parts / whiteGPerCm3 }];
  for (const { slug, parts: share } of mass.colours) {
    const fit = range.fit(slug);
    const ownGPerCm3 = certain(inFilmGPerCm3(slug, range));
    const density = ownGPerCm3 / whiteGPerCm3;
    const paint = fit && absoluteCoefficients(fit, mass.white.slug, white, density);
    if (paint === undefined || isStatement(paint))
      return { rule: "film-needs-let-downs", values: {} };
    parts.push({ paint, parts: share / ownGPerCm3 });
  }
  const mixed = mixedCoefficients(parts);
  if (medium === undefined || !(medium.volumes > 0)) return mixed;
  const extender = film(medium.slug);
  if (extender === undefined)
    return {
      rule: "medium-films-not-read",
      values: { medium: paintName(medium.slug, range) },
    };
  return mixedCoefficients([
    { paint: mixed, parts: 1 },
    { paint: extender, parts: medium.volumes },
  ]);
}

/** Density of a paint as it lies in a film, without air [g/cm3]. */
function inFilmGPerCm3(slug: string, range: MixingRange): number | undefined {
  const paint = range.paint(slug);
  return paint?.filmDensityGPerCm3 ?? paint?.densityGPerCm3;
}
