/** What films as read leave possible at another thickness: a contrast ratio grows with thickness. */
import { requirePositive } from "../../quantities/positive.ts";
import type { Bound } from "../../quantities/figure.ts";

/** A film that was read over both grounds. */
export interface ReadFilm {
  /** Of the dried film [um], > 0. */
  readonly filmUm: number;
  /** Y over black to Y over white [1], gloss included. */
  readonly contrastRatio: number;
  /** By which it may be off though no ground shows [1]: see contrast-noise.ts; none where it is not given. */
  readonly noise?: number;
}

/** A value, and whether it is only what the true one does not pass. */
export interface Bounded {
  readonly value: number;
  readonly bound?: Bound;
}

/** How near to 1 [1] a contrast ratio is read: what prints as 1.00. */
const READ_WITHIN = 0.005;

/**
 * Contrast ratios that films as read leave possible at a thickness.
 *
 *     C(X) >= C_j  for X_j <= X;   C(X) <= C_j  for X_j >= X
 *     C(X) >= 1 - (1 - C_j)^(X/X_j)  for X_j >= X
 *
 * The last since ln(1 - C) was seen to fall ever more slowly as a film thickens: held on 500 Kubelka-Munk
 * paints drawn at random (test/optics/film-bounds.test.ts), not proven.
 *
 * A dark film's ratio is read with much noise: none rules out less than the noise of its reading.
 *
 * @returns least and most [1]; 0 and 1 where no film says more.
 * @throws RangeError when the thickness is not positive.
 * @source kubelka-1948
 */
export function contrastLimits(
  filmUm: number,
  films: readonly ReadFilm[],
): { readonly least: number; readonly most: number } {
  requirePositive("film thickness", filmUm, "um", "X");
  const thinner = films.filter((film) => film.filmUm <= filmUm);
  const thicker = films.filter((film) => film.filmUm >= filmUm);
  const least = Math.max(
    0,
    ...thinner.map((film) => film.contrastRatio),
    ...thicker.map(
      (film) => 1 - Math.max(1 - film.contrastRatio, READ_WITHIN) ** (filmUm / film.filmUm),
    ),
  );
  const most = Math.min(1, ...thicker.map(({ contrastRatio, noise = 0 }) => contrastRatio + noise));
  return { least: Math.min(least, 1), most };
}

/**
 * A contrast ratio worked out from K and S, kept within what the films as read leave possible.
 *
 * @param uncertainty standard uncertainty of the worked-out ratio [1]: moved by less, it is a figure still.
 * @param filmsHid whether K and S are "at least" figures.
 */
export function boundedContrast(
  { filmUm, contrastRatio }: ReadFilm,
  uncertainty: number,
  films: readonly ReadFilm[],
  filmsHid: boolean,
): Bounded {
  const { least, most } = contrastLimits(filmUm, films);
  // Films that contradict one another do so by noise.
  const value = least > most ? (least + most) / 2 : Math.min(Math.max(contrastRatio, least), most);
  const isMoved = least < most && Math.abs(value - contrastRatio) > uncertainty;
  // What reads as 1.00 leaves nothing above it.
  if (value >= 1 - READ_WITHIN) return { value };
  if (isMoved) return { value, bound: value > contrastRatio ? "at least" : "at most" };
  return filmsHid ? { value, bound: "at least" } : { value };
}

/**
 * The film that hides as worked out from K and S, no thicker than a film that was read to hide and no
 * thinner than one that was read not to.
 *
 * @param hidingUm thinnest film that reaches the target [um]; Infinity where none does.
 * @param relativeUncertainty of it [1]: moved by less, it is a figure still.
 */
export function boundedHidingFilm(
  hidingUm: number,
  relativeUncertainty: number,
  films: readonly ReadFilm[],
  filmsHid: boolean,
  target: number,
): Bounded {
  const hid = films.filter(({ contrastRatio }) => contrastRatio >= target);
  const enough = Math.min(Infinity, ...hid.map(({ filmUm }) => filmUm));
  // A thicker film than one that hides lets its ground through by noise alone.
  const wanting = films.filter(
    ({ filmUm, contrastRatio, noise = 0 }) => contrastRatio + 2 * noise < target && filmUm < enough,
  );
  const tooThin = Math.max(0, ...wanting.map(({ filmUm }) => filmUm));
  const value = Math.min(Math.max(hidingUm, tooThin), enough);
  if (value < Infinity && Math.abs(Math.log(value / hidingUm)) > relativeUncertainty)
    return { value, bound: value < hidingUm ? "at most" : "at least" };
  return filmsHid && value < Infinity ? { value, bound: "at most" } : { value };
}
