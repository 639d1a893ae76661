/**
 * Density and oil absorption of several pigments together, by pigment volume.
 *
 * @validity ideal mixing: fine grains that lodge between coarse ones pack closer
 *   and take less oil than this says.
 */
import { requireShares } from "./required-domain.ts";
import { requirePositive } from "../quantities/positive.ts";
import { at } from "../quantities/at.ts";

export interface BlendPart {
  /** Share of the dry pigment by mass, 0-1; all parts together 1. */
  readonly massFraction: number;
  readonly densityGPerCm3: number;
}

/** A part whose rub-out figure is known too [g oil/100 g pigment]. */
export interface OilDemandPart extends BlendPart {
  readonly oilAbsorptionGPer100g: number;
}

function requireBlend(parts: readonly BlendPart[]): void {
  requireShares(
    "mass fraction",
    parts.map((part) => part.massFraction),
  );
  for (const part of parts) requirePositive("density of the pigment", part.densityGPerCm3, "g/cm3");
}

/**
 * Share of the pigment volume that each part takes, 0-1, in the same order.
 * @throws RangeError when the mass fractions do not sum to 1 or a density is not above 0.
 */
export function volumeFractions(parts: readonly BlendPart[]): number[] {
  const specific = 1 / blendDensityGPerCm3(parts);
  return parts.map(({ massFraction, densityGPerCm3 }) => massFraction / densityGPerCm3 / specific);
}

/**
 * Density of the mixed pigment [g/cm3]: one over the sum of mass fraction over density.
 * @throws RangeError as {@link volumeFractions}.
 */
export function blendDensityGPerCm3(parts: readonly BlendPart[]): number {
  requireBlend(parts);
  return (
    1 /
    parts.reduce(
      (total, { massFraction, densityGPerCm3 }) => total + massFraction / densityGPerCm3,
      0,
    )
  );
}

/**
 * Oil absorption of the mixed pigment [g/100 g]: the oil that each part's volume
 * takes, added by volume, over the mixed density.
 *
 *     OA = sum(phi OA rho) / sum(phi rho)
 *
 * @throws RangeError as {@link volumeFractions}, or when an oil absorption is not above 0.
 * @source asbeck-van-loo-1949 : each grain brings its own coat of oil.
 */
export function blendOilAbsorptionGPer100g(parts: readonly OilDemandPart[]): number {
  const volumes = volumeFractions(parts);
  const oilG = parts.reduce((total, { oilAbsorptionGPer100g, densityGPerCm3 }, i) => {
    requirePositive("oil absorption", oilAbsorptionGPer100g, "g/100 g");
    return total + at(volumes, i) * oilAbsorptionGPer100g * densityGPerCm3;
  }, 0);
  return oilG / blendDensityGPerCm3(parts);
}
