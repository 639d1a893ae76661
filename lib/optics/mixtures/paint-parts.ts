/** From the ratio that was weighed to the parts that a painter squeezes out. */
import { requirePositive } from "../../quantities/positive.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";

/**
 * Mass ratio of paints from the mass ratio of the pigments in them.
 *
 * @param pigmentRatio colour to white, pigment by mass [1], > 0.
 * @param colourFraction, whiteFraction pigment mass in the mass of each paint [1], 0 < f <= 1.
 * @throws RangeError when an argument is outside its domain, or NaN.
 * @example paintMassRatio(0.1, 0.5, 0.8) // 0.16
 */
export function paintMassRatio(
  pigmentRatio: number,
  colourFraction: number,
  whiteFraction: number,
): number {
  requirePositive("mass ratio of pigments", pigmentRatio);
  requireFraction(colourFraction);
  requireFraction(whiteFraction);
  return (pigmentRatio * whiteFraction) / colourFraction;
}

/** Mass ratio of pigments from that of the paints; inverse of {@link paintMassRatio}. */
export function pigmentMassRatio(
  paintRatio: number,
  colourFraction: number,
  whiteFraction: number,
): number {
  requirePositive("mass ratio of paints", paintRatio);
  requireFraction(colourFraction);
  requireFraction(whiteFraction);
  return (paintRatio * colourFraction) / whiteFraction;
}

/**
 * Volume ratio of paints, tube to tube, from their mass ratio.
 * @param colourDensity, whiteDensity of the paints [g/cm3], > 0.
 * @throws RangeError when an argument is outside its domain, or NaN.
 * @example paintVolumeRatio(0.1, 1.25, 2.5) // 0.2
 */
export function paintVolumeRatio(
  paintRatio: number,
  colourDensity: number,
  whiteDensity: number,
): number {
  requirePositive("mass ratio of paints", paintRatio);
  requirePositive("density of the colour", colourDensity);
  requirePositive("density of the white", whiteDensity);
  return (paintRatio * whiteDensity) / colourDensity;
}

/** Parts of white to one part of colour, from a ratio of colour to white. */
export function partsOfWhite(ratio: number): number {
  requirePositive("ratio of colour to white", ratio);
  return 1 / ratio;
}

function requireFraction(fraction: number): void {
  if (!(fraction > 0 && fraction <= 1))
    throw domainError("mass fraction of pigment", fraction, "0 < fraction <= 1");
}
