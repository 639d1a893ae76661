/** A medium of which it is not known how much dries away. */
import type { StatementOf } from "../quantities/statement.ts";

export type SolventStatement = StatementOf<
  "medium-holds-solvent",
  { readonly mediums: readonly string[] }
>;

/** @param mediums names of those that hold a solvent of which no amount is recorded; nothing is said of none. */
export function solventStatements(mediums: readonly string[]): SolventStatement[] {
  return mediums.length === 0 ? [] : [{ rule: "medium-holds-solvent", values: { mediums } }];
}
