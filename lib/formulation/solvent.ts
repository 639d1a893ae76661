/** What of a medium dries away: the solvents among its components. */
import type { StatementOf } from "../quantities/statement.ts";

/**
 * Statements that a solvent carries and neither a drying oil nor a resin nor a wax does: that it is a flammable
 * liquid (a flash point of at most 60 degrees C), or a thin liquid that harms the lungs when swallowed (spirits).
 * @source clp-1272-2008-memory : Annex I, 2.6 and 3.10
 */
const OF_SOLVENTS = /^H(22[456]|304)$/;

/** @param statements codes of the hazard statements that its supplier gives a substance. */
export function isSolvent(statements: readonly string[]): boolean {
  return statements.some((code) => OF_SOLVENTS.test(code));
}

export type SolventStatement = StatementOf<
  "medium-holds-solvent",
  { readonly mediums: readonly string[] }
>;

/** @param mediums names of those that hold a solvent of which no amount is recorded; nothing is said of none. */
export function solventStatements(mediums: readonly string[]): SolventStatement[] {
  return mediums.length === 0 ? [] : [{ rule: "medium-holds-solvent", values: { mediums } }];
}
