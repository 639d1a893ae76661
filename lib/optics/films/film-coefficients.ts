/** K and S of a paint in absolute terms, from films of known thickness over known grounds. */
import { requirePositive } from "../../quantities/positive.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import {
  flatSpectrum,
  sameGrid,
  wavelengthsNm,
  type WavelengthGrid,
} from "../../quantities/spectrum.ts";
import { scatteringPower, twoGroundRatio } from "./film.ts";
import { absorptionScatteringRatio, masstoneReflectance } from "../kubelka-munk.ts";
import { spectrumOnGrid } from "../fit/common-grid.ts";
import { DRAWDOWN_NOISE, readingNoise } from "../fit/reading-noise.ts";
import type { Geometry, Measurement, SurfaceConstants } from "../fit/measurement.ts";
import { internalReflectances } from "../surface/measurement-in-geometry.ts";
import { keptReflectance } from "../tints/tint-reading.ts";
import { at } from "../../quantities/at.ts";
import { median } from "../../quantities/median.ts";

/** K and S of a paint as a dried film [1/um], shape (count) each. */
export interface FilmCoefficients {
  readonly grid: WavelengthGrid;
  readonly K: readonly number[];
  readonly S: readonly number[];
  /** The surface that was taken off. */
  readonly surface: SurfaceConstants;
  /** Wavelengths, by index, at which every film hid its ground or told nothing: K and S are there at least these. */
  readonly atLeast: readonly number[];
  /** Relative standard uncertainty [1] of K and S together, alike at all wavelengths: the thickness of the films, and their noise. */
  readonly scaleUncertainty: number;
}

/** A film as drawn down: its reading, its dried thickness [um], and the bare ground's reading. */
export interface FilmDrawdown {
  readonly film: Measurement;
  readonly filmUm: number;
  readonly ground: Measurement;
}

/** Why films do not tell K and S. */
export type FilmStatement =
  | StatementOf<"film-needs-masstone-or-two-grounds", { films: number }>
  | StatementOf<"film-tells-nothing", { wavelengths: number }>;

/**
 * Luminous reflectance [1] of the grounds of an opacity chart, where a workshop has
 * not read its own: black at most .01, white .80 +- .02 (ISO 6504-3, memory).
 * @source optics-practice
 */
export const CHART_GROUNDS = { black: 0.01, white: 0.8 } as const;

/** Below what any film shows [1/um]: a spline may pass 0 between two points. */
const LEAST_S_PER_UM = 1e-9;

/**
 * K and S of a film on another grid within its own, each by natural cubic spline.
 * @returns undefined for a grid that passes the film's own ends.
 * @source cie-15-2018 : interpolation of tabulated data
 */
export function filmOnGrid(
  film: FilmCoefficients,
  to: WavelengthGrid,
): FilmCoefficients | undefined {
  const { grid } = film;
  if (sameGrid(grid, to)) return film;
  const [K, S] = [film.K, film.S].map((values) => spectrumOnGrid({ grid, values }, to)?.values);
  if (K === undefined || S === undefined) return undefined;
  const nearest = (nm: number): number => Math.round((nm - grid.startNm) / grid.stepNm);
  return {
    ...film,
    grid: to,
    K: K.map((value) => Math.max(value, 0)),
    S: S.map((value) => Math.max(value, LEAST_S_PER_UM)),
    atLeast: wavelengthsNm(to).flatMap((nm, i) => (film.atLeast.includes(nearest(nm)) ? [i] : [])),
  };
}

/** A ground of the same reflectance at every wavelength, as it would be read without gloss. */
export function flatGround(
  grid: WavelengthGrid,
  reflectance: number,
  geometry: Geometry = "d/8 excluded",
): Measurement {
  return { spectrum: flatSpectrum(grid, reflectance), geometry };
}

