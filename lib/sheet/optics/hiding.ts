import { readingNotations } from "../../colorimetry/reading-notations.ts";
import { tristimulus } from "../../colorimetry/tristimulus.ts";
import { boundedContrast } from "../../optics/films/film-bounds.ts";
import { glazeStrip } from "../../optics/films/glaze.ts";
import {
  contrastByGlossRuling,
  filmContrastRatio,
  filmSpectrum,
  glossContrasts,
  HIDING_CONTRAST_RATIO,
  masstoneFilmRuling,
} from "../../optics/films/hiding.ts";
import { OPACITY_FILM, opacityRuling, type OpacityRuling } from "../../optics/films/opacity.ts";
import type { ColourFit, FitRefusal } from "../../optics/fit/colour-fit.ts";
import { measurementOnGrid } from "../../optics/fit/common-grid.ts";
import { DRAWDOWN_NOISE } from "../../optics/fit/reading-noise.ts";
import { classifiedFigure } from "../../quantities/derived-figure.ts";
import { bounded, isKnown, knownValue, notStated, type Figure } from "../../quantities/figure.ts";
import type { Interval, Quantity } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";
import type { Colour, Records } from "../../records/records.ts";
import { notationFigure, type Origin } from "../notations/lab-figures.ts";
import { screenFigures } from "../notations/munsell-figures.ts";
import { drawdownRecords } from "../record-inputs.ts";
import { masstoneContrast, paintFilms } from "../tints/films-over-both.ts";
import { opticsReading } from "../tints/optics-reading.ts";
import { letDownCoefficients } from "./let-down-coefficients.ts";
import type { GlossyFilm } from "./read-films.ts";
import { plainNumber, section, type SectionOf } from "../declaration.ts";
import { SCREEN_IF_KNOWN } from "../notations/notation-figures.ts";
import type { FilmsOfColour, ToldFilms } from "./told-films.ts";

/** The colour as a film over white. */
export const GLAZE_STEP = section({ filmUm: plainNumber, ...SCREEN_IF_KNOWN });
type GlazeStep = SectionOf<typeof GLAZE_STEP>;

/** Films of the hiding curve [um]. */
const CURVE_FILMS_UM = [5, 10, 15, 20, 30, 40, 50, 75, 100, 150, 200];

/** Of a colour whose films tell nothing. */
function untold({ untold: { reason }, wanting, inputs }: FilmsOfColour): Figure<never> {
  return notStated(reason, wanting, inputs);
}

/** Contrast ratio of the film that opacity is judged by. */
export function contrastFigure(films: FilmsOfColour): Figure<Quantity> {
  if (films.told === undefined) return untold(films);
  const { contrast, origin, uncertainty, read } = films.told;
  const noise = Math.max(uncertainty, nearestFilm(read)?.noise ?? 0);
  return bounded(notationFigure<Quantity>(contrast.value, "1", origin, noise), contrast.bound);
}

/** The thinnest film that hides. */
export function hidingFilmFigure(films: FilmsOfColour): Figure<Quantity> {
  if (films.told === undefined) return untold(films);
  const { hides, origin, paint } = films.told;
  if (hides.value === Infinity)
    return notStated("not even 5 mm hides", films.wanting, films.inputs);
  const method = `${origin.method}: thinnest film of contrast ratio ${HIDING_CONTRAST_RATIO}`;
  // A bound is the thickness of one film.
  const relative =
    hides.bound === undefined
      ? paint.scaleUncertainty
      : Math.max(paint.scaleUncertainty, DRAWDOWN_NOISE.thickness);
  return bounded(
    notationFigure<Quantity>(hides.value, "um", { ...origin, method }, hides.value * relative),
    hides.bound,
  );
}

/** What of a colour decides its opacity. */
export interface OpacityOfColour {
  readonly colour: Colour;
  readonly films: FilmsOfColour;
  readonly contrastRatio: Figure<Quantity>;
  readonly scatteringPower: Figure<Interval>;
}

/** Undefined where only its Lab was read. */
export function opacityOf({
  colour,
  films: { told },
  contrastRatio,
  scatteringPower,
}: OpacityOfColour): OpacityRuling | undefined {
  const luminance = told === undefined ? masstoneLuminance(colour) : luminanceOverWhite(told);
  return luminance === undefined
    ? undefined
    : opacityRuling({
        filmUm: OPACITY_FILM.um,
        luminance,
        contrastRatio: told && Math.min(told.contrast.value, 1.05),
        contrastUncertainty: isKnown(contrastRatio) ? contrastRatio.uncertainty : undefined,
        bound: told?.contrast.bound,
        scatteringPower: knownValue(scatteringPower),
      });
}

