import { drawnCoatRuling } from "../../optics/films/drawn-coat.ts";
import {
  boundedContrast,
  boundedHidingFilm,
  type Bounded,
} from "../../optics/films/film-bounds.ts";
import type { FilmCoefficients } from "../../optics/films/film-coefficients.ts";
import {
  filmContrast,
  filmsHidRuling,
  HIDING_CONTRAST_RATIO,
  hidingFilmUm,
} from "../../optics/films/hiding.ts";
import { OPACITY_FILM } from "../../optics/films/opacity.ts";
import type { RecordRoot } from "../../quantities/figure.ts";
import { isStatement, type Statement } from "../../quantities/statement.ts";
import type { Colour, Records } from "../../records/records.ts";
import type { Origin } from "../notations/lab-figures.ts";
import { effectOfPigments } from "../pigments/special-effects.ts";
import { filmRecords } from "../record-inputs.ts";
import { masstoneContrast } from "../tints/films-over-both.ts";
import {
  coefficientsOfFilms,
  filmGrid,
  opacityChart,
  spectralFilms,
  type OpacityChart,
} from "./opacity-chart.ts";
import { readFilms, type GlossyFilm } from "./read-films.ts";

/** What a colour's own drawdowns of known thickness over black and white tell of hiding. */
export interface ToldFilms {
  readonly chart: OpacityChart;
  readonly paint: FilmCoefficients;
  readonly origin: Origin;
  /** As they were read over both grounds. */
  readonly read: readonly GlossyFilm[];
  /** That they hid their grounds; then they tell only what the true figures do not pass. */
  readonly hid: Statement | undefined;
  readonly isBound: boolean;
  /** Of the film that opacity is judged by, with its uncertainty [1]. */
  readonly contrast: Bounded;
  readonly uncertainty: number;
  /** The thinnest film that hides [um], and that none does. */
  readonly hides: Bounded;
  readonly hidesNot: Statement | undefined;
}

/** Why they tell nothing. */
export interface UntoldFilms {
  readonly reason: string;
  readonly reasons: readonly Statement[];
}

/** What a colour's films tell, the records that this is made of, and what would have to be recorded. */
export interface FilmsOfColour {
  readonly told: ToldFilms | undefined;
  readonly untold: UntoldFilms;
  readonly wanting: readonly string[];
  readonly inputs: readonly RecordRoot[];
}

export function filmsOfColour(colour: Colour, records: Records): FilmsOfColour {
  const inputs = filmRecords(colour, records);
  const effect = effectOfPigments(colour, records);
  const found =
    effect === undefined
      ? toldFilms(colour, inputs, records)
      : { reason: "two-constant theory does not hold for its pigments", reasons: [effect] };
  const isTold = "paint" in found;
  return {
    told: isTold ? found : undefined,
    untold: isTold ? { reason: "", reasons: [] } : found,
    wanting: effect === undefined ? [`colours.${colour.slug}.films`] : [],
    inputs,
  };
}

/** That its masstone was drawn down as a coat, where no film of known thickness was. */
export function coatReasons(colour: Colour): Statement[] {
  const contrast = masstoneContrast(colour);
  return contrast === undefined || spectralFilms(colour).length > 0
    ? []
    : [drawnCoatRuling(contrast) ?? []].flat();
}

function toldFilms(
  colour: Colour,
  inputs: readonly RecordRoot[],
  records: Records,
): ToldFilms | UntoldFilms {
  const films = spectralFilms(colour);
  const [first] = films;
  if (first === undefined) return { reason: withoutFilms(colour), reasons: [] };
  const chart = opacityChart(filmGrid(colour, records) ?? first.reading.spectrum.grid, records);
  const { grounds } = chart;
  const paint = coefficientsOfFilms(colour, chart, records);
  if (paint === undefined || isStatement(paint))
    return {
      reason: "its films tell nothing of hiding",
      reasons: paint === undefined ? [] : [paint],
    };
  const filmsUm = films.map(({ filmThicknessUm }) => filmThicknessUm);
  const hid = filmsHidRuling(paint, [Math.min(...filmsUm), Math.max(...filmsUm)], grounds);
  const read = readFilms(colour, paint.surface);
  const isBound = hid !== undefined || nearlyHid(paint, read);
  const { value, uncertainty } = filmContrast(paint, OPACITY_FILM.um, grounds);
  const hidingUm = hidingFilmUm(paint, grounds);
  const hides = boundedHidingFilm(
    isStatement(hidingUm) ? Infinity : hidingUm,
    paint.scaleUncertainty,
    read,
    isBound,
    HIDING_CONTRAST_RATIO,
  );
  return {
    chart,
    paint,
    origin: {
      standing: "derived",
      inputs: [...inputs, ...chart.assumed],
      source: "kubelka-1948",
      method: `K and S from films of ${[...new Set(filmsUm)].join(", ")} \u00b5m over ${chart.words}; for ${OPACITY_FILM.um} \u00b5m, gloss included`,
    },
    read,
    hid,
    isBound,
    contrast: boundedContrast(
      { filmUm: OPACITY_FILM.um, contrastRatio: value },
      uncertainty,
      read,
      isBound,
    ),
    uncertainty,
    hides,
    hidesNot: isStatement(hidingUm) && hides.value === Infinity ? hidingUm : undefined,
  };
}

function withoutFilms(colour: Colour): string {
  if (colour.films.length > 0)
    return "its films were read without a spectrum, and what a film hides is worked out from one";
  return masstoneContrast(colour) === undefined
    ? "no drawdown of known thickness over black and white"
    : "it was drawn down over black and white, but the thickness of that film is not recorded";
}

/** Contrast ratio [1] from which a film lets through too little of its ground to tell K and S. Our own limit. */
const TELLS_TO = 0.95;

/** Whether films hid their grounds at most wavelengths, and nearly by Y. */
function nearlyHid({ atLeast, grid }: FilmCoefficients, read: readonly GlossyFilm[]): boolean {
  const least = Math.min(...read.map(({ contrastRatio }) => contrastRatio));
  return atLeast.length > grid.count / 2 && least >= TELLS_TO;
}