/**
 * K and S of a paint from films over grounds, with its masstone or over two grounds.
 *
 *     K/S from the masstone, else from both grounds; S X = (1/b)(arcoth((a - R)/b) - arcoth((a - Rg)/b))
 *
 * All films speak together, each by how well it tells S: by its reading's noise, and by the error of
 * its thickness. Where all of them hide their ground, S X is the least that would hide it to within
 * reading noise.
 *
 * @param films of one paint, at least one; the two of different ground must have one thickness
 *   when there is no masstone.
 * @returns coefficients; rules `film-needs-masstone-or-two-grounds`, `film-tells-nothing`.
 * @throws RangeError when a thickness is not positive, or the readings are not on one grid.
 * @source kubelka-1948
 */
export function filmCoefficients(
  films: readonly FilmDrawdown[],
  masstone: Measurement | undefined,
  surface: SurfaceConstants,
): FilmCoefficients | FilmStatement {
  for (const { filmUm } of films) requirePositive("film thickness", filmUm, "um", "X");
  const [first] = films;
  if (first === undefined || (masstone === undefined && films.length < 2)) {
    return {
      rule: "film-needs-masstone-or-two-grounds",
      values: { films: films.length },
      source: "kubelka-1948",
    };
  }
  const { grid } = first.film.spectrum;
  const readings = [
    ...films.flatMap(({ film, ground }) => [film, ground]),
    ...(masstone === undefined ? [] : [masstone]),
  ];
  if (!readings.every(({ spectrum }) => sameGrid(spectrum.grid, grid)))
    throw new RangeError("The readings of the films are of several grids; right would be one");

  const internal = films.map(({ film, ground, filmUm }) => ({
    ...withNoise(film, surface),
    Rg: internalReflectances(ground, surface).values,
    filmUm,
  }));
  const ownMasstone = masstone === undefined ? undefined : withNoise(masstone, surface);
  const points = Array.from({ length: grid.count }, (_, i) => {
    const films = internal.map(({ R, noise, Rg, filmUm }) => ({
      R: at(R, i),
      noise: at(noise, i),
      Rg: at(Rg, i),
      filmUm,
    }));
    return pointCoefficients(films, ownMasstone?.R[i], ownMasstone?.noise[i]);
  });
  const told = points.flatMap((point, i) => (point === undefined ? [] : [{ ...point, i }]));
  if (told.length < grid.count / 2)
    return {
      rule: "film-tells-nothing",
      values: { wavelengths: grid.count - told.length },
      source: "kubelka-1948",
    };
  const filled = points.map((point, i) => point ?? nearestTold(told, i));
  return {
    grid,
    surface,
    K: filled.map(({ K }) => K),
    S: filled.map(({ S }) => S),
    atLeast: filled.flatMap(({ atLeast }, i) => (atLeast ? [i] : [])),
    scaleUncertainty: median(told.map(({ uncertainty }) => uncertainty)),
  };
}

/** Internal reflectances of a reading, and what its noise moves them by; shape (count) each. */
function withNoise(
  reading: Measurement,
  surface: SurfaceConstants,
): { readonly R: readonly number[]; readonly noise: readonly number[] } {
  const { grid, values } = reading.spectrum;
  const sigma = readingNoise(reading);
  const noisy = values.map((value, i) => value + at(sigma, i));
  const R = internalReflectances(reading, surface).values;
  const moved = internalReflectances({ ...reading, spectrum: { grid, values: noisy } }, surface);
  return { R, noise: R.map((value, i) => Math.abs(at(moved.values, i) - value)) };
}

/** How many standard uncertainties part a film from what hides: of some thirty wavelengths one or two pass two of them by chance. */
const TOLD_NOISES = 2;

interface PointCoefficients {
  readonly K: number;
  readonly S: number;
  readonly atLeast: boolean;
  /** Relative, of K and S together [1]. */
  readonly uncertainty: number;
}
interface PointFilm {
  readonly R: number;
  /** Within which it is not told from what hides [1]. */
  readonly noise: number;
  readonly Rg: number;
  readonly filmUm: number;
}