/** The class as a figure, resting on what decided it. */
export function opacityFigure(of: OpacityOfColour): Figure<string> {
  const { films, contrastRatio, scatteringPower } = of;
  const opacity = opacityOf(of);
  if (opacity?.class === undefined)
    return films.told === undefined
      ? untold(films)
      : notStated(
          "too dark for a class by contrast ratio, and how much it scatters is not told",
          isKnown(scatteringPower) ? films.wanting : scatteringPower.wanting,
          films.inputs,
        );
  const word: string = opacity.class;
  const byContrast = opacity.reason?.rule === "opacity-by-contrast-ratio";
  return classifiedFigure(
    {
      name: `opacity of a film of ${OPACITY_FILM.um} \u00b5m, ${byContrast ? "by contrast ratio" : "by how much it scatters: it is too dark for the contrast ratio"}`,
      unit: "",
      source: byContrast ? "optics-practice" : "iso-6504-3",
    },
    { decides: byContrast && films.told !== undefined ? contrastRatio : scatteringPower },
    () => word,
    () => opacity.spans,
  );
}

/** Contrast ratio over the thickness of films, for a picture. */
export function hidingCurve({
  paint,
  chart: { grounds },
  uncertainty,
  read,
  isBound,
}: ToldFilms): { readonly filmUm: number; readonly contrastRatio: number }[] {
  return CURVE_FILMS_UM.map((filmUm) => ({
    filmUm,
    contrastRatio: boundedContrast(
      { filmUm, contrastRatio: filmContrastRatio(paint, filmUm, grounds) },
      uncertainty,
      read,
      isBound,
    ).value,
  }));
}

/** What its films and their masstone tell beside the figures. @param judgedBy by what its opacity was judged. */
export function hidingReasons(
  { told, untold }: FilmsOfColour,
  judgedBy: Statement | undefined,
): Statement[] {
  const judged = judgedBy === undefined ? [] : [judgedBy];
  if (told === undefined) return [...untold.reasons, ...judged];
  return [...judged, contrastByGloss(told) ?? [], told.hid ?? [], told.hidesNot ?? []].flat();
}

/** Of the film as read that is nearest to the one that opacity is judged by, else of that one from K and S. */
function contrastByGloss({ paint, read, chart: { grounds } }: ToldFilms): Statement | undefined {
  const nearest = nearestFilm(read);
  if (nearest === undefined)
    return contrastByGlossRuling(glossContrasts(paint, OPACITY_FILM.um, grounds));
  const { filmUm, contrastRatio: included, excluded, luminanceApart } = nearest;
  return excluded === undefined || luminanceApart === undefined
    ? undefined
    : contrastByGlossRuling({ filmUm, included, excluded, luminanceApart });
}

/** Of the films as read the one nearest to that which opacity is judged by. */
function nearestFilm(read: readonly GlossyFilm[]): GlossyFilm | undefined {
  const away = ({ filmUm }: GlossyFilm): number => Math.abs(Math.log(filmUm / OPACITY_FILM.um));
  return read.toSorted((one, other) => away(one) - away(other))[0];
}

/** That what is called the masstone is a film which lets its ground through, where it was read over both. */
export function masstoneFilm(colour: Colour, records: Records): Statement[] {
  const contrast = masstoneContrast(colour);
  const said =
    contrast && masstoneFilmRuling(contrast, paintFilms(colour, records).film !== undefined);
  return said === undefined || said === 0 ? [] : [said];
}

/** Y [1] of the masstone without its gloss; undefined where only its Lab was read. */
function masstoneLuminance({ masstone }: Colour): number | undefined {
  return masstone?.form === "spectrum"
    ? tristimulus(opticsReading(masstone).spectrum, "D65/10").Y / 100
    : undefined;
}

/** Y [1] of the film that opacity is judged by, over white without gloss. */
function luminanceOverWhite({ paint, chart: { grounds } }: ToldFilms): number {
  const overWhite = filmSpectrum(paint, OPACITY_FILM.um, grounds.white, "d/8 excluded");
  return tristimulus(overWhite, "D65/10").Y / 100;
}

/**
 * In films over white: by the colour's own films, and where these hid their grounds, so that they tell K and S
 * only as "at least" figures, by its let-downs; nothing where neither tells them.
 */
export function glaze(
  { paint: own, isBound, origin, chart: { grounds } }: ToldFilms,
  colour: Colour,
  fit: ColourFit | FitRefusal | undefined,
  records: Records,
): GlazeStep[] | undefined {
  const ofFilms = isBound ? undefined : own;
  const letDown =
    ofFilms === undefined && fit?.kind === "fit"
      ? letDownCoefficients(colour, fit, records)
      : undefined;
  const paint = ofFilms ?? letDown?.coefficients;
  const under = paint && measurementOnGrid(grounds.white, paint.grid);
  if (paint === undefined || under === undefined) return undefined;
  const told: Origin = {
    ...origin,
    method:
      letDown === undefined
        ? "K and S from its films; over white, gloss excluded"
        : `K and S from its let-downs in ${letDown.white}, those of ${letDown.white} from its films; over white, gloss excluded`,
    inputs:
      letDown === undefined
        ? origin.inputs
        : [...origin.inputs, ...drawdownRecords(colour, records)],
  };
  return glazeStrip(paint, under).map(({ filmUm, spectrum }) => ({
    filmUm,
    ...screenFigures(readingNotations(spectrum).screen, told),
  }));
}
