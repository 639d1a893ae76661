import { DRAWDOWN_NOISE } from "../fit/reading-noise.ts";
import { internalReflectances } from "../surface/measurement-in-geometry.ts";
import { surfaceForm } from "../surface/surface.ts";
import { filmSurface } from "../surface/workshop-surface.ts";
import { filmOptics, type TwoGroundFilm } from "./two-ground-film.ts";

/**
 * By how much one standard uncertainty of its thickness moves a film's reading over white: what a
 * second film of the same applicator would read otherwise.
 *
 *     dR/d ln X = S X (1 - 2 a R + R^2),  a = (1/R-infinity + R-infinity)/2, R internal over white
 *
 * @param relative standard uncertainty of the thickness, relative [1].
 * @returns changes of reflectance factor [1], shape of the reading's values, all of one thickness;
 *   0 where the film hides its ground to within noise.
 * @source kubelka-munk-1931, kubelka-1948
 */
export function thicknessShift(
  film: TwoGroundFilm,
  relative: number = DRAWDOWN_NOISE.thickness,
): number[] {
  const surface = filmSurface([film.overBlack, film.overWhite]);
  const { masstone, logPower } = filmOptics(film, surface);
  const { gain, k2 } = surfaceForm(film.overWhite.geometry, surface);
  return internalReflectances(film.overWhite, surface).values.map((R, i) => {
    const [rho, power] = [masstone[i], logPower[i]];
    if (rho === undefined || power === undefined || Number.isNaN(rho + power)) return 0;
    const byThickness = Math.exp(power) * (1 - (1 / rho + rho) * R + R * R);
    return (relative * byThickness * gain) / (1 - k2 * R) ** 2;
  });
}