/** K and S at one wavelength; undefined when no film there differs from a masstone that its ground equals. */
function pointCoefficients(
  films: readonly PointFilm[],
  masstone: number | undefined,
  masstoneNoise = 0,
): PointCoefficients | undefined {
  const Rinf = keptReflectance(masstone ?? twoGroundMasstone(films));
  const parted = films
    .map((film) => ({
      ...film,
      noise: Math.max(TOLD_NOISES * Math.hypot(film.noise, masstoneNoise), 1e-6),
    }))
    .filter(({ Rg, noise }) => Math.abs(Rg - Rinf) > 2 * noise);
  const [most] = parted.toSorted(
    (one, other) => Math.abs(other.Rg - Rinf) - Math.abs(one.Rg - Rinf),
  );
  if (most === undefined) return undefined;
  const ratio = absorptionScatteringRatio(Rinf);
  const telling = parted.filter(({ R, Rg, noise }) => Math.sign(Rg - Rinf) * (R - Rinf) >= noise);
  if (telling.length === 0) {
    const hidden = { ...most, noise: most.noise / TOLD_NOISES };
    const S = keptPower(hidden, Rinf).power / most.filmUm;
    return { S, K: S * ratio, atLeast: true, uncertainty: DRAWDOWN_NOISE.thickness };
  }
  let [sum, total] = [0, 0];
  // Black and white halves of one film share its thickness.
  const thicknesses = new Map<number, number>();
  for (const film of telling) {
    const { power, relative } = keptPower(film, Rinf);
    const weight = 1 / (relative ** 2 + DRAWDOWN_NOISE.thickness ** 2);
    sum += weight * Math.log(power / film.filmUm);
    total += weight;
    thicknesses.set(film.filmUm, (thicknesses.get(film.filmUm) ?? 0) + weight);
  }
  const S = Math.exp(sum / total);
  const shared = Math.hypot(...[...thicknesses.values()].map((weight) => weight / total));
  const uncertainty = Math.hypot(1 / Math.sqrt(total), DRAWDOWN_NOISE.thickness * shared);
  return { S, K: S * ratio, atLeast: false, uncertainty };
}

/** S X of a film with its relative noise [1]: as far from hiding as noise leaves it, and no thicker than the ground itself. */
function keptPower(
  { R, Rg, noise }: PointFilm,
  Rinf: number,
): { readonly power: number; readonly relative: number } {
  const side = Math.sign(Rg - Rinf);
  const kept = (value: number): number => {
    if (side * (value - Rinf) < noise) return Rinf + side * noise;
    return side * (Rg - value) > 0 ? value : Rg - side * noise * 1e-3;
  };
  const power = scatteringPower(kept(R), Rinf, Rg);
  const moved = scatteringPower(kept(R + (side * noise) / TOLD_NOISES), Rinf, Rg);
  return { power, relative: Math.abs(Math.log(moved / power)) };
}

/**
 * R-infinity by the two films of one thickness that their grounds part most; noise that asks for less than
 * no absorption gives the perfect white.
 */
function twoGroundMasstone(films: readonly PointFilm[]): number {
  const pairs = films.flatMap((black) =>
    films
      .filter((white) => white.filmUm === black.filmUm && white.Rg > black.Rg)
      .map((white) => ({ black, white, parted: white.R - black.R })),
  );
  const [most] = pairs.toSorted((one, other) => other.parted - one.parted);
  // A film that hides reads its own masstone over both.
  if (most === undefined || most.parted < 1e-6) return (most?.black ?? at(films, 0)).R;
  const { black, white } = most;
  return masstoneReflectance(twoGroundRatio(black.R, white.R, black.Rg, white.Rg) ?? 0);
}

function nearestTold(
  told: readonly (PointCoefficients & { readonly i: number })[],
  i: number,
): PointCoefficients {
  const nearest = told.reduce((one, other) =>
    Math.abs(other.i - i) < Math.abs(one.i - i) ? other : one,
  );
  return { ...nearest, atLeast: true };
}
