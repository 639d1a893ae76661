import { naturalSpline } from "../../colorimetry/cubic-spline.ts";
import {
  sameGrid,
  wavelengthNm,
  wavelengthsNm,
  type Spectrum,
  type WavelengthGrid,
} from "../../quantities/spectrum.ts";
import type { TwoGroundFilm } from "../films/two-ground-film.ts";
import { allFilms, type DrawdownSet, type PaintFilms } from "./drawdown.ts";
import type { Measurement } from "./measurement.ts";

/** What tristimulus needs of a grid [nm], and every reading covers. */
const FIRST_MAX_NM = 400;
const LAST_MIN_NM = 700;

/**
 * The grid that readings can be brought to together: where they overlap, in the
 * coarsest of their steps, so that nothing is made up between their points.
 * @returns on the points of a coarsest of them, which is then taken as it is, where these cover 400 to
 *   700 nm; else from 400 to 700 nm; undefined when they do not overlap from 400 to 700 nm.
 */
export function commonGrid(grids: readonly WavelengthGrid[]): WavelengthGrid | undefined {
  const stepNm = Math.max(...grids.map((grid) => grid.stepNm));
  const firstNm = Math.max(...grids.map(({ startNm }) => startNm));
  const lastNm = Math.min(...grids.map((grid) => wavelengthNm(grid, grid.count - 1)));
  if (!(firstNm <= FIRST_MAX_NM && lastNm >= LAST_MIN_NM)) return undefined;
  const onPoints = grids
    .filter((grid) => grid.stepNm === stepNm)
    .flatMap((coarsest): WavelengthGrid[] => {
      const inside = wavelengthsNm(coarsest).filter((nm) => nm >= firstNm && nm <= lastNm);
      const [startNm = NaN, endNm = NaN] = [inside[0], inside.at(-1)];
      return startNm <= FIRST_MAX_NM && endNm >= LAST_MIN_NM
        ? [{ startNm, stepNm, count: inside.length }]
        : [];
    });
  const count = (LAST_MIN_NM - FIRST_MAX_NM) / stepNm + 1;
  return (
    onPoints[0] ?? (Number.isInteger(count) ? { startNm: FIRST_MAX_NM, stepNm, count } : undefined)
  );
}

/**
 * A spectrum on another grid within its own, by natural cubic spline.
 * @returns undefined for a grid that passes the spectrum's own ends.
 * @source cie-15-2018 : interpolation of tabulated data
 */
export function spectrumOnGrid(spectrum: Spectrum, to: WavelengthGrid): Spectrum | undefined {
  const { grid } = spectrum;
  if (sameGrid(grid, to)) return spectrum;
  const endNm = (one: WavelengthGrid): number => wavelengthNm(one, one.count - 1);
  return to.startNm < grid.startNm || endNm(to) > endNm(grid) ? undefined : resampled(spectrum, to);
}

function resampled({ grid, values }: Spectrum, to: WavelengthGrid): Spectrum {
  const spline = naturalSpline(grid.startNm, grid.stepNm, values);
  return { grid: to, values: wavelengthsNm(to).map(spline) };
}

/** A reading on another grid within its own; the reading itself where that is its grid. */
export function measurementOnGrid<M extends Measurement>(
  reading: M,
  to: WavelengthGrid,
): M | undefined {
  const spectrum = spectrumOnGrid(reading.spectrum, to);
  if (spectrum === undefined || spectrum === reading.spectrum)
    return spectrum === undefined ? undefined : reading;
  return { ...reading, spectrum };
}

/** All films of a paint on another grid; undefined where one of their readings does not reach over it. */
export function filmsOnGrid(
  { film, films }: PaintFilms,
  to: WavelengthGrid,
): PaintFilms | undefined {
  const moved = <F extends TwoGroundFilm>(one: F): F | undefined => {
    const [overBlack, overWhite, black, white] = readingsOfFilm(one).map((reading) =>
      measurementOnGrid(reading, to),
    );
    return (
      overBlack && overWhite && black && white && { ...one, overBlack, overWhite, black, white }
    );
  };
  const own = film && moved(film);
  const further = films?.flatMap((one) => moved(one) ?? []);
  if ((film !== undefined && own === undefined) || further?.length !== films?.length)
    return undefined;
  return {
    ...(own !== undefined && { film: own }),
    ...(further !== undefined && { films: further }),
  };
}

/**
 * A workshop's drawdowns, all on one grid: one colour may have been read with another instrument than
 * its white or than the next colour, and any two of them are mixed and held against each other.
 * @returns the sets; themselves when their grids are one, or can't be brought together.
 * @source cie-15-2018 : interpolation of tabulated data
 */
export function onCommonGrid<K>(sets: ReadonlyMap<K, DrawdownSet>): ReadonlyMap<K, DrawdownSet> {
  const grids = [...sets.values()].flatMap(gridsOf);
  const [first] = grids;
  if (first === undefined || grids.every((grid) => sameGrid(grid, first))) return sets;
  const grid = commonGrid(grids);
  if (grid === undefined) return sets;
  return new Map([...sets].map(([key, set]) => [key, setOnGrid(set, grid)]));
}

/** Grids of all that a fit of a set goes by; of one without a let-down there is none. */
function gridsOf(set: DrawdownSet): WavelengthGrid[] {
  const { masstone, tints } = set;
  if (tints.length === 0) return [];
  return [
    ...(masstone === undefined ? [] : [masstone]),
    ...allFilms(set).flatMap(readingsOfFilm),
    ...usedWhites(set).flatMap((white) => [
      white.masstone,
      ...allFilms(white).flatMap(readingsOfFilm),
    ]),
    ...tints.flatMap(({ reading, film }) => [
      reading,
      ...(film === undefined ? [] : readingsOfFilm(film)),
    ]),
  ].map(({ spectrum }) => spectrum.grid);
}

function setOnGrid(set: DrawdownSet, grid: WavelengthGrid): DrawdownSet {
  const { masstone, tints, withoutSpectrum } = set;
  if (gridsOf(set).every((own) => sameGrid(own, grid))) return set;
  const moved = (reading: Measurement): Measurement =>
    sameGrid(reading.spectrum.grid, grid)
      ? reading
      : { ...reading, spectrum: resampled(reading.spectrum, grid) };
  const movedFilm = <F extends TwoGroundFilm>(one: F): F => ({
    ...one,
    overBlack: moved(one.overBlack),
    overWhite: moved(one.overWhite),
    black: moved(one.black),
    white: moved(one.white),
  });
  const movedFilms = ({ film: own, films: further = [] }: PaintFilms): PaintFilms => ({
    ...(own !== undefined && { film: movedFilm(own) }),
    ...(further.length > 0 && { films: further.map(movedFilm) }),
  });
  return {
    ...(withoutSpectrum !== undefined && { withoutSpectrum }),
    ...(masstone !== undefined && { masstone: moved(masstone) }),
    ...movedFilms(set),
    whites: usedWhites(set).map((white) => ({
      slug: white.slug,
      masstone: moved(white.masstone),
      ...movedFilms(white),
    })),
    tints: tints.map((tint) => ({
      ...tint,
      reading: moved(tint.reading),
      ...(tint.film !== undefined && { film: movedFilm(tint.film) }),
    })),
  };
}

function usedWhites({ whites, tints }: DrawdownSet): DrawdownSet["whites"] {
  return whites.filter(({ slug }) => tints.some(({ white }) => white === slug));
}

function readingsOfFilm({ overBlack, overWhite, black, white }: TwoGroundFilm): Measurement[] {
  return [overBlack, overWhite, black, white];
}
