import { readingNotations } from "../../colorimetry/reading-notations.ts";
import type { FilmCoefficients } from "../../optics/films/film-coefficients.ts";
import { glazeStrip } from "../../optics/films/glaze.ts";
import { drawnCoatRuling } from "../../optics/films/drawn-coat.ts";
import {
  boundedContrast,
  boundedHidingFilm,
  type Bounded,
} from "../../optics/films/film-bounds.ts";
import {
  contrastByGlossRuling,
  coverageCm2PerMl,
  filmContrast,
  filmContrastRatio,
  filmsHidRuling,
  glossContrasts,
  HIDING_CONTRAST_RATIO,
  filmSpectrum,
  hidingFilmUm,
  masstoneFilmRuling,
  type Grounds,
} from "../../optics/films/hiding.ts";
import {
  OPACITY_FILM,
  opacityRuling,
  type OpacityRuling,
  type OpacityStatement,
} from "../../optics/films/opacity.ts";
import { DRAWDOWN_NOISE } from "../../optics/fit/reading-noise.ts";
import { tristimulus } from "../../colorimetry/tristimulus.ts";
import type { ColourFit, FitRefusal } from "../../optics/fit/colour-fit.ts";
import {
  bounded,
  isKnown,
  notStated,
  type Figure,
  type NotStated,
} from "../../quantities/figure.ts";
import type { Interval, Quantity } from "../../quantities/interval.ts";
import { measurementOnGrid } from "../../optics/fit/common-grid.ts";
import { isStatement, type Statement } from "../../quantities/statement.ts";
import { classifiedFigure, derivedFigure } from "../../quantities/derived-figure.ts";
import type { Colour, Records } from "../../records/records.ts";
import { notationFigure, type Origin } from "../notations/lab-figures.ts";
import { screenFigures } from "../notations/munsell-figures.ts";
import { effectOfPigments } from "../pigments/special-effects.ts";
import { masstoneContrast, paintFilms } from "../tints/films-over-both.ts";
import { opticsReading } from "../tints/optics-reading.ts";
import { drawdownRecords, filmRecords } from "../record-inputs.ts";
import { letDownCoefficients } from "./let-down-coefficients.ts";
import { coefficientsOfFilms, filmGrid, opacityChart, spectralFilms } from "./opacity-chart.ts";
import { readFilms, type GlossyFilm } from "./read-films.ts";
import { scatteringPowerFigure } from "./scattering-power.ts";
import type { OpticsSection } from "./optics-figures.ts";

export type Hiding = Pick<
  OpticsSection,
  | "contrastRatio"
  | "hidingFilmUm"
  | "coverageCm2PerMl"
  | "scatteringPower"
  | "opacityClass"
  | "glaze"
  | "hidingCurve"
> & {
  readonly reasons: readonly Statement[];
  /** By what its opacity was judged; absent where it was not. */
  readonly judgedBy?: OpacityStatement;
};

/** Films of the hiding curve [um]. */
const CURVE_FILMS_UM = [5, 10, 15, 20, 30, 40, 50, 75, 100, 150, 200];

const OPPOSITE = { "at least": "at most", "at most": "at least" } as const;

