/**
 * Supplemental statements of the EU frame (EUH): a closed list.
 *
 * @source clp-annex-2-memory
 */
export const SUPPLEMENTAL_CODES = [
  "EUH031",
  "EUH032",
  "EUH066",
  "EUH071",
  "EUH201",
  "EUH201A",
  "EUH203",
  "EUH208",
  "EUH210",
  "EUH211",
  "EUH212",
] as const;
export type SupplementalCode = (typeof SUPPLEMENTAL_CODES)[number];

export function isSupplementalCode(text: unknown): text is SupplementalCode {
  return (SUPPLEMENTAL_CODES as readonly unknown[]).includes(text);
}

/** Those that a supplier states of an ingredient and that come along into the mixture. */
export const ENTRAINED_SUPPLEMENTS = [
  "EUH031",
  "EUH032",
  "EUH066",
  "EUH071",
] as const satisfies readonly SupplementalCode[];
export type EntrainedSupplement = (typeof ENTRAINED_SUPPLEMENTS)[number];

export function isEntrainedSupplement(text: unknown): text is EntrainedSupplement {
  return (ENTRAINED_SUPPLEMENTS as readonly unknown[]).includes(text);
}

/** Statements that fell with the annulled entry of titanium dioxide: known, so that they can be refused with a reason. */
export const WITHDRAWN_SUPPLEMENTS = [
  "EUH211",
  "EUH212",
] as const satisfies readonly SupplementalCode[];
