/**
 * Supplemental statements of the EU frame (EUH): a closed list. Those of the classes
 * of 2023 (EUH380 to EUH451) are hazard statements and stand among these.
 *
 * @source clp-statements-2025
 */
import { isOneOf } from "../../quantities/members.ts";

export const SUPPLEMENTAL_CODES = [
  "EUH014",
  "EUH018",
  "EUH019",
  "EUH029",
  "EUH031",
  "EUH032",
  "EUH044",
  "EUH066",
  "EUH070",
  "EUH071",
  "EUH201",
  "EUH201A",
  "EUH202",
  "EUH203",
  "EUH204",
  "EUH205",
  "EUH206",
  "EUH207",
  "EUH208",
  "EUH209",
  "EUH209A",
  "EUH210",
  "EUH211",
  "EUH212",
  "EUH401",
] as const;
export type SupplementalCode = (typeof SUPPLEMENTAL_CODES)[number];

/** Those that a supplier states of an ingredient and that come along into the mixture. */
export const ENTRAINED_SUPPLEMENTS = [
  "EUH014",
  "EUH018",
  "EUH019",
  "EUH029",
  "EUH031",
  "EUH032",
  "EUH044",
  "EUH066",
  "EUH070",
  "EUH071",
  "EUH202",
  "EUH203",
  "EUH204",
  "EUH205",
  "EUH206",
  "EUH207",
  "EUH209",
  "EUH209A",
  "EUH401",
] as const satisfies readonly SupplementalCode[];
export type EntrainedSupplement = (typeof ENTRAINED_SUPPLEMENTS)[number];

export function isEntrainedSupplement(text: unknown): text is EntrainedSupplement {
  return isOneOf(ENTRAINED_SUPPLEMENTS, text);
}

/** Statements that fell with the annulled entry of titanium dioxide: known, so that they can be refused with a reason. */
export const WITHDRAWN_SUPPLEMENTS = [
  "EUH211",
  "EUH212",
] as const satisfies readonly SupplementalCode[];
