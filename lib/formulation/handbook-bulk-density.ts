/**
 * Bulk density of dry pigments [g/ml], as poured (loose) and as settled (tapped).
 *
 * @source memory-formulation
 */
import type { HandbookRow } from "./handbook-estimate.ts";

const RECALLED = "memory-formulation";

export const HANDBOOK_LOOSE_G_PER_ML: readonly HandbookRow[] = [
  { kind: "lamp black", colourIndexNames: ["PBk 6"], figure: [0.1, 0.25], source: RECALLED },
  { kind: "black iron oxide", colourIndexNames: ["PBk 11"], figure: [0.7, 1.1], source: RECALLED },
  { kind: "rutile", colourIndexNames: ["PW 6"], figure: [0.6, 0.9], source: RECALLED },
  { kind: "basic lead carbonate", colourIndexNames: ["PW 1"], figure: [1.2, 2], source: RECALLED },
  { kind: "ochre", colourIndexNames: ["PY 43"], figure: [0.4, 0.7], source: RECALLED },
];

export const HANDBOOK_TAPPED_G_PER_ML: readonly HandbookRow[] = [
  { kind: "lamp black", colourIndexNames: ["PBk 6"], figure: [0.2, 0.35], source: RECALLED },
  { kind: "black iron oxide", colourIndexNames: ["PBk 11"], figure: [1, 1.5], source: RECALLED },
  { kind: "rutile", colourIndexNames: ["PW 6"], figure: [0.9, 1.3], source: RECALLED },
  { kind: "basic lead carbonate", colourIndexNames: ["PW 1"], figure: [1.8, 3], source: RECALLED },
  { kind: "ochre", colourIndexNames: ["PY 43"], figure: [0.6, 1], source: RECALLED },
];
