/**
 * Pigment volume concentration of a dry film, and where it stands to the critical one.
 *
 * @validity film of pigment and binder alone: what evaporates has gone. The oil
 *   takes up oxygen as it dries, which this leaves out.
 */
import { requireOpenFraction } from "./required-domain.ts";
import { requirePositive } from "../quantities/positive.ts";

/**
 * PVC = (mp / rhop) / (mp / rhop + mb / rhob)
 *
 * With 100 g of pigment the grams of binder are the oil index.
 *
 * @param pigmentG mp [g], > 0. @param pigmentDensityGPerCm3 rhop [g/cm3], > 0.
 * @param binderG mb [g], > 0. @param binderDensityGPerCm3 rhob [g/cm3], > 0.
 * @returns PVC as a fraction, 0-1.
 * @throws RangeError when any is not a finite number above 0.
 * @source bierwagen-hay-1975
 * @example pigmentVolumeConcentration(100, 4.2, 20, 0.93) // 0.525424
 */
export function pigmentVolumeConcentration(
  pigmentG: number,
  pigmentDensityGPerCm3: number,
  binderG: number,
  binderDensityGPerCm3: number,
): number {
  requirePositive("mass of pigment", pigmentG, "g");
  requirePositive("density of the pigment", pigmentDensityGPerCm3, "g/cm3");
  requirePositive("mass of binder", binderG, "g");
  requirePositive("density of the binder", binderDensityGPerCm3, "g/cm3");
  const pigmentCm3 = pigmentG / pigmentDensityGPerCm3;
  return pigmentCm3 / (pigmentCm3 + binderG / binderDensityGPerCm3);
}

/**
 * Reduced PVC, Lambda = PVC / CPVC: below 1 oil is in excess, above 1 the film holds voids.
 *
 * @param pvc fraction, 0-1. @param cpvc fraction, 0-1; the effective one to judge a paste by.
 * @throws RangeError when either is not between 0 and 1.
 * @source bierwagen-hay-1975
 * @example reducedPvc(0.45, 0.5) // 0.9
 */
export function reducedPvc(pvc: number, cpvc: number): number {
  requireOpenFraction("PVC", pvc);
  requireOpenFraction("CPVC", cpvc);
  return pvc / cpvc;
}
