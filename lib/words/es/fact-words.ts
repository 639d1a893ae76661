import { METALS, OILS } from "./closed-words.ts";

/** Words that a sheet holds as they stand, in Spanish: oils, ways of grinding, metals, grounds of the lightfastness, rules by their names, editions of a frame. */
export const FACT_WORDS: Readonly<Record<string, string>> = {
  ...OILS,
  ...METALS,
  mulled: "molida con moleta",
  milled: "molida a máquina",
  "harmed-by-light": "palidece con la luz",
  "harmed-by-acid": "sensible al ácido",
  "harmed-by-alkali": "sensible a los álcalis",
  "harmed-by-heat": "sensible al calor",
  "harmed-by-sulphur": "sensible al azufre",
  "harmed-by-damp": "sensible a la humedad",
  "oil-rich-wrinkles-when-thick": "se arruga en capa gruesa",
  expected: "esperada",
  "own exposure": "exposición propia",
  stated: "declarada",
  "Regulation (EC) No 1272/2008 as consolidated on 1 July 2026":
    "Reglamento (CE) n.º 1272/2008, consolidado a 1 de julio de 2026",
  "UN GHS Rev. 11 (2025)": "SGA de la ONU, 11.ª revisión (2025)",
};
