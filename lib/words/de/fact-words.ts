import { DISPERSION_WORDS, METAL_NAMES, OIL_NAMES } from "./closed-sets.ts";

/** Words that a sheet holds as they stand, in German: oils, ways of grinding, metals, grounds of the lightfastness, rules by their names, editions of a frame. */
export const FACT_WORDS: Readonly<Record<string, string>> = {
  ...OIL_NAMES,
  ...DISPERSION_WORDS,
  ...METAL_NAMES,
  "harmed-by-light": "verblasst im Licht",
  "harmed-by-acid": "leidet unter Säure",
  "harmed-by-alkali": "leidet unter Lauge",
  "harmed-by-heat": "leidet unter Hitze",
  "harmed-by-sulphur": "leidet unter Schwefel",
  "harmed-by-damp": "leidet unter Feuchte",
  "oil-rich-wrinkles-when-thick": "runzelt, wenn dick aufgetragen",
  expected: "zu erwarten",
  "own exposure": "eigene Belichtung",
  stated: "angegeben",
  "Regulation (EC) No 1272/2008 as consolidated on 1 July 2026":
    "Verordnung (EG) Nr. 1272/2008, konsolidiert zum 1. Juli 2026",
  "UN GHS Rev. 11 (2025)": "UN-GHS, 11. Revision (2025)",
};
