/** What films tell of a colour's scattering beside its white's: what a fit expects of ln S. */
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import type { FilmOptics } from "../films/two-ground-film.ts";
import { smoothed } from "./scattering-prior.ts";
import { at } from "../../quantities/at.ts";

/** ln S of a colour in units of its white's S, per unit of mass ratio; shape (count) each. */
export interface FilmScattering {
  /** NaN where the colour's film tells nothing. */
  readonly logScattering: Float64Array;
  readonly sigma: Float64Array;
  /** Standard uncertainty of one error common to all wavelengths. */
  readonly scaleSigma: number;
}

/** Relative uncertainty of two drawdowns' thicknesses by one bar, and of the ratio of densities where none is known. */
const THICKNESS_SIGMA = 0.2;
const DENSITY_SIGMA = 0.4;
/** Beyond this ln S of a film is nearly all noise. */
const TOLD_SIGMA = 0.5;

/** Mass of what was weighed in a volume of paint [g/cm3], of colour and white, and thickness of their films [um]. */
export interface FilmScale {
  readonly massPerVolume?: number;
  readonly filmUm?: number;
}

/**
 * S of the colour's film over S of the white's, times the ratio of densities.
 *
 *     ln S = ln (S_c X_c / X_c) - ln (S_w X_w / X_w) + ln (m_w / m_c)
 *
 * @returns undefined where either film tells nothing.
 * @source kubelka-1948, duncan-1940
 */
export function filmScattering(
  grid: WavelengthGrid,
  colour: FilmOptics,
  colourScale: FilmScale,
  white: FilmOptics,
  whiteScale: FilmScale,
): FilmScattering | undefined {
  const weightsOf = ({ powerSigma }: FilmOptics): Float64Array =>
    powerSigma.map((sigma) => (sigma < TOLD_SIGMA ? 1 / (sigma * sigma + 0.0025) : 0));
  const [ofColour, ofWhite] = [weightsOf(colour), weightsOf(white)];
  if (!ofColour.some((weight) => weight > 0) || !ofWhite.some((weight) => weight > 0))
    return undefined;
  // A white scatters smoothly over the spectrum: where its film hides, its neighbours speak for it.
  const whitePower = smoothed(grid, white.logPower, ofWhite, NaN);
  const areMasses =
    colourScale.massPerVolume !== undefined && whiteScale.massPerVolume !== undefined;
  const areFilms = colourScale.filmUm !== undefined && whiteScale.filmUm !== undefined;
  const scale =
    (areMasses ? Math.log((whiteScale.massPerVolume ?? 1) / (colourScale.massPerVolume ?? 1)) : 0) +
    (areFilms ? Math.log((whiteScale.filmUm ?? 1) / (colourScale.filmUm ?? 1)) : 0);
  return {
    logScattering: colour.logPower.map((power, i) =>
      (ofColour[i] ?? 0) > 0 ? power - at(whitePower, i) + scale : NaN,
    ),
    sigma: ofColour.map((weight) => 1 / Math.sqrt(weight)),
    scaleSigma: Math.hypot(areMasses ? 0 : DENSITY_SIGMA, THICKNESS_SIGMA),
  };
}

/** How far let-downs tell ln S of the colour without its white, how far its film does, and over what width [nm]. */
const ALONE = { byLetDowns: 0.6, byFilm: 0.35, widthNm: 120 } as const;

/**
 * S of a colour where hardly any white is in it: a let-down's S is that of its pigment
 * spread thin in white, and its own film tells better what it does alone.
 *
 * @param S by the let-downs, with relative standard uncertainties [1], shape (count) each.
 * @returns S in the same unit, shape (count): its level is known beside other colours of films in the same white alone.
 */
export function scatteringAlone(
  grid: WavelengthGrid,
  S: readonly number[],
  SUncertainty: readonly number[],
  film: FilmScattering,
): number[] {
  return S.map((value, i) => {
    let [sum, total, nearest] = [0, 0, 0];
    for (const [m, told] of film.logScattering.entries()) {
      if (!(told === told)) continue;
      const near = Math.exp(-((((m - i) * grid.stepNm) / ALONE.widthNm) ** 2) / 2);
      const weight = near / (at(film.sigma, m) ** 2 + 0.01);
      nearest = Math.max(nearest, near);
      sum += weight * told;
      total += weight;
    }
    if (!(total > 0)) return value;
    const ofFilm = nearest / ALONE.byFilm ** 2;
    const ofLetDowns = 1 / (at(SUncertainty, i) ** 2 + ALONE.byLetDowns ** 2);
    return Math.exp(
      ((ofFilm * sum) / total + ofLetDowns * Math.log(value)) / (ofFilm + ofLetDowns),
    );
  });
}
