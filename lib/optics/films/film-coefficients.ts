/** K and S of a paint in absolute terms, from films of known thickness over known grounds. */
import { domainError } from "../../diagnostics/diagnostic.ts";
import type { Statement } from "../../quantities/statement.ts";
import { flatSpectrum, sameGrid, type WavelengthGrid } from "../../quantities/spectrum.ts";
import { scatteringPower, twoGroundRatio } from "./film.ts";
import { absorptionScatteringRatio, masstoneReflectance } from "../kubelka-munk.ts";
import { DRAWDOWN_NOISE } from "../fit/reading-noise.ts";
import type { Geometry, Measurement, SurfaceConstants } from "../fit/measurement.ts";
import { internalReflectances } from "../surface/measurement-in-geometry.ts";
import { keptReflectance } from "../tints/tint-reading.ts";

/** K and S of a paint as a dried film [1/um], shape (count) each. */
export interface FilmCoefficients {
  readonly grid: WavelengthGrid;
  readonly K: readonly number[];
  readonly S: readonly number[];
  /** The surface that was taken off. */
  readonly surface: SurfaceConstants;
  /** Wavelengths, by index, at which the film hid its ground or told nothing: K and S are there at least these. */
  readonly atLeast: readonly number[];
}

/** A film as drawn down: its reading, its dried thickness [um], and the bare ground's reading. */
export interface FilmDrawdown {
  readonly film: Measurement;
  readonly filmUm: number;
  readonly ground: Measurement;
}

/**
 * Luminous reflectance [1] of the grounds of an opacity chart, where a workshop has
 * not read its own: black at most .01, white .80 +- .02 (ISO 6504-3, memory).
 * @source optics-practice
 */
export const CHART_GROUNDS = { black: 0.01, white: 0.8 } as const;

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
 * At each wavelength the film speaks that changed its ground most. Where it hides
 * its ground, S X is the least that would hide it to within reading noise.
 *
 * @param films of one paint, at least one; the two of different ground must have one thickness
 *   when there is no masstone.
 * @returns coefficients; rules `film-needs-masstone-or-two-grounds`, `film-tells-nothing`, `grids-differ`.
 * @throws RangeError when a thickness is not positive.
 * @source kubelka-1948
 */
export function filmCoefficients(
  films: readonly FilmDrawdown[],
  masstone: Measurement | undefined,
  surface: SurfaceConstants,
): FilmCoefficients | Statement {
  for (const { filmUm } of films)
    if (!(filmUm > 0 && filmUm < Infinity))
      throw domainError("film thickness", filmUm, "0 < X < Infinity um");
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
    return { rule: "grids-differ", values: {} };

  const internal = films.map(({ film, ground, filmUm }) => ({
    R: internalReflectances(film, surface).values,
    Rg: internalReflectances(ground, surface).values,
    filmUm,
  }));
  const ownMasstone =
    masstone === undefined ? undefined : internalReflectances(masstone, surface).values;
  const points = Array.from({ length: grid.count }, (_, i) => {
    const at = internal.map(({ R, Rg, filmUm }) => ({ R: R[i] ?? NaN, Rg: Rg[i] ?? NaN, filmUm }));
    return pointCoefficients(at, ownMasstone?.[i]);
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
  };
}

interface PointCoefficients {
  readonly K: number;
  readonly S: number;
  readonly atLeast: boolean;
}
interface PointFilm {
  readonly R: number;
  readonly Rg: number;
  readonly filmUm: number;
}

/** K and S at one wavelength; undefined when no film there differs from a masstone that its ground equals. */
function pointCoefficients(
  films: readonly PointFilm[],
  masstone: number | undefined,
): PointCoefficients | undefined {
  const Rinf = keptReflectance(masstone ?? twoGroundMasstone(films));
  const [film] = films.toSorted(
    (one, other) => Math.abs(other.Rg - Rinf) - Math.abs(one.Rg - Rinf),
  );
  if (film === undefined) return undefined;
  const { R, Rg, filmUm } = film;
  const noise = DRAWDOWN_NOISE.absolute + DRAWDOWN_NOISE.relative * Rinf;
  if (!(Math.abs(Rg - Rinf) > 3 * noise)) return undefined;
  const side = Math.sign(Rg - Rinf);
  // As far from hiding as noise leaves it, and no thicker than the ground itself.
  const hides = side * (R - Rinf) < noise;
  const kept = hides ? Rinf + side * noise : side * (Rg - R) > 0 ? R : Rg - side * noise * 1e-3;
  const S = scatteringPower(kept, Rinf, Rg) / filmUm;
  return { S, K: S * absorptionScatteringRatio(Rinf), atLeast: hides };
}

/** R-infinity of the film over two grounds; noise that asks for less than no absorption gives the perfect white. */
function twoGroundMasstone(films: readonly PointFilm[]): number {
  const [one, other] = films;
  if (one === undefined || other === undefined) return NaN;
  const [{ R: Rb, Rg: gb }, { R: Rw, Rg: gw }] = one.Rg < other.Rg ? [one, other] : [other, one];
  // A film that hides reads its own masstone over both.
  if (Rw - Rb < 1e-6 || !(gb < gw)) return Rb;
  return masstoneReflectance(twoGroundRatio(Rb, Rw, gb, gw) ?? 0);
}

function nearestTold(
  told: readonly (PointCoefficients & { readonly i: number })[],
  i: number,
): PointCoefficients {
  const nearest = told.reduce((one, other) =>
    Math.abs(other.i - i) < Math.abs(one.i - i) ? other : one,
  );
  return { K: nearest.K, S: nearest.S, atLeast: true };
}
