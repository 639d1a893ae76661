/**
 * Between what an instrument reads and what happens inside the film: Saunderson's
 * correction, in the form that each geometry asks for.
 *
 *     d/8 included   Rm = k1 + (1 - k1)(1 - k2) R / (1 - k2 R)
 *     d/8 excluded   Rm =      (1 - k1)(1 - k2) R / (1 - k2 R)
 *     45/0           Rm = ((1 - F45)(1 - F0)/n^2) R / (1 - k2 R)
 *
 * The d/8 form used on a 45/0 reading puts K/S of a pale colour off by half.
 *
 * @source saunderson-1942
 */
import { domainError } from "../../diagnostics/diagnostic.ts";
import { indexOfSurface, smoothSurface, surfaceReflectance } from "./fresnel.ts";
import type { Geometry, SurfaceConstants } from "../fit/measurement.ts";

/** No correction: the reading is taken for the internal reflectance. */
export const NO_SURFACE: SurfaceConstants = { k1: 0, k2: 0, index: 1 };

/** A smooth oil film, n 1.5 (memory: 1.48 fresh to 1.52 aged). */
export const OIL_SURFACE: SurfaceConstants = smoothSurface(1.5);

/** A surface as one geometry sees it: Rm = offset + gain R / (1 - k2 R). */
export interface SurfaceForm {
  readonly offset: number;
  readonly gain: number;
  readonly k2: number;
}

/**
 * The form of the correction for a geometry.
 * @throws RangeError when k1 or k2 is not in [0, 1), or NaN.
 * @source saunderson-1942
 */
export function surfaceForm(geometry: Geometry, surface: SurfaceConstants): SurfaceForm {
  const { k1, k2 } = surface;
  if (!(k1 >= 0 && k1 < 1)) throw domainError("surface constant k1", k1, "0 <= k1 < 1");
  if (!(k2 >= 0 && k2 < 1)) throw domainError("surface constant k2", k2, "0 <= k2 < 1");
  if (geometry === "45/0") {
    const n = indexOfSurface(surface);
    return {
      offset: 0,
      gain: ((1 - surfaceReflectance(n, 45)) * (1 - surfaceReflectance(n, 0))) / n ** 2,
      k2,
    };
  }
  return { offset: geometry === "d/8 included" ? k1 : 0, gain: (1 - k1) * (1 - k2), k2 };
}

/** Whether constants take nothing off: readings of unlike geometry can't then be brought together. */
export function isNoSurface({ k1, k2 }: SurfaceConstants): boolean {
  return k1 === 0 && k2 === 0;
}

/**
 * What an instrument reads of an internal reflectance.
 * @param internalReflectance R [1], 0 <= R <= 1.
 * @returns Rm [1]; at R = 1 a 45/0 reading passes 1 by up to half a percent.
 * @throws RangeError when R is outside that domain, or NaN.
 * @source saunderson-1942
 */
export function measuredReflectance(
  internalReflectance: number,
  geometry: Geometry,
  surface: SurfaceConstants,
): number {
  const R = internalReflectance;
  if (!(R >= 0 && R <= 1)) throw domainError("internal reflectance", R, "0 <= R <= 1");
  const { offset, gain, k2 } = surfaceForm(geometry, surface);
  return offset + (gain * R) / (1 - k2 * R);
}

/**
 * Internal reflectance behind a reading; inverse of {@link measuredReflectance}.
 *
 *     R = (Rm - offset) / (gain + k2 (Rm - offset))
 *
 * @param measured Rm [1], finite and >= -0.005.
 * @returns R [1]. Not above 0 when Rm <= k1 with gloss included: the instrument can't tell
 *   such a black from the surface over it, and the caller has to say so.
 * @throws RangeError when Rm is outside that domain, or NaN.
 * @source saunderson-1942
 */
export function internalReflectance(
  measured: number,
  geometry: Geometry,
  surface: SurfaceConstants,
): number {
  if (!(measured >= -0.005 && measured < Infinity))
    throw domainError("reflectance factor", measured, "-0.005 <= Rm < Infinity");
  const { offset, gain, k2 } = surfaceForm(geometry, surface);
  const body = measured - offset;
  return body / (gain + k2 * body);
}
