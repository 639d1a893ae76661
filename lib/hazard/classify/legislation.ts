/**
 * Acts of the markets that bear on artists' colours, each dated and with its
 * standing: `read` or `memory` as its source says.
 */
import { HAZARD_SOURCES } from "../../sources/hazard.ts";

export const HAZARD_MARKETS = ["EU", "GB", "NI", "US", "other"] as const;
export type HazardMarket = (typeof HAZARD_MARKETS)[number];

type HazardSource = keyof typeof HAZARD_SOURCES;

export interface Act {
  readonly markets: readonly HazardMarket[];
  /** Since when it applies, ISO. */
  readonly since: string;
  readonly source: HazardSource;
}

export const ACTS = {
  "reach-lead-paint": { markets: ["EU", "NI"], since: "2009-06-01", source: "reach-annex-17" },
  "uk-reach-lead-paint": {
    markets: ["GB"],
    since: "2021-01-01",
    source: "uk-reach-annex-17-memory",
  },
  "reach-cmr-public": { markets: ["EU", "NI"], since: "2009-06-01", source: "reach-annex-17-cmr" },
  "uk-reach-cmr-public": {
    markets: ["GB"],
    since: "2021-01-01",
    source: "uk-reach-annex-17-memory",
  },
  "reach-authorisation": {
    markets: ["EU", "NI"],
    since: "2015-05-21",
    source: "reach-annex-14-memory",
  },
  "uk-reach-authorisation": {
    markets: ["GB"],
    since: "2021-01-01",
    source: "uk-reach-annex-14-memory",
  },
  "titanium-dioxide-annulled": {
    markets: ["EU", "NI"],
    since: "2025-08-01",
    source: "cjeu-titanium-dioxide",
  },
  "titanium-dioxide-delisted": { markets: ["GB"], since: "2024-06-26", source: "gb-mcl-memory" },
  "clp-distance-offer": {
    markets: ["EU", "NI", "GB"],
    since: "2009-01-20",
    source: "clp-article-48",
  },
  "clp-poison-centre": { markets: ["EU", "NI"], since: "2021-01-01", source: "clp-article-45" },
  "us-lead-paint": { markets: ["US"], since: "2009-08-14", source: "16-cfr-1303-memory" },
  "us-art-materials": { markets: ["US"], since: "1990-11-18", source: "16-cfr-1500-memory" },
  "us-proposition-65": { markets: ["US"], since: "1988-02-27", source: "proposition-65-memory" },
} as const satisfies Record<string, Act>;

export type ActKey = keyof typeof ACTS;

/** How far an act is known here. */
export function actStanding(key: ActKey): "read" | "memory" {
  return HAZARD_SOURCES[ACTS[key].source].standing === "read" ? "read" : "memory";
}