/** What films of known thickness hide, from the colour's own drawdowns over black and white. */
export function hiding(
  colour: Colour,
  volumeSolids: Figure<Quantity>,
  paintDensity: Figure<Quantity>,
  fit: ColourFit | FitRefusal | undefined,
  records: Records,
): Hiding {
  const films = spectralFilms(colour);
  const [first] = films;
  const film = masstoneFilm(colour, records);
  const asDrawn = masstoneContrast(colour);
  const coat = [(asDrawn === undefined ? undefined : drawnCoatRuling(asDrawn)) ?? []].flat();
  const effect = effectOfPigments(colour, records);
  const wanting = effect === undefined ? [`colours.${colour.slug}.films`] : [];
  const inputs = filmRecords(colour, records);
  const withoutFilms = (reason: string, reasons: readonly Statement[]): Hiding => {
    const none = notStated(reason, wanting, inputs);
    const scatteringPower = scatteringPowerFigure(colour, undefined, paintDensity, fit, records);
    const luminance = masstoneLuminance(colour);
    const opacity = opacityOf(undefined, scatteringPower, luminance);
    return {
      contrastRatio: none,
      hidingFilmUm: none,
      coverageCm2PerMl: none,
      scatteringPower,
      opacityClass: opacityFigure(opacity, undefined, scatteringPower, none),
      ...(opacity?.reason === undefined ? {} : { judgedBy: opacity.reason }),
      reasons: [
        ...(first === undefined ? coat : []),
        ...film,
        ...reasons,
        ...(opacity?.reason === undefined ? [] : [opacity.reason]),
      ],
    };
  };
  if (effect !== undefined)
    return withoutFilms("two-constant theory does not hold for its pigments", [effect]);
  if (first === undefined)
    return withoutFilms(
      colour.films.length > 0
        ? "its films were read without a spectrum, and what a film hides is worked out from one"
        : asDrawn === undefined
          ? "no drawdown of known thickness over black and white"
          : "it was drawn down over black and white, but the thickness of that film is not recorded",
      [],
    );
  const grid = filmGrid(colour, records) ?? first.reading.spectrum.grid;
  const chart = opacityChart(grid, records);
  const { grounds } = chart;
  const paint = coefficientsOfFilms(colour, chart, records);
  if (paint === undefined || isStatement(paint))
    return withoutFilms("its films tell nothing of hiding", paint === undefined ? [] : [paint]);
  const thicknesses = [...new Set(films.map(({ filmThicknessUm }) => filmThicknessUm))].join(", ");
  const origin: Origin = {
    standing: "derived",
    inputs: [...inputs, ...chart.assumed],
    source: "kubelka-1948",
    method: `K and S from films of ${thicknesses} \u00b5m over ${chart.words}; for ${OPACITY_FILM.um} \u00b5m, gloss included`,
  };
  const filmsUm = films.map(({ filmThicknessUm }) => filmThicknessUm);
  const hid = filmsHidRuling(paint, [Math.min(...filmsUm), Math.max(...filmsUm)], grounds);
  const read = readFilms(colour, paint.surface);
  const byGloss = contrastByGloss(paint, read, grounds);
  const isBound = hid !== undefined || nearlyHid(paint, read);
  const { value, uncertainty } = filmContrast(paint, OPACITY_FILM.um, grounds);
  const contrast = boundedContrast(
    { filmUm: OPACITY_FILM.um, contrastRatio: value },
    uncertainty,
    read,
    isBound,
  );
  const hidingUm = hidingFilmUm(paint, grounds);
  const hides = boundedHidingFilm(
    isStatement(hidingUm) ? Infinity : hidingUm,
    paint.scaleUncertainty,
    read,
    isBound,
    HIDING_CONTRAST_RATIO,
  );
  const contrastRatio = bounded(
    notationFigure<Quantity>(
      contrast.value,
      "1",
      origin,
      Math.max(uncertainty, nearestFilm(read)?.noise ?? 0),
    ),
    contrast.bound,
  );
  const hidingFilm: Figure<Quantity> =
    hides.value === Infinity
      ? notStated("not even 5 mm hides", wanting, inputs)
      : bounded(
          notationFigure<Quantity>(
            hides.value,
            "um",
            {
              ...origin,
              method: `${origin.method}: thinnest film of contrast ratio ${HIDING_CONTRAST_RATIO}`,
            },
            // A bound is the thickness of one film.
            hides.value *
              (hides.bound === undefined
                ? paint.scaleUncertainty
                : Math.max(paint.scaleUncertainty, DRAWDOWN_NOISE.thickness)),
          ),
          hides.bound,
        );
  const scatteringPower = scatteringPowerFigure(
    colour,
    { paint, chart },
    paintDensity,
    fit,
    records,
  );
  const overWhite = filmSpectrum(paint, OPACITY_FILM.um, grounds.white, "d/8 excluded");
  const opacity = opacityOf(contrast, scatteringPower, tristimulus(overWhite, "D65/10").Y / 100);
  return {
    contrastRatio,
    hidingFilmUm: hidingFilm,
    // The thinner the film that hides, the further it goes.
    coverageCm2PerMl: bounded(
      derivedFigure(
        { name: "10 000 / film that hides [\u00b5m] x volume solids", unit: "cm2/ml" },
        { hidingFilm, volumeSolids },
        (v) => coverageCm2PerMl(v.hidingFilm) * v.volumeSolids,
      ),
      hides.bound && OPPOSITE[hides.bound],
    ),
    scatteringPower,
    opacityClass: opacityFigure(
      opacity,
      contrastRatio,
      scatteringPower,
      notStated(
        "too dark for a class by contrast ratio, and how much it scatters is not told",
        wanting,
        inputs,
      ),
    ),
    ...(opacity?.reason === undefined ? {} : { judgedBy: opacity.reason }),
    ...glaze(isBound ? undefined : paint, grounds, origin, colour, fit, records),
    hidingCurve: CURVE_FILMS_UM.map((filmUm) => ({
      filmUm,
      contrastRatio: boundedContrast(
        { filmUm, contrastRatio: filmContrastRatio(paint, filmUm, grounds) },
        uncertainty,
        read,
        isBound,
      ).value,
    })),
    reasons: [
      ...film,
      ...(opacity?.reason === undefined ? [] : [opacity.reason]),
      ...(byGloss === undefined ? [] : [byGloss]),
      ...(hid === undefined ? [] : [hid]),
      ...(isStatement(hidingUm) && hides.value === Infinity ? [hidingUm] : []),
    ],
  };
}

