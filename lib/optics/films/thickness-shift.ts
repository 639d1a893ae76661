import { at } from "../../quantities/at.ts";
import { DRAWDOWN_NOISE } from "../fit/reading-noise.ts";
import { masstoneReflectance } from "../kubelka-munk.ts";
import { internalReflectances } from "../surface/measurement-in-geometry.ts";
import { surfaceForm } from "../surface/surface.ts";
import { filmSurface } from "../surface/workshop-surface.ts";
import { keptReflectance } from "../tints/tint-reading.ts";
import { scatteringPower, twoGroundRatio } from "./film.ts";
import type { TwoGroundFilm } from "./two-ground-film.ts";

/**
 * By how much one standard uncertainty of its thickness moves a film's reading over white: what a
 * second film of the same applicator would read otherwise.
 *
 *     dR/d ln X = S X (1 - 2 a R + R^2),  a = (1/R-infinity + R-infinity)/2, R internal over white
 *
 * @param relative standard uncertainty of the thickness, relative [1].
 * @returns changes of reflectance factor [1], shape of the reading's values, all of one thickness;
 *   near 0 where the film hides its ground, 0 where no film gives such readings.
 * @source kubelka-munk-1931, kubelka-1948
 */
export function thicknessShift(
  { overBlack, overWhite, black, white }: TwoGroundFilm,
  relative: number = DRAWDOWN_NOISE.thickness,
): number[] {
  const surface = filmSurface([overBlack, overWhite]);
  const [ofBlack, gb, gw] = [overBlack, black, white].map(
    (reading) => internalReflectances(reading, surface).values,
  ) as [readonly number[], readonly number[], readonly number[]];
  const { gain, k2 } = surfaceForm(overWhite.geometry, surface);
  return internalReflectances(overWhite, surface).values.map(
    (R, i) =>
      (relative * byThickness(at(ofBlack, i), R, at(gb, i), at(gw, i)) * gain) / (1 - k2 * R) ** 2,
  );
}

/** dR/d ln X over the white ground gw, internal [1]. */
function byThickness(Rb: number, Rw: number, gb: number, gw: number): number {
  if (!(Rw > Rb && gw > gb)) return 0;
  // Noise that asks for less than no absorption gives the perfect white.
  const rho = keptReflectance(masstoneReflectance(twoGroundRatio(Rb, Rw, gb, gw) ?? 0));
  const isBetween = (gb < Rb && Rb < rho) || (rho < Rb && Rb < gb);
  return isBetween ? scatteringPower(Rb, rho, gb) * (1 - (1 / rho + rho) * Rw + Rw * Rw) : 0;
}
