/** What a film over both halves of a chart tells of its paint, whatever its thickness. */
import { readingNoise } from "../fit/reading-noise.ts";
import type { Measurement, SurfaceConstants } from "../fit/measurement.ts";
import { masstoneReflectance } from "../kubelka-munk.ts";
import { internalReflectances } from "../surface/measurement-in-geometry.ts";
import { keptReflectance } from "../tints/tint-reading.ts";
import { at, certain } from "../../quantities/at.ts";
import { scatteringPower, twoGroundRatio } from "./film.ts";

/** A film over both halves of a chart, with the bare halves; one grid. */
export interface TwoGroundFilm {
  readonly overBlack: Measurement;
  readonly overWhite: Measurement;
  readonly black: Measurement;
  readonly white: Measurement;
  /** Of the dried film [um], where it is known. */
  readonly filmUm?: number;
}

/** By wavelength, shape (count) each; NaN where the film tells nothing. */
export interface FilmOptics {
  /** Internal R-infinity [1] and its standard uncertainty. */
  readonly masstone: Float64Array;
  readonly masstoneSigma: Float64Array;
  /** ln of S X, and its standard uncertainty. */
  readonly logPower: Float64Array;
  readonly powerSigma: Float64Array;
}

interface Point {
  readonly rho: number;
  readonly logPower: number;
}

/**
 * R-infinity and scattering power S X of a film from its readings over black and white.
 *
 *     K/S from both grounds, S X = (1/b)(arcoth((a - Rb)/b) - arcoth((a - gb)/b))
 *
 * Where a coat that hides was read too, R-infinity is that coat's, and each ground tells S X by itself: of a
 * film that nearly hides the two grounds tell nothing more.
 *
 * Uncertainties are those that the noise of each reading moves, in quadrature.
 *
 * @param coat of the same paint, thick enough to hide.
 * @returns by wavelength; NaN where the film hides to within noise, or no film gives such readings.
 * @source kubelka-1948
 */
export function filmOptics(
  film: TwoGroundFilm,
  surface: SurfaceConstants,
  coat?: Measurement,
): FilmOptics {
  const optics = byBothGrounds(film, surface);
  if (coat === undefined) return optics;
  const grounds = [
    byCoat(film.overBlack, film.black, coat, surface),
    byCoat(film.overWhite, film.white, coat, surface),
  ];
  const own = internalReflectances(coat, surface).values;
  const noise = readingNoise(coat);
  return {
    masstone: Float64Array.from(own),
    masstoneSigma: Float64Array.from(noise, (sigma) => Math.hypot(sigma, FILM_ERRORS.surface)),
    ...surest([optics, ...grounds]),
  };
}

type FilmPower = Pick<FilmOptics, "logPower" | "powerSigma">;

/** At each wavelength the one that is told best. */
function surest(series: readonly FilmPower[]): FilmPower {
  const count = series[0]?.logPower.length ?? 0;
  const best = Array.from({ length: count }, (_, i) =>
    series.reduce<FilmPower | undefined>(
      (one, other) =>
        one === undefined || !(at(one.powerSigma, i) <= (other.powerSigma[i] ?? Infinity))
          ? other
          : one,
      undefined,
    ),
  );
  return {
    logPower: Float64Array.from(best, (one, i) => at(certain(one).logPower, i)),
    powerSigma: Float64Array.from(best, (one, i) => at(certain(one).powerSigma, i)),
  };
}

/** S X of a film over one ground, from the coat that hides. */
function byCoat(
  film: Measurement,
  ground: Measurement,
  coat: Measurement,
  surface: SurfaceConstants,
): FilmPower {
  const [values, bare] = [film.spectrum.values, ground.spectrum.values];
  const own = coat.spectrum.values;
  const internal = (reading: Measurement, lift: readonly number[] | number): readonly number[] =>
    internalOfFilm(
      reading,
      reading.spectrum.values.map(
        (value, i) => value + (typeof lift === "number" ? lift : at(lift, i)),
      ),
      surface,
    );
  const noise = readingNoise(film);
  const filmError = noise.map((sigma, i) =>
    Math.hypot(sigma, FILM_ERRORS.pinholes * (at(values, i) - at(bare, i))),
  );
  const coatError = readingNoise(coat);
  const g = internalReflectances(ground, surface).values;
  const tries = [
    [0, 0],
    [filmError, 0],
    [0, coatError],
    [FILM_ERRORS.surface, FILM_ERRORS.surface],
  ] as const;
  const told = tries.map(([ofFilm, ofCoat]) => {
    const [R, rho] = [internal(film, ofFilm), internal(coat, ofCoat)];
    return R.map((value, i) => powerOf(value, keptReflectance(at(rho, i)), at(g, i)));
  });
  const [middle = [], ...moved] = told;
  const error = filmError.map((one, i) => Math.hypot(one, at(coatError, i)));
  const isTold = middle.map(
    (power, i) =>
      power === power && Math.abs(at(values, i) - at(own, i)) > PARTED_MIN * at(error, i),
  );
  return {
    logPower: Float64Array.from(middle, (power, i) => (isTold[i] === true ? power : NaN)),
    powerSigma: Float64Array.from(middle, (power, i) =>
      isTold[i] === true ? Math.hypot(...moved.map((other) => at(other, i) - power)) : NaN,
    ),
  };
}

