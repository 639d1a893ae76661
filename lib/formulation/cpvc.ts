/**
 * Critical pigment volume concentration: the share of pigment in a film in which
 * the oil just fills the gaps between the grains.
 *
 * A pigment that drinks much oil has a LOW CPVC: less of it fits before the oil
 * no longer reaches round every grain.
 *
 * @source asbeck-van-loo-1949 : the concept; the equation was read in two later texts.
 */
import { certain } from "../quantities/at.ts";
import { ends, type Quantity } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";
import { requireOpenFraction } from "./required-domain.ts";
import { requirePositive } from "../quantities/positive.ts";

/** 100 g of pigment over the density of linseed oil: 100 x 0.935 g/cm3. */
const RUB_OUT_CONSTANT = 93.5;

/**
 * CPVC from the rub-out figure.
 *
 *     CPVC = 1 / (1 + OA rho / 93.5)
 *
 * @param oilAbsorptionGPer100g OA by spatula or palette knife [g oil/100 g pigment], > 0.
 * @param pigmentDensityGPerCm3 rho [g/cm3], > 0.
 * @returns CPVC as a fraction, 0-1.
 * @throws RangeError when either is not a finite number above 0.
 * @validity about +-5 points of measured CPVC (memory); a Gardner-Coleman OA gives too low a CPVC.
 * @source asbeck-van-loo-1949
 * @example criticalPigmentVolumeConcentration(20, 4.2) // 0.526761
 */
export function criticalPigmentVolumeConcentration(
  oilAbsorptionGPer100g: number,
  pigmentDensityGPerCm3: number,
): number {
  requirePositive("oil absorption", oilAbsorptionGPer100g, "g/100 g");
  requirePositive("density of the pigment", pigmentDensityGPerCm3, "g/cm3");
  return 1 / (1 + (oilAbsorptionGPer100g * pigmentDensityGPerCm3) / RUB_OUT_CONSTANT);
}

/** Oil demand by volume in words, by CPVC; each row holds below its limit. */
const OIL_DEMANDS = [
  { cpvcBelow: 0.45, rule: "high-oil-demand-low-cpvc" },
  { cpvcBelow: 0.55, rule: "middling-oil-demand" },
  { cpvcBelow: Infinity, rule: "low-oil-demand-high-cpvc" },
] as const;

export type OilDemandStatement = StatementOf<
  (typeof OIL_DEMANDS)[number]["rule"],
  {
    readonly cpvc: Quantity;
    /** Oil that fills the gaps of 100 cm3 of pigment [cm3]. */
    readonly oilCm3Per100Cm3: Quantity;
  }
>;

/**
 * Why oil demand and CPVC go opposite ways, for this pigment; nothing of an estimate that reaches over a limit.
 *
 * @param cpvc fraction, 0-1, both ends open.
 * @throws RangeError outside 0-1.
 * @source practice-formulation for the limits, an estimate.
 */
export function oilDemandStatements(cpvc: Quantity): OilDemandStatement[] {
  const [lower, upper] = ends(cpvc);
  for (const end of [lower, upper]) requireOpenFraction("CPVC", end);
  const demand = OIL_DEMANDS.find(({ cpvcBelow }) => upper < cpvcBelow);
  if (demand !== OIL_DEMANDS.find(({ cpvcBelow }) => lower < cpvcBelow)) return [];
  const oil = (fraction: number): number => (100 * (1 - fraction)) / fraction;
  return [
    {
      rule: certain(demand).rule,
      standing: "derived",
      source: "asbeck-van-loo-1949",
      values: {
        cpvc,
        oilCm3Per100Cm3: lower === upper ? oil(lower) : [oil(upper), oil(lower)],
      },
    },
  ];
}
