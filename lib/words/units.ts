import type { Language } from "../quantities/languages.ts";
import { UNITS_OF_FIGURES } from "./figures/all-figures.ts";
import { textsIn, type InEach } from "./in-each.ts";
import type { Words } from "./words.ts";

/** What a unit's symbol reads as where every language prints it alike. */
const UNITS: Readonly<Record<string, string>> = {
  "1": "",
  "": "",
  "g/cm3": "g/cm\u00b3",
  "g/100 g": "g/100\u00a0g",
  "g/100 cm3": "g/100\u00a0cm\u00b3",
  "g/ml": "g/ml",
  um: "\u00b5m",
  "cm2/ml": "cm\u00b2/ml",
  degC: "\u00b0C",
};

/** Of several figures; of one alone it stands in its row of `figures/`. */
const UNIT_WORDS: Readonly<Record<string, InEach>> = {
  ...UNITS_OF_FIGURES,
  d: { en: "days", de: "Tage", fr: "jours", es: "días" },
};

/** Units that read otherwise after a single one. */
const UNITS_OF_ONE: Readonly<Record<string, InEach>> = {
  d: { en: "day", de: "Tag", fr: "jour", es: "día" },
};

/** How units read in one language. */
export function unitWords(language: Language): Pick<Words, "units" | "unitsOfOne"> {
  return {
    units: { ...UNITS, ...textsIn(language, UNIT_WORDS) },
    unitsOfOne: textsIn(language, UNITS_OF_ONE),
  };
}
