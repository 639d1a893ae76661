/**
 * Acts of the markets that bear on artists' colours: since when, where, and how far
 * each is known here. Their table is `markets/acts.csv`.
 */
import type { SourceKey } from "../../sources/source.ts";

export const HAZARD_MARKETS = ["EU", "GB", "NI", "US", "other"] as const;
export type HazardMarket = (typeof HAZARD_MARKETS)[number];

export const ACT_KEYS = [
  "reach-lead-paint",
  "uk-reach-lead-paint",
  "gb-leaded-paint",
  "reach-cadmium",
  "uk-reach-cadmium",
  "reach-cmr-public",
  "uk-reach-cmr-public",
  "reach-candidate-list",
  "reach-candidate-list-chromates",
  "reach-authorisation",
  "reach-authorisation-chromates",
  "uk-reach-authorisation",
  "lead-at-work",
  "titanium-dioxide-annulled",
  "titanium-dioxide-delisted",
  "clp-distance-offer",
  "clp-poison-centre",
  "us-lead-paint",
  "us-art-materials",
  "us-proposition-65",
] as const;
export type ActKey = (typeof ACT_KEYS)[number];

export interface Act {
  readonly act: ActKey;
  readonly markets: readonly HazardMarket[];
  /** Since when it applies, ISO. */
  readonly since: string;
  readonly source: SourceKey;
  /** Whether it was read or is from memory. */
  readonly standing: "read" | "memory";
}

/** @throws RangeError for an act that the table lacks. */
export function actOf(key: ActKey, acts: readonly Act[]): Act {
  const found = acts.find(({ act }) => act === key);
  if (found === undefined) throw new RangeError(`The table of acts has no row for ${key}.`);
  return found;
}
