import type { ColourFit, FitRefusal, FittedWhite } from "../../optics/fit/colour-fit.ts";
import type { FilmCoefficients } from "../../optics/films/film-coefficients.ts";
import { filmSpectrum } from "../../optics/films/hiding.ts";
import { OPACITY_CLASSES, OPACITY_FILM } from "../../optics/films/opacity.ts";
import {
  leastScatteringPower,
  scatteringPowerOfFilms,
  scatteringPowerSeen,
  seenWeights,
} from "../../optics/films/scattering-power.ts";
import { at, certain } from "../../quantities/at.ts";
import {
  isKnown,
  notStated,
  sourceFigure,
  type Figure,
  type RecordRoot,
} from "../../quantities/figure.ts";
import { ends, spanning, type Interval, type Quantity } from "../../quantities/interval.ts";
import type { Colour, Records } from "../../records/records.ts";
import { notationFigure } from "../notations/lab-figures.ts";
import { colourRecord, drawdownRecords, filmRecords, ingredientRecords } from "../record-inputs.ts";
import { weighedPaint } from "../tints/paint-conversion.ts";
import { filmsOf } from "./let-down-coefficients.ts";
import type { OpacityChart } from "./opacity-chart.ts";

/** How far [1] S of a white's films is trusted, where a colour's S is reckoned from it. */
const WHITE_FILM_SPREAD = 0.15;

/** S X [1] below which a paint is transparent, whatever less it may be. */
const SCATTERS_LITTLE = certain(
  OPACITY_CLASSES.find((row) => row.class === "semi-transparent"),
).scatteringPowerMin;

/** That trust as a figure, so that what is reckoned by it rests on an estimate. */
const TRUST = sourceFigure("estimated", WHITE_FILM_SPREAD, {
  unit: "1",
  method: "how far S of a white's films is trusted",
  inputs: [],
});

/** K and S of a colour's own films, with the chart that they were drawn on. */
export interface OwnFilms {
  readonly paint: FilmCoefficients;
  readonly chart: OpacityChart;
}

/**
 * S X of the film that opacity is judged by: from the colour's own films, else from its let-downs in a white
 * of which films were drawn, and then no less than own films that hid the chart allow.
 */
export function scatteringPowerFigure(
  colour: Colour,
  own: OwnFilms | undefined,
  paintDensity: Figure<Quantity>,
  fit: ColourFit | FitRefusal | undefined,
  records: Records,
): Figure<Interval> {
  const filmRoots = filmRecords(colour, records);
  const ownRoots = [...filmRoots, ...(own?.chart.assumed ?? [])];
  const films = own && seenFilms(own);
  const ofFilms = films && scatteringPowerOfFilms(...films);
  if (ofFilms !== undefined)
    return notationFigure(ofFilms, "1", {
      standing: "derived",
      inputs: ownRoots,
      source: "kubelka-1948",
      method: `S of its films times ${OPACITY_FILM.um} \u00b5m, averaged over the light that it throws back`,
    });
  const drawn = [...drawdownRecords(colour, records), ...whiteFilmRecords(fit, records)];
  const ofFit = fit?.kind === "fit" ? powerOfFit(fit, paintDensity, records) : undefined;
  if (ofFit !== undefined) {
    const [byLetDowns, most] = ofFit;
    const least = films === undefined ? 0 : leastScatteringPower(...films);
    const isRaised = least > byLetDowns;
    const power: Interval = isRaised ? [Math.min(least, most), Math.max(least, most)] : ofFit;
    return notationFigure(power, "1", {
      standing: "derived",
      source: "walowit-1987",
      method: `S of its let-downs in units of the white's S, times that of the white's films and ${OPACITY_FILM.um} \u00b5m${isRaised ? ", and no less than its own films, which hid the chart, allow" : ""}`,
      inputs: [paintDensity, TRUST, ...drawn, ...(isRaised ? ownRoots : [])],
    });
  }
  // A fit tells S in units of the white's own: of a film it tells nothing before films of one of the two were read.
  return notStated(
    fit?.kind === "fit"
      ? "its let-downs tell how much it scatters beside its whites, and not how much a film of it does"
      : "neither its films nor let-downs tell how much it scatters",
    filmsWanted(colour, fit, records),
    [...drawn, ...filmRoots],
  );
}

/** Its own films; where it has some, those of the whites that it was let down in and that have none. */
function filmsWanted(
  colour: Colour,
  fit: ColourFit | FitRefusal | undefined,
  records: Records,
): string[] {
  const whites = fit?.kind === "fit" ? fit.whites.map(({ slug }) => slug) : [];
  const undrawn = whites.filter((slug) => records.colours.get(slug)?.films.length === 0);
  const wanted = colour.films.length === 0 || undrawn.length === 0 ? [colour.slug] : undrawn;
  return wanted.map((slug) => `colours.${slug}.films`);
}

/** Films of the whites that a colour was let down in, and the oil that their density goes by. */
function whiteFilmRecords(fit: ColourFit | FitRefusal | undefined, records: Records): RecordRoot[] {
  if (fit?.kind !== "fit") return [];
  return fit.whites.flatMap(({ slug }) => {
    const white = records.colours.get(slug);
    if (white === undefined) return [];
    return [
      ...filmRecords(white, records),
      ...ingredientRecords(white, records),
      ...colourRecord(white, "oilIndexGPer100g"),
    ];
  });
}

/** Films, weights and thickness by which their S X goes. */
function seenFilms({ paint, chart }: OwnFilms): Parameters<typeof leastScatteringPower> {
  const seen = filmSpectrum(paint, OPACITY_FILM.um, chart.grounds.white, "d/8 excluded");
  return [paint, seenWeights(paint.grid, seen.values), OPACITY_FILM.um];
}

/** Over every white that carries it, with twice the fit's own uncertainty. */
function powerOfFit(
  fit: ColourFit,
  density: Figure<Quantity>,
  records: Records,
): Interval | undefined {
  if (!isKnown(density)) return undefined;
  const weights = seenWeights(fit.grid, fit.masstone.internal);
  const ranges = fit.whites.flatMap((white) => {
    const scattering = absoluteScattering(white, fit, records);
    const whiteDensity = weighedPaint(white.slug, records, "inFilm").density;
    if (scattering === undefined || !isKnown(whiteDensity)) return [];
    const power = scatteringPowerSeen(scattering, weights, OPACITY_FILM.um);
    const spread =
      1 + Math.hypot(WHITE_FILM_SPREAD, 2 * scatteringPowerSeen(white.SUncertainty, weights, 1));
    const [least, most] = ends(density.value);
    const [leastWhite, mostWhite] = ends(whiteDensity.value);
    return [
      [(power * least) / mostWhite / spread, ((power * most) / leastWhite) * spread] as const,
    ];
  });
  const [least, most] = spanning(ranges);
  // Where the surface is only kept under the darkest reading, a dark paint's S hangs on it: it may be anything below.
  const isBound =
    fit.scattering.rule === "scattering-is-bound" && fit.surface.by === "darkest-reading";
  return ranges.length === 0 || (isBound && most >= SCATTERS_LITTLE) ? undefined : [least, most];
}

/** S of the colour [1/um] per part by mass of the white's paint; undefined where no films of the white tell it. */
function absoluteScattering(
  { slug, ratioKind, S }: FittedWhite,
  { grid }: ColourFit,
  records: Records,
): number[] | undefined {
  const white = records.colours.get(slug);
  const films = white && ratioKind === "paint" ? filmsOf(white, grid, records) : undefined;
  return films && S.map((relative, i) => relative * at(films.S, i));
}
