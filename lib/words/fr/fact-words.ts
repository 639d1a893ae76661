import { METALS, OILS } from "./closed-words.ts";

/** Words that a sheet holds as they stand, in French: oils, ways of grinding, metals, grounds of the lightfastness, rules by their names, editions of a frame. */
export const FACT_WORDS: Readonly<Record<string, string>> = {
  ...OILS,
  ...METALS,
  mulled: "broyée à la molette",
  milled: "broyée à la machine",
  "harmed-by-light": "pâlit à la lumière",
  "harmed-by-acid": "craint l’acide",
  "harmed-by-alkali": "craint les alcalis",
  "harmed-by-heat": "craint la chaleur",
  "harmed-by-sulphur": "craint le soufre",
  "harmed-by-damp": "craint l’humidité",
  "oil-rich-wrinkles-when-thick": "se ride en couche épaisse",
  expected: "attendue",
  "own exposure": "exposition de l’atelier",
  stated: "indiquée",
  "Regulation (EC) No 1272/2008 as consolidated on 1 July 2026":
    "règlement (CE) n° 1272/2008, consolidé au 1er juillet 2026",
  "UN GHS Rev. 11 (2025)": "SGH de l’ONU, 11e révision (2025)",
};
