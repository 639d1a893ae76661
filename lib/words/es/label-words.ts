/** Signal words of a label, as Annex I has them. @source clp-1272-2008 */
export const SIGNAL_WORDS = { Danger: "Peligro", Warning: "Atención" } as const;
