/**
 * Oil of a paint by pigment volume. By mass a light pigment seems to drink far
 * more than a heavy one; by volume most of the difference goes.
 */
import type { StatementOf } from "../quantities/statement.ts";
import { requirePositive } from "../quantities/positive.ts";

/**
 * Grams of oil to 100 cm3 of pigment, from grams to 100 g: the oil index or the
 * oil absorption, whichever is given.
 *
 * @param oilGPer100g [g/100 g], > 0. @param pigmentDensityGPerCm3 [g/cm3], > 0.
 * @throws RangeError when either is not a finite number above 0.
 * @example oilGPer100cm3(75, 1.8) // 135
 */
export function oilGPer100cm3(oilGPer100g: number, pigmentDensityGPerCm3: number): number {
  requirePositive("oil to 100 g of pigment", oilGPer100g, "g/100 g");
  requirePositive("density of the pigment", pigmentDensityGPerCm3, "g/cm3");
  return oilGPer100g * pigmentDensityGPerCm3;
}

export interface OilByMass {
  readonly oilIndexGPer100g: number;
  readonly densityGPerCm3: number;
}

interface OilRatios {
  /** Of the two oils to a mass of pigment, the larger over the smaller [1]. */
  readonly massRatio: number;
  /** The same to a volume of pigment [1]. */
  readonly volumeRatio: number;
}

export type OilRatioStatement =
  | StatementOf<
      "oil-alike" | "oil-differs-by-volume-alone" | "oil-differs-both-ways",
      Pick<OilRatios, keyof OilRatios>
    >
  | StatementOf<
      "oil-differs-by-mass-alone",
      Pick<OilRatios, keyof OilRatios> & { readonly more?: string; readonly less?: string }
    >;

export interface OilRatiosRuling extends OilRatios {
  readonly statement: OilRatioStatement;
}

/** A ratio by mass from which two paints differ clearly, and one by volume up to which they do not. */
const CLEARLY_BY_MASS = 2;
export const ALIKE_BY_VOLUME = 1.5;

/**
 * Whether two paints that differ in oil by mass also differ by volume.
 *
 * @returns both ratios, >= 1, and what they say.
 * @throws RangeError when a figure is not a finite number above 0.
 * @source practice-formulation for the two limits, an estimate.
 */
export function massAndVolumeRuling(one: OilByMass, other: OilByMass): OilRatiosRuling {
  const massRatio = largerOverSmaller(one.oilIndexGPer100g, other.oilIndexGPer100g);
  const volumeRatio = largerOverSmaller(
    oilGPer100cm3(one.oilIndexGPer100g, one.densityGPerCm3),
    oilGPer100cm3(other.oilIndexGPer100g, other.densityGPerCm3),
  );
  const rule =
    massRatio < CLEARLY_BY_MASS
      ? volumeRatio <= ALIKE_BY_VOLUME
        ? "oil-alike"
        : "oil-differs-by-volume-alone"
      : volumeRatio <= ALIKE_BY_VOLUME
        ? "oil-differs-by-mass-alone"
        : "oil-differs-both-ways";
  return {
    massRatio,
    volumeRatio,
    statement: {
      rule,
      values: { massRatio, volumeRatio },
      standing: "derived",
      source: "practice-formulation",
    },
  };
}

function largerOverSmaller(one: number, other: number): number {
  return Math.max(one, other) / Math.min(one, other);
}
