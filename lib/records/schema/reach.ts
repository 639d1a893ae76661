import { z } from "zod";
import type { RecordPath } from "../yaml-record.ts";

/** From and to what a figure may be, both allowed; its unit; another unit that it is often written in, and how many of it make one. */
interface Reach {
  readonly from: number;
  readonly to: number;
  readonly unit: string;
  readonly other?: readonly [count: number, unit: string];
}

/**
 * What figures of a paint workshop can be, with so much room on both sides that only a slip of unit
 * or of the decimal point passes. Common practice, no source. Where a science holds a figure against
 * a narrower reach and says why (`lib/formulation/plausibility.ts`, trials of drying), only what no
 * arithmetic should meet is kept out here.
 */
const REACHES = {
  densityGPerCm3: { from: 1e-4, to: 1e5, unit: "g/cm3" },
  oilAbsorptionGPer100g: { from: 1e-3, to: 1e5, unit: "g of oil to 100 g" },
  bulkDensityGPerMl: { from: 1e-4, to: 1e5, unit: "g/ml" },
  oilIndexGPer100g: { from: 1e-3, to: 1e5, unit: "g of oil to 100 g" },
  filmThicknessUm: { from: 1e-6, to: 1e6, unit: "um" },
  touchDryDays: { from: 1e-4, to: 1e5, unit: "days" },
  particleSizeUm: { from: 0.001, to: 1000, unit: "um", other: [1000, "nm"] },
  refractiveIndex: { from: 1, to: 6, unit: "no unit, against air" },
  absorptionIndex: { from: 1e-6, to: 20, unit: "no unit, k of n + i k" },
  massG: { from: 1e-4, to: 1e7, unit: "g", other: [0.001, "kg"] },
  price: { from: 0, to: 1e6, unit: "the workshop's currency" },
  humidityPercent: { from: 0, to: 100, unit: "%" },
  deltaEab: { from: 0, to: 1000, unit: "Delta-E*ab" },
  parts: { from: 1e-4, to: 1e6, unit: "parts by mass" },
  percentOfOil: { from: 1e-4, to: 100, unit: "% of the oil" },
  finenessOfGrindUm: { from: 0.1, to: 1000, unit: "um", other: [1000, "nm"] },
  gloss60: { from: 0, to: 200, unit: "gloss units" },
  ml: { from: 0.1, to: 1e5, unit: "ml", other: [1000, "ul"] },
  metalPercent: { from: 1e-4, to: 100, unit: "%" },
  acuteToxicityEstimate: { from: 1e-6, to: 1e6, unit: "mg/kg or mg/l" },
  viscosityMm2PerS: { from: 0.1, to: 1e6, unit: "mm2/s" },
} as const satisfies Readonly<Record<string, Reach>>;
export type ReachName = keyof typeof REACHES;

/** Which reach a key of a record has, where it goes by another name. */
const KEYS: Readonly<Record<string, ReachName>> = {
  bulkDensityLooseGPerMl: "bulkDensityGPerMl",
  bulkDensityTappedGPerMl: "bulkDensityGPerMl",
  sizeUm: "particleSizeUm",
  pricePerKg: "price",
  yieldG: "massG",
  throughDryDays: "touchDryDays",
  ate: "acuteToxicityEstimate",
  kinematicViscosityMm2PerS: "viscosityMm2PerS",
};

/** The smallest uncertainty that any instrument of a workshop claims, in the unit of its figure. */
export const LEAST_UNCERTAINTY = 1e-6;

/** A number within its reach. */
export function within(name: ReachName): z.ZodNumber {
  const { from, to } = REACHES[name];
  return z.number().min(from).max(to);
}

/** Of a number past its reach, what unit the key takes, and what it would be if it were in the other one. */
export function reachHint(path: RecordPath, found: unknown): string | undefined {
  if (typeof found !== "number" || !Number.isFinite(found)) return undefined;
  for (const key of path.toReversed()) {
    const name = KEYS[String(key)] ?? String(key);
    if (!isReach(name)) continue;
    const { from, to, unit, other }: Reach = REACHES[name];
    if ((found >= from && found <= to) || (found <= 0 && from > 0)) return undefined;
    if (other === undefined) return `in ${unit}`;
    const [count, otherUnit] = other;
    const meant = Number((found / count).toPrecision(6));
    return meant >= from && meant <= to
      ? `in ${unit}: ${found} ${otherUnit} are ${meant}`
      : `in ${unit}`;
  }
  return undefined;
}

function isReach(name: string): name is ReachName {
  return Object.hasOwn(REACHES, name);
}