/** Of the film as read that is nearest to the one that opacity is judged by, else of that one from K and S. */
function contrastByGloss(
  paint: FilmCoefficients,
  read: readonly GlossyFilm[],
  grounds: Grounds,
): Statement | undefined {
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
function masstoneFilm(colour: Colour, records: Records): Statement[] {
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

function opacityOf(
  contrast: Bounded | undefined,
  scatteringPower: Figure<Interval>,
  luminance: number | undefined,
): OpacityRuling | undefined {
  return luminance === undefined
    ? undefined
    : opacityRuling({
        filmUm: OPACITY_FILM.um,
        luminance,
        contrastRatio: contrast && Math.min(contrast.value, 1.05),
        bound: contrast?.bound,
        scatteringPower: isKnown(scatteringPower) ? scatteringPower.value : undefined,
      });
}

/** The class as a figure, resting on what decided it. */
function opacityFigure(
  opacity: OpacityRuling | undefined,
  contrastRatio: Figure<Quantity> | undefined,
  scatteringPower: Figure<Interval>,
  none: NotStated,
): Figure<string> {
  if (opacity?.class === undefined) return none;
  const word: string = opacity.class;
  const byContrast = opacity.reason?.rule === "opacity-by-contrast-ratio";
  return classifiedFigure(
    {
      name: `opacity of a film of ${OPACITY_FILM.um} \u00b5m, ${byContrast ? "by contrast ratio" : "by how much it scatters: it is too dark for the contrast ratio"}`,
      unit: "",
      source: byContrast ? "optics-practice" : "iso-6504-3",
    },
    { decides: byContrast && contrastRatio !== undefined ? contrastRatio : scatteringPower },
    () => word,
  );
}

/** Contrast ratio [1] from which a film lets through too little of its ground to tell K and S. Our own limit. */
const TELLS_TO = 0.95;

/** Whether films hid their grounds at most wavelengths, and nearly by Y. */
function nearlyHid({ atLeast, grid }: FilmCoefficients, read: readonly GlossyFilm[]): boolean {
  const least = Math.min(...read.map(({ contrastRatio }) => contrastRatio));
  return atLeast.length > grid.count / 2 && least >= TELLS_TO;
}

/**
 * In films over white: by the colour's own films, and where these hid their grounds, so that they tell K and S
 * only as "at least" figures, by its let-downs; nothing where neither tells them.
 */
function glaze(
  ofFilms: FilmCoefficients | undefined,
  { white }: Grounds,
  origin: Origin,
  colour: Colour,
  fit: ColourFit | FitRefusal | undefined,
  records: Records,
): Pick<Hiding, "glaze"> {
  const letDown =
    ofFilms === undefined && fit?.kind === "fit"
      ? letDownCoefficients(colour, fit, records)
      : undefined;
  const paint = ofFilms ?? letDown?.coefficients;
  const under = paint && measurementOnGrid(white, paint.grid);
  if (paint === undefined || under === undefined) return {};
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
  return {
    glaze: glazeStrip(paint, under).map(({ filmUm, spectrum }) => ({
      filmUm,
      ...screenFigures(readingNotations(spectrum).screen, told),
    })),
  };
}
