/** How much an oil yellows with age and in the dark: what yellows least also makes the weaker, slower film. */
import { estimated, type StatementOf } from "../quantities/statement.ts";
import type { Oil, OilPart, OilRow, YellowingRule } from "./oils.ts";

export type YellowingStatement = StatementOf<YellowingRule, { readonly oil: Oil }>;

/** Least share of the vehicle by mass [1] at which an oil is reckoned to yellow the film. */
const YELLOWS_FROM_MASS_FRACTION = 0.1;

/**
 * Of the oil that yellows most among those with a share that counts; undefined for none.
 * @param rows of `oils.csv`, that which yellows most first.
 */
export function yellowingStatement(
  oils: readonly OilPart[],
  rows: readonly OilRow[],
): YellowingStatement | undefined {
  const present = oils
    .filter(({ massFraction }) => massFraction >= YELLOWS_FROM_MASS_FRACTION)
    .map(({ oil }) => oil);
  const row = rows.find(({ oil }) => present.includes(oil));
  return row === undefined
    ? undefined
    : estimated(row.yellowing, { oil: row.oil }, row.yellowingSource);
}
