/**
 * Kubelka-Munk optics of a masstone (a film thick enough to hide its ground).
 *
 * Symbols are those of the source: K absorption and S scattering coefficient
 * [1/um], R-infinity the reflectance factor of the masstone. K and S only ever
 * appear here as the ratio K/S, so film thickness drops out.
 *
 * Reflectances in this room are *internal*: the air-film surface has already
 * been taken off by surface.ts. Feeding a measured reflectance straight in
 * is the classic mistake, and costs most in dark colours.
 *
 * @source kubelka-munk-1931
 */
import { domainError } from "../diagnostics/diagnostic.ts";

/**
 * K/S of a masstone from its internal reflectance factor.
 *
 *     K/S = (1 - R)^2 / (2 R)
 *
 * @param internalReflectance R-infinity [1], 0 < R <= 1, scalar at one wavelength.
 * @returns K/S [1], >= 0; 0 for the perfect white.
 * @throws RangeError when R is not in (0, 1]: R = 0 would make K/S infinite.
 * @validity opaque, diffusely lit film; not metallic, pearlescent or fluorescent.
 * @source kubelka-munk-1931
 * @example absorptionScatteringRatio(0.5) // 0.25
 */
export function absorptionScatteringRatio(internalReflectance: number): number {
  const R = internalReflectance;
  if (!(R > 0 && R <= 1)) throw domainError("internal reflectance", R, "0 < R <= 1");
  return (1 - R) ** 2 / (2 * R);
}

/**
 * Internal reflectance factor of a masstone from its K/S; inverse of
 * {@link absorptionScatteringRatio}.
 *
 *     R = 1 + K/S - sqrt((K/S)^2 + 2 K/S)
 *
 * @param ratio K/S [1], finite and >= 0, scalar at one wavelength.
 * @returns R-infinity [1], 0 < R <= 1.
 * @throws RangeError when K/S is negative, NaN or infinite.
 * @source kubelka-munk-1931
 * @example masstoneReflectance(0.25) // 0.5
 */
export function masstoneReflectance(ratio: number): number {
  if (!(ratio >= 0 && ratio < Infinity)) throw domainError("K/S", ratio, "0 <= K/S < Infinity");
  // The printed form subtracts two nearly equal numbers when K/S is large (a
  // deep black) and returns 0 near K/S = 1e8; its reciprocal form does not.
  // sqrt(q) * sqrt(q + 2), because q * q would overflow long before q does.
  return 1 / (1 + ratio + Math.sqrt(ratio) * Math.sqrt(ratio + 2));
}
