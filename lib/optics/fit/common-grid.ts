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
import { at } from "../../quantities/at.ts";

/** What tristimulus needs of a grid [nm]. */
const FIRST_MAX_NM = 400;
const LAST_MIN_NM = 700;

/**
 * The grid that readings can be brought to together: where they overlap, in the
 * coarsest of their steps, so that nothing is made up between their points.
 * @returns the grid; undefined when they do not overlap from 400 to 700 nm.
 */
export function commonGrid(grids: readonly WavelengthGrid[]): WavelengthGrid | undefined {
  const stepNm = Math.max(...grids.map((grid) => grid.stepNm));
  const coarsest = grids.find((grid) => grid.stepNm === stepNm);
  if (coarsest === undefined) return undefined;
  const firstNm = Math.max(...grids.map(({ startNm }) => startNm));
  const lastNm = Math.min(...grids.map((grid) => wavelengthNm(grid, grid.count - 1)));
  // On the points of the coarsest, which are then taken as they are.
  const inside = wavelengthsNm(coarsest).filter((nm) => nm >= firstNm && nm <= lastNm);
  const [startNm, endNm] = [at(inside, 0), at(inside, inside.length - 1)];
  return startNm <= FIRST_MAX_NM && endNm >= LAST_MIN_NM
    ? { startNm, stepNm, count: inside.length }
    : undefined;
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

/**
 * A colour's drawdowns on one grid: a colour may have been read with another
 * instrument than its white.
 * @returns the set; itself when its grids are one, or can't be brought together.
 * @source cie-15-2018 : interpolation of tabulated data
 */
export function onCommonGrid(set: DrawdownSet): DrawdownSet {
  const { masstone, whites, tints, withoutSpectrum } = set;
  const used = whites.filter(({ slug }) => tints.some(({ white }) => white === slug));
  const grids = [
    ...(masstone === undefined ? [] : [masstone]),
    ...allFilms(set).flatMap(readingsOfFilm),
    ...used.flatMap((white) => [white.masstone, ...allFilms(white).flatMap(readingsOfFilm)]),
    ...tints.flatMap(({ reading, film }) => [
      reading,
      ...(film === undefined ? [] : readingsOfFilm(film)),
    ]),
  ].map(({ spectrum }) => spectrum.grid);
  const [first] = grids;
  if (first === undefined || grids.every((grid) => sameGrid(grid, first))) return set;
  const grid = commonGrid(grids);
  if (grid === undefined) return set;
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
    ...(own === undefined ? {} : { film: movedFilm(own) }),
    ...(further.length === 0 ? {} : { films: further.map(movedFilm) }),
  });
  return {
    ...(withoutSpectrum === undefined ? {} : { withoutSpectrum }),
    ...(masstone === undefined ? {} : { masstone: moved(masstone) }),
    ...movedFilms(set),
    whites: used.map((white) => ({
      slug: white.slug,
      masstone: moved(white.masstone),
      ...movedFilms(white),
    })),
    tints: tints.map((tint) => ({
      ...tint,
      reading: moved(tint.reading),
      ...(tint.film === undefined ? {} : { film: movedFilm(tint.film) }),
    })),
  };
}

function readingsOfFilm({ overBlack, overWhite, black, white }: TwoGroundFilm): Measurement[] {
  return [overBlack, overWhite, black, white];
}
