/**
 * How far films of mixtures lie from measured films of the same parts: each let-down left out, and drawn
 * down over both halves of the chart as the tint bench predicts it.
 */
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import { spectrumLab } from "../../lib/colorimetry/spectrum-lab.ts";
import { paintDensityGPerCm3 } from "../../lib/formulation/paint-volume.ts";
import { packedFit, FIT_FORMAT } from "../../lib/mixing/fits/packed-fit.ts";
import {
  packedNumbers,
  REFLECTANCE_STEPS,
  RELATIVE_STEPS,
} from "../../lib/mixing/fits/packed-numbers.ts";
import { mixingRange, type MixingRange } from "../../lib/mixing/mixing-range.ts";
import type { MixingPaint, PackedReading } from "../../lib/mixing/mixing-paint.ts";
import { mixFilm } from "../../lib/mixing/prediction/mix-film.ts";
import { predictedMix } from "../../lib/mixing/prediction/predicted-mix.ts";
import { filmCoefficients } from "../../lib/optics/films/film-coefficients.ts";
import { contrastNoise } from "../../lib/optics/films/contrast-noise.ts";
import { contrastRatio } from "../../lib/optics/films/hiding.ts";
import type { Measurement } from "../../lib/optics/fit/measurement.ts";
import type { ColourFit } from "../../lib/optics/fit/colour-fit.ts";
import { readingNoise } from "../../lib/optics/fit/reading-noise.ts";
import { notRefused } from "../../lib/quantities/statement.ts";
import type { FigureError } from "./figure-errors.ts";
import { MEASURED_PAINTS, measuredPaint } from "./measured-paints.ts";
import { fittedWithout, LADDERS, setOf, WHITE } from "./prediction-errors.ts";

/** Of every film [um], since one bar drew all and its gap is not stated: only its being one counts. */
export const FILM_UM = 75;

/**
 * Density of each pigment [g/cm3] and the oil that it is ground in [g to 100 g], which are not in the data: as
 * gettens-stout-1942 and church-1915 have them, of lakes and emerald green by common practice.
 */
export const GROUND: Readonly<Record<string, readonly [densityGPerCm3: number, oilG: number]>> = {
  "eosin lake one": [1.7, 80],
  "eosin lake two": [1.7, 80],
  "eosin lake three": [1.7, 80],
  cochineal: [1.6, 80],
  "red lead": [8.73, 10],
  vermilion: [8.1, 23],
  "zinc white": [5.65, 21],
  "bone black": [2.29, 70],
  "viridian green": [3.32, 54],
  "emerald green": [3.27, 40],
  "ultramarine blue": [2.34, 38],
  "cobalt blue": [3.83, 40],
  "prussian blue": [1.83, 75],
  "chrome yellow": [5.96, 25],
  "chrome yellow two": [5.96, 25],
};

/** Density of linseed oil [g/cm3]. */
const OIL_G_PER_CM3 = 0.93;

export interface FilmError {
  readonly id: string;
  readonly contrast: FigureError;
  /** Delta-E00 over black and over white, and the printed 68 %. */
  readonly deltaE00: readonly [overBlack: number, overWhite: number];
  readonly p68: number;
}

export function letDownFilmErrors(): FilmError[] {
  return LADDERS.flatMap((ids) => {
    const set = setOf(ids, "with films");
    return set.tints.map((left): FilmError => {
      const fit = fittedWithout(ids, left.id, "with films");
      const paint = measuredPaint(left.id);
      const range = rangeOf(ids[0], fit, left.id);
      const predicted = notRefused(
        predictedMix(
          {
            by: "mass",
            colours: [{ slug: "colour", parts: left.massRatio }],
            white: { slug: WHITE, parts: 1 },
          },
          range,
        ),
      );
      const film = notRefused(mixFilm(predicted, { filmUm: FILM_UM }, range));
      const { overBlack, overWhite } = paint;
      return {
        id: left.id,
        contrast: {
          id: left.id,
          printed: film.contrastRatio,
          truth: contrastRatio(overBlack.spectrum, overWhite.spectrum),
          uncertainty: film.contrastUncertainty,
        },
        deltaE00: [
          deltaE00(spectrumLab(overBlack.spectrum), film.labs.overBlack),
          deltaE00(spectrumLab(overWhite.spectrum), film.labs.overWhite),
        ],
        p68: film.p68,
      };
    });
  });
}

/** From what contrast ratio a film is taken to have hidden its chart. */
const HID_FROM = 0.994;

/**
 * Contrast ratios of films that hid their chart, as sheets tell them of films as read. Such a film reads alike over
 * both halves, so that what its ratio is off from 1 is noise.
 */
export function hiddenFilmErrors(): FigureError[] {
  return [...MEASURED_PAINTS.values()].flatMap(({ id, overBlack, overWhite }): FigureError[] => {
    const printed = contrastRatio(overBlack.spectrum, overWhite.spectrum);
    const noise = readingNoise(overBlack);
    const uncertainty = contrastNoise(overBlack.spectrum, overWhite.spectrum, noise);
    return printed > HID_FROM ? [{ id, printed, truth: 1, uncertainty }] : [];
  });
}

function rangeOf(masstone: string, fit: ColourFit, drawn: string): MixingRange {
  const white = measuredPaint("07A");
  const surface = fit.surface.surface;
  const film = notRefused(
    filmCoefficients(
      [
        { film: white.overBlack, filmUm: FILM_UM, ground: white.chartBlack },
        { film: white.overWhite, filmUm: FILM_UM, ground: white.chartWhite },
      ],
      undefined,
      surface,
    ),
  );
  const facts = {
    warning: { signal: null, statements: [], isUnknown: true },
    metals: [],
    isRestricted: false,
  };
  const colour: MixingPaint = {
    slug: "colour",
    name: "colour",
    kind: "colour",
    index: [],
    fit: packedFit(fit),
    densityGPerCm3: densityGPerCm3(masstone),
    facts,
  };
  const { chartBlack, chartWhite } = measuredPaint(drawn);
  return mixingRange({
    format: FIT_FORMAT,
    revision: "",
    workshop: "",
    observer: "CIE 1964",
    grounds: { black: packed(chartBlack), white: packed(chartWhite) },
    paints: [
      colour,
      {
        slug: WHITE,
        name: WHITE,
        kind: "white",
        index: [],
        densityGPerCm3: densityGPerCm3("07A"),
        film: {
          grid: film.grid,
          K: packedNumbers(film.K, RELATIVE_STEPS),
          S: packedNumbers(film.S, RELATIVE_STEPS),
          surface,
          scaleUncertainty: film.scaleUncertainty,
        },
        facts,
      },
    ],
  });
}

function packed({ spectrum: { grid, values }, geometry }: Measurement): PackedReading {
  return { grid, geometry, values: packedNumbers(values, REFLECTANCE_STEPS) };
}

function densityGPerCm3(id: string): number {
  // Of bone black's darkest let-down, the black.
  const [[name] = [""]] = [...measuredPaint(id).parts].toSorted(
    ([, one], [, other]) => other - one,
  );
  const ground = GROUND[name];
  if (ground === undefined) throw new RangeError(`Nothing is known of how ${name} was ground`);
  const [densityOfPigment, oilG] = ground;
  return paintDensityGPerCm3([
    { massG: 100, densityGPerCm3: densityOfPigment },
    { massG: oilG, densityGPerCm3: OIL_G_PER_CM3 },
  ]);
}
