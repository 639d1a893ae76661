/** What of a mixture dries away, by what its supplier states of each substance. */

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
