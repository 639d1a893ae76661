/** How much an oil yellows with age and in the dark: what yellows least also makes the weaker, slower film. */
import type { StatementOf } from "../quantities/statement.ts";
import type { Oil, OilPart } from "./vehicle-drying.ts";

export type YellowingStatement = StatementOf<
  "yellows-most" | "yellows-less" | "yellows-least",
  { readonly oil: Oil }
>;

export interface YellowingRow {
  readonly oil: Oil;
  readonly rule: YellowingStatement["rule"];
}

/** Most yellowing first. @source practice-drying */
export const OIL_YELLOWING: readonly YellowingRow[] = [
  { oil: "linseed", rule: "yellows-most" },
  { oil: "stand linseed", rule: "yellows-less" },
  { oil: "walnut", rule: "yellows-less" },
  { oil: "safflower", rule: "yellows-least" },
  { oil: "poppy", rule: "yellows-least" },
];

/** Least share of the vehicle by mass [1] at which an oil is reckoned to yellow the film. */
export const YELLOWS_FROM_MASS_FRACTION = 0.1;

/** Of the oil that yellows most among those with a share that counts; undefined for none. */
export function yellowingStatement(oils: readonly OilPart[]): YellowingStatement | undefined {
  const present = oils
    .filter(({ massFraction }) => massFraction >= YELLOWS_FROM_MASS_FRACTION)
    .map(({ oil }) => oil);
  const row = OIL_YELLOWING.find(({ oil }) => present.includes(oil));
  return row === undefined
    ? undefined
    : {
        rule: row.rule,
        values: { oil: row.oil },
        standing: "estimated",
        source: "practice-drying",
      };
}
