/** What the oil itself does to drying. */
import { domainError } from "../diagnostics/diagnostic.ts";
import type { Interval } from "../quantities/interval.ts";
import { contribution, inPart, ratio, type Contribution } from "./contribution.ts";

export type Oil = "linseed" | "walnut" | "safflower" | "poppy" | "stand linseed";

export interface OilDryingRow {
  readonly oil: Oil;
  /** Days to touch dry [d] of the oil alone, thin film, 20-23 degrees C. */
  readonly days: Interval;
}

/** @source memory-drying */
export const OIL_DRYING: readonly OilDryingRow[] = [
  { oil: "linseed", days: [3, 5] },
  { oil: "walnut", days: [4, 6] },
  { oil: "stand linseed", days: [4, 7] },
  { oil: "safflower", days: [5, 8] },
  { oil: "poppy", days: [6, 10] },
];

/** The oil that pigments' days are given in. */
export const LINSEED_DAYS: Interval = [3, 5];

export interface OilPart {
  readonly oil: Oil;
  /** Share of the oils by mass, 0-1; all together 1. */
  readonly massFraction: number;
}

/**
 * One contribution for each oil, by its share of the vehicle.
 *
 * @param oils empty when the vehicle is not recorded: then one contribution spans every oil of the table.
 * @throws RangeError when shares do not sum to 1.
 */
export function oilContributions(oils: readonly OilPart[]): Contribution[] {
  if (oils.length === 0) {
    const factors = OIL_DRYING.map(({ days }) => ratio(days, LINSEED_DAYS));
    const span: Interval = [
      Math.min(...factors.map(([lower]) => lower)),
      Math.max(...factors.map(([, upper]) => upper)),
    ];
    return [
      contribution(
        "vehicle-not-stated",
        "slower",
        span,
        { oils: OIL_DRYING.map(({ oil }) => oil) },
        "memory-drying",
      ),
    ];
  }
  requireOilShares(oils);
  return oils.map(({ oil, massFraction }) => {
    const { days } = oilRow(oil);
    const factor = inPart(ratio(days, LINSEED_DAYS), massFraction);
    return factor[1] === 1
      ? contribution(
          "linseed-sets-the-days",
          "none",
          factor,
          { oil, days, massFraction },
          "memory-drying",
        )
      : contribution(
          "oil-slower-than-linseed",
          "slower",
          factor,
          { oil, days, linseedDays: LINSEED_DAYS, massFraction },
          "memory-drying",
        );
  });
}

function requireOilShares(oils: readonly OilPart[]): void {
  const sum = oils.reduce((total, { massFraction }) => total + massFraction, 0);
  if (!(Math.abs(sum - 1) <= 1e-6 && oils.every(({ massFraction }) => massFraction >= 0)))
    throw domainError("sum of oils' mass fractions", sum, "1");
}

function oilRow(oil: Oil): OilDryingRow {
  const row = OIL_DRYING.find((candidate) => candidate.oil === oil);
  if (row === undefined) throw new Error(`Unreachable: no drying row for ${oil}`);
  return row;
}
