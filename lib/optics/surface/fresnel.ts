/**
 * Reflection at the smooth surface of a film of refractive index n, in air and
 * unpolarised: Fresnel's equations, single-angle and averaged over a hemisphere.
 *
 * @source fresnel, walsh-1926
 */
import { domainError } from "../../diagnostics/diagnostic.ts";
import type { SurfaceConstants } from "../fit/measurement.ts";

/**
 * Share of light that the surface reflects at an angle of incidence in air.
 *
 *     F = (((cos i - n cos t)/(cos i + n cos t))^2 + ((n cos i - cos t)/(n cos i + cos t))^2) / 2
 *
 * @param index n [1], 1 <= n < Infinity.
 * @param angleDegrees angle of incidence in air, 0 <= angle <= 90.
 * @returns F [1], 0 <= F <= 1.
 * @source fresnel
 * @example surfaceReflectance(1.5, 0) // 0.04
 */
export function surfaceReflectance(index: number, angleDegrees: number): number {
  if (!(index >= 1 && index < Infinity))
    throw domainError("refractive index", index, "1 <= n < Infinity");
  if (!(angleDegrees >= 0 && angleDegrees <= 90))
    throw domainError("angle of incidence", angleDegrees, "0 <= angle <= 90 degrees");
  if (index === 1) return 0;
  const angle = (angleDegrees * Math.PI) / 180;
  const outside = Math.cos(angle);
  const inside = Math.sqrt(1 - (Math.sin(angle) / index) ** 2);
  const across = ((outside - index * inside) / (outside + index * inside)) ** 2;
  const along = ((index * outside - inside) / (index * outside + inside)) ** 2;
  return (across + along) / 2;
}

/**
 * Share of perfectly diffuse light that the surface reflects, coming from air.
 *
 * @param index n [1], 1 <= n < Infinity.
 * @returns F [1], 0 <= F < 1.
 * @source walsh-1926 : closed form of the hemispherical mean
 */
export function diffuseSurfaceReflectance(index: number): number {
  if (!(index >= 1 && index < Infinity))
    throw domainError("refractive index", index, "1 <= n < Infinity");
  const n = index;
  if (n === 1) return 0;
  const square = n * n;
  return (
    1 / 2 +
    ((n - 1) * (3 * n + 1)) / (6 * (n + 1) ** 2) +
    ((square * (square - 1) ** 2) / (square + 1) ** 3) * Math.log((n - 1) / (n + 1)) -
    (2 * n ** 3 * (square + 2 * n - 1)) / ((square + 1) * (n ** 4 - 1)) +
    ((8 * n ** 4 * (n ** 4 + 1)) / ((square + 1) * (n ** 4 - 1) ** 2)) * Math.log(n)
  );
}

/**
 * Surface constants of a smooth film by its refractive index: k1 the normal
 * reflectance, k2 the reflectance of diffuse light from inside.
 *
 *     k1 = ((n - 1)/(n + 1))^2,  k2 = 1 - (1 - F)/n^2, F the diffuse reflectance from outside
 *
 * @param index n [1], 1 <= n < Infinity: 1.48 a fresh oil film, 1.50-1.52 an aged one (memory).
 * @validity In practice the k2 that fits drawdowns is .4-.6: offer the constants, don't insist.
 * @source saunderson-1942, fresnel
 * @example smoothSurface(1.5) // { k1: 0.04, k2: 0.5963..., index: 1.5 }
 */
export function smoothSurface(index: number): SurfaceConstants {
  return {
    k1: surfaceReflectance(index, 0),
    k2: 1 - (1 - diffuseSurfaceReflectance(index)) / index ** 2,
    index,
  };
}

/** Refractive index whose normal reflectance is k1; 1 (no surface) for k1 = 0. */
export function indexOfSurface({ k1, index }: SurfaceConstants): number {
  if (index !== undefined) return index;
  if (!(k1 >= 0 && k1 < 1)) throw domainError("surface constant k1", k1, "0 <= k1 < 1");
  const root = Math.sqrt(k1);
  return (1 + root) / (1 - root);
}
