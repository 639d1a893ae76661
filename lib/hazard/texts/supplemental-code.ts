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

/** Statements that fell with the annulled entry of titanium dioxide: known, so that they can be refused with a reason. */
export const WITHDRAWN_SUPPLEMENTS = ["EUH211", "EUH212"] as const;
/** Those that are worked out of the mixture itself. */
const OF_THE_MIXTURE = ["EUH201", "EUH201A", "EUH208", "EUH210", ...WITHDRAWN_SUPPLEMENTS] as const;

/** All others a supplier states of an ingredient, and they come along into the mixture. */
export type EntrainedSupplement = Exclude<SupplementalCode, (typeof OF_THE_MIXTURE)[number]>;
export const ENTRAINED_SUPPLEMENTS = SUPPLEMENTAL_CODES.filter(
  (code): code is EntrainedSupplement => !isOneOf(OF_THE_MIXTURE, code),
);

export function isEntrainedSupplement(text: unknown): text is EntrainedSupplement {
  return isOneOf(ENTRAINED_SUPPLEMENTS, text);
}
