/** The drying oils: a closed list, with what `oils.csv` says of each. */
import { certain } from "../quantities/at.ts";
import type { Interval } from "../quantities/interval.ts";
import type { SourceKey } from "../sources/source.ts";

export const OILS = ["linseed", "walnut", "safflower", "poppy", "stand linseed"] as const;
export type Oil = (typeof OILS)[number];

export const YELLOWING_RULES = ["yellows-most", "yellows-less", "yellows-least"] as const;
export type YellowingRule = (typeof YELLOWING_RULES)[number];

/** A row of `oils.csv`; the table has one for each oil, that which yellows most first. */
export interface OilRow {
  readonly oil: Oil;
  /** Days to touch dry [d] of the oil alone, thin film, 20-23 degrees C. */
  readonly touchDryDays: Interval;
  readonly yellowing: YellowingRule;
  readonly yellowingSource: SourceKey;
  readonly source: SourceKey;
}

/** A part of a vehicle. */
export interface OilPart {
  readonly oil: Oil;
  /** Share of the oils by mass, 0-1; all together 1. */
  readonly massFraction: number;
}

export function oilRow(rows: readonly OilRow[], oil: Oil): OilRow {
  return certain(rows.find((row) => row.oil === oil));
}

/** Days to touch dry [d] of the oil that pigments' days are given in. */
export function linseedDays(rows: readonly OilRow[]): Interval {
  return oilRow(rows, "linseed").touchDryDays;
}
