import { tristimulus } from "../../colorimetry/tristimulus.ts";
import { commonGrid, measurementOnGrid } from "../../optics/fit/common-grid.ts";
import {
  CHART_GROUNDS,
  filmCoefficients,
  flatGround,
  type FilmCoefficients,
} from "../../optics/films/film-coefficients.ts";
import { HIDING_CONTRAST_RATIO, type Grounds } from "../../optics/films/hiding.ts";
import type { Measurement } from "../../optics/fit/measurement.ts";
import { filmSurface } from "../../optics/surface/workshop-surface.ts";
import { sourceFigure, type Figure } from "../../quantities/figure.ts";
import type { Statement } from "../../quantities/statement.ts";
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import type { Colour, FilmReading, Records, SpectrumReading } from "../../records/records.ts";
import { effectOfPigments } from "../pigments/special-effects.ts";
import { masstoneContrast } from "../tints/films-over-both.ts";
import { opticsReading } from "../tints/optics-reading.ts";
import { given } from "../../quantities/given.ts";

/** The grounds that films were drawn down on, and how they are known. */
export interface OpacityChart {
  readonly grounds: Grounds;
  /** The chart's halves as an estimate, where the workshop has not read its own. */
  readonly assumed: readonly Figure[];
  /** For a method: which chart, and the Y of its halves. */
  readonly words: string;
}

const ASSUMED = sourceFigure("estimated", [CHART_GROUNDS.black, CHART_GROUNDS.white], {
  unit: "1",
  method: "an opacity chart as it is usually printed",
  inputs: [],
});

/** The wavelengths that a colour's films, its masstone and the workshop's chart were all read at; undefined without films. */
export function filmGrid(colour: Colour, { grounds }: Records): WavelengthGrid | undefined {
  const films = spectralFilms(colour).map(({ reading }) => reading);
  return films.length === 0
    ? undefined
    : commonGrid(
        given([
          ...films,
          colour.masstone?.form === "spectrum" && colour.masstone,
          ...(grounds === undefined ? [] : [grounds.black, grounds.white]),
        ]).map(({ spectrum }) => spectrum.grid),
      );
}

/** The workshop's own chart as read, where its reading covers a film's wavelengths; else an assumed one. */
export function opacityChart(grid: WavelengthGrid, { grounds }: Records): OpacityChart {
  const [black, white] = [
    grounds && onGrid(grounds.black, grid),
    grounds && onGrid(grounds.white, grid),
  ];
  if (black !== undefined && white !== undefined) {
    return {
      grounds: { black, white },
      assumed: [],
      words: `the workshop's own opacity chart as read (Y ${luminance(black)} and ${luminance(white)}, ${white.geometry})`,
    };
  }
  return {
    grounds: {
      black: flatGround(grid, CHART_GROUNDS.black),
      white: flatGround(grid, CHART_GROUNDS.white),
    },
    assumed: [ASSUMED],
    words: `an opacity chart assumed to read ${CHART_GROUNDS.black} and ${CHART_GROUNDS.white}`,
  };
}

/** A film's drawdown of which the spectrum is known. */
export type SpectralFilm = FilmReading & { readonly reading: SpectrumReading };

export function spectralFilms({ films }: Colour): SpectralFilm[] {
  return films.filter((film): film is SpectralFilm => film.reading.form === "spectrum");
}

/** K and S of a colour as a film on the chart's wavelengths, or why its films tell none; undefined where none was drawn down. */
export function coefficientsOfFilms(
  colour: Colour,
  { grounds }: OpacityChart,
  records: Records,
): FilmCoefficients | Statement | undefined {
  const { grid } = grounds.black.spectrum;
  const films = spectralFilms(colour).flatMap(({ reading, filmThicknessUm, ground }) => {
    const film = onGrid(reading, grid);
    return film === undefined ? [] : [{ film, filmUm: filmThicknessUm, ground: grounds[ground] }];
  });
  if (films.length === 0) return undefined;
  const effect = effectOfPigments(colour, records);
  if (effect !== undefined) return effect;
  return filmCoefficients(
    films,
    colour.masstone?.form === "spectrum" && hidesItsGround(colour)
      ? onGrid(colour.masstone, grid)
      : undefined,
    filmSurface(films.map(({ film }) => film)),
  );
}

/** A masstone counts as a coat that hides, unless it was read over both grounds and does not. */
function hidesItsGround(colour: Colour): boolean {
  return (masstoneContrast(colour) ?? 1) >= HIDING_CONTRAST_RATIO;
}

function onGrid(reading: SpectrumReading, grid: WavelengthGrid): Measurement | undefined {
  return measurementOnGrid(opticsReading(reading), grid);
}

function luminance({ spectrum }: Measurement): string {
  return (tristimulus(spectrum, "D65/10").Y / 100).toFixed(2);
}