/** ln S X; NaN where the film does not lie between its ground and the coat. */
function powerOf(R: number, rho: number, g: number): number {
  return (g < R && R < rho) || (rho < R && R < g) ? Math.log(scatteringPower(R, rho, g)) : NaN;
}

function byBothGrounds(film: TwoGroundFilm, surface: SurfaceConstants): FilmOptics {
  const grounds = [film.black, film.white].map(
    (ground) => internalReflectances(ground, surface).values,
  );
  const count = film.overWhite.spectrum.grid.count;
  const points = (black: readonly number[], white: readonly number[]): (Point | undefined)[] => {
    const [Rb, Rw] = [
      internalOfFilm(film.overBlack, black, surface),
      internalOfFilm(film.overWhite, white, surface),
    ];
    return Array.from({ length: count }, (_, i) =>
      point(at(Rb, i), at(Rw, i), at(at(grounds, 0), i), at(at(grounds, 1), i)),
    );
  };
  const [black, white] = [film.overBlack.spectrum.values, film.overWhite.spectrum.values];
  const blackNoise = readingNoise(film.overBlack);
  const bare = [film.black.spectrum.values, film.white.spectrum.values];
  const blackError = black.map((value, i) =>
    Math.hypot(
      FILM_ERRORS.apart * at(blackNoise, i),
      FILM_ERRORS.pinholes * (value - at(at(bare, 0), i)),
    ),
  );
  const whiteError = white.map((value, i) =>
    Math.hypot(
      FILM_ERRORS.apart * at(blackNoise, i),
      FILM_ERRORS.pinholes * (value - at(at(bare, 1), i)),
      FILM_ERRORS.thickness * Math.max(value - at(black, i), 0),
    ),
  );
  const noisy = black.map((value, i) => value + at(blackError, i));
  const thinner = white.map((value, i) => value + at(whiteError, i));
  const lifted = (values: readonly number[]): number[] =>
    values.map((value) => value + FILM_ERRORS.surface);
  const asRead = points(black, white);
  const moved = [
    points(noisy, white),
    points(black, thinner),
    points(lifted(black), lifted(white)),
  ];
  const optics = { ...emptyOptics(count) };
  for (const [i, own] of asRead.entries()) {
    const others = moved.map((one) => one[i]);
    const parted = at(white, i) - at(black, i);
    const error = Math.hypot(at(blackError, i), at(whiteError, i));
    if (!(parted > PARTED_MIN * error)) continue;
    if (own === undefined || !others.every((other) => other !== undefined)) continue;
    optics.masstone[i] = own.rho;
    optics.masstoneSigma[i] = Math.hypot(...others.map((other) => other.rho - own.rho));
    optics.logPower[i] = own.logPower;
    optics.powerSigma[i] = Math.hypot(...others.map((other) => other.logPower - own.logPower));
  }
  return optics;
}

/**
 * What a film's readings are wrong by, each an estimate: the share of a reading's noise by which two
 * readings of one sitting differ; the share of a ground that shows through pinholes; the share of the light
 * let through by which the two halves differ in thickness; what is not known of the surface [1], which
 * decides in the dark.
 * @source optics-practice
 */
export const FILM_ERRORS = { apart: 0.3, pinholes: 0.01, thickness: 0.1, surface: 0.005 } as const;
/** Error of their difference beyond which two films are told apart. */
const PARTED_MIN = 3;

function emptyOptics(count: number): FilmOptics {
  const empty = (): Float64Array => new Float64Array(count).fill(NaN);
  return { masstone: empty(), masstoneSigma: empty(), logPower: empty(), powerSigma: empty() };
}

function internalOfFilm(
  reading: Measurement,
  values: readonly number[],
  surface: SurfaceConstants,
): readonly number[] {
  const spectrum = { grid: reading.spectrum.grid, values };
  return internalReflectances({ ...reading, spectrum }, surface).values;
}

function point(Rb: number, Rw: number, gb: number, gw: number): Point | undefined {
  if (!(Rw > Rb && gw > gb)) return undefined;
  const ratio = twoGroundRatio(Rb, Rw, gb, gw);
  if (ratio === undefined) return undefined;
  const rho = keptReflectance(masstoneReflectance(ratio));
  const isBetween = (gb < Rb && Rb < rho) || (rho < Rb && Rb < gb);
  if (!isBetween) return undefined;
  return { rho, logPower: Math.log(scatteringPower(Rb, rho, gb)) };
}
