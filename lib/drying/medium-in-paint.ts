/** A medium in the recipe that is no drying oil, drier or thinner: wax paste, resin, egg. What it does is said to be unknown. */
import type { StatementOf } from "../quantities/statement.ts";

/** What a medium may change. */
export const MEDIUM_CHANGES = ["drying", "finish", "fat over lean", "yellowing"] as const;
export type MediumChange = (typeof MEDIUM_CHANGES)[number];

export type MediumStatement = StatementOf<
  "holds-medium-not-known",
  { readonly mediums: readonly string[]; readonly changes: MediumChange }
>;

/** @param mediums names; nothing is said of none. */
export function mediumStatements(
  mediums: readonly string[],
  changes: MediumChange,
): MediumStatement[] {
  return mediums.length === 0
    ? []
    : [{ rule: "holds-medium-not-known", values: { mediums, changes } }];
}
