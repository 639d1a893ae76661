import type { Language } from "../quantities/languages.ts";
import {
  CHANGES,
  DISPERSIONS,
  DRYING_CLASSES,
  EXPECTED,
  FINISHES,
  FRAMES,
  HUES,
  METALS,
  OIL_CLASSES,
  OILS,
  OPACITIES,
  SIGNAL_WORDS,
} from "./closed-sets.ts";
import { textsIn, type InEach, type InOthers } from "./in-each.ts";
import type { Words } from "./words.ts";

/** Words that a sheet holds as they stand: oils, ways of grinding, metals, grounds of the lightfastness, rules by their names, frames of a label and their editions. */
const FACTS: Readonly<Record<string, InOthers>> = {
  ...OILS,
  ...DISPERSIONS,
  ...METALS,
  ...SIGNAL_WORDS,
  ...FRAMES,
  "harmed-by-light": {
    de: "verblasst im Licht",
    fr: "passe à la lumière",
    es: "se desvanece con la luz",
  },
  "harmed-by-acid": {
    de: "leidet unter Säure",
    fr: "craint les acides",
    es: "sensible a los ácidos",
  },
  "harmed-by-alkali": {
    de: "leidet unter Lauge",
    fr: "craint les alcalis",
    es: "sensible a los álcalis",
  },
  "harmed-by-heat": { de: "leidet unter Hitze", fr: "craint la chaleur", es: "sensible al calor" },
  "harmed-by-sulphur": {
    de: "leidet unter Schwefel",
    fr: "craint le soufre",
    es: "sensible al azufre",
  },
  "harmed-by-damp": {
    de: "leidet unter Feuchte",
    fr: "craint l’humidité",
    es: "sensible a la humedad",
  },
  "oil-rich-wrinkles-when-thick": {
    de: "dick aufgetragen runzelig",
    fr: "se ride en couche épaisse",
    es: "se arruga en capa gruesa",
  },
  expected: { de: "zu erwarten", fr: "attendue", es: "esperada" },
  "own exposure": {
    de: "eigene Belichtung",
    fr: "exposition de l’atelier",
    es: "exposición propia",
  },
  stated: { de: "angegeben", fr: "indiquée", es: "declarada" },
  "Regulation (EC) No 1272/2008 as consolidated on 1 July 2026": {
    de: "Verordnung (EG) Nr. 1272/2008, konsolidiert zum 1. Juli 2026",
    fr: "règlement (CE) n° 1272/2008, consolidé au 1er juillet 2026",
    es: "Reglamento (CE) n.º 1272/2008, consolidado a 1 de julio de 2026",
  },
  "UN GHS Rev. 11 (2025)": {
    de: "UN-GHS, 11. Revision (2025)",
    fr: "SGH de l’ONU, 11e révision (2025)",
    es: "SGA de la ONU, 11.ª revisión (2025)",
  },
};

/** Words of closed sets as a page prints them. */
const TERMS: Readonly<Record<string, InOthers>> = {
  ...HUES,
  ...OPACITIES,
  ...FINISHES,
  ...DRYING_CLASSES,
  ...OIL_CLASSES,
  ...DISPERSIONS,
  ...CHANGES,
  short: { de: "kurz", fr: "courte", es: "corta" },
  long: { de: "lang", fr: "longue", es: "larga" },
  stiff: { de: "steif", fr: "ferme", es: "firme" },
  ropy: { de: "fadenziehend", fr: "filant", es: "filante" },
  none: { de: "keine", fr: "aucune", es: "ninguna" },
  slight: { de: "gering", fr: "légère", es: "ligera" },
  marked: { de: "deutlich", fr: "marquée", es: "marcada" },
};

/** An expectation never reads like a category. */
const EXPECTATIONS: Readonly<Record<string, InEach>> = Object.fromEntries(
  Object.entries(EXPECTED).map(([word, { de, fr, es }]) => [
    word,
    {
      en: `expected ${word}`,
      de: `voraussichtlich ${de}`,
      fr: `à prévoir\u202f: ${fr}`,
      es: `previsible: ${es}`,
    },
  ]),
);

export function expectationsIn(language: Language): Readonly<Record<string, string>> {
  return textsIn(language, EXPECTATIONS);
}

/** Both in a language; a word that is not there is its own. */
export function factWordsIn(language: Language): Pick<Words, "factWords" | "terms"> {
  const expectations = expectationsIn(language);
  return language === "en"
    ? { factWords: {}, terms: expectations }
    : {
        factWords: textsIn(language, FACTS),
        terms: { ...textsIn(language, TERMS), ...expectations },
      };
}
