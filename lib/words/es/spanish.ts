/** Translation, to be reviewed by a reader of trade Spanish. */
import { FACT_WORDS } from "./fact-words.ts";
import { CRITERIA, limitsText } from "./lot-phrases.ts";
import { lowerFirst } from "../letter-case.ts";
import type { Standing } from "../../quantities/figure.ts";
import { TINT_WORDS } from "./tint-words.ts";
import type { Words } from "../words.ts";
import { BOUNDS } from "./bounds.ts";
import { CONTRIBUTION_WORDS } from "./contribution-names.ts";
import { tableWords } from "../table-words.ts";
import { PICTOGRAMS, SIGNAL_WORDS } from "./label-words.ts";
import { pageWords } from "../pages/all-pages.ts";
import { COMPARE_PAGES } from "./compare-pages.ts";
import { MIXING_PAGES } from "./mixing-pages.ts";
import { COLON, SEMICOLON, NUMBERS, ABOUT, dateWords, listed, within } from "./phrases.ts";
import { COMPARISON_RULINGS } from "./statements-comparison.ts";
import { rulingsIn } from "../rulings/all-rulings.ts";
import { tintSentences } from "../tint-sentence.ts";
import { FAMILIES, OPERATIONS, TERMS, TRADE } from "./terms.ts";

const PAGES = pageWords("es", { compare: COMPARE_PAGES, mixing: MIXING_PAGES });

/** What the weakest of the figures behind a figure is. */
const ROOTS: Readonly<Record<Exclude<Standing, "measured">, string>> = {
  stated: "en parte de una cifra del proveedor",
  estimated: "en parte de una estimación",
  derived: "de cifras calculadas",
};

export const SPANISH: Words = {
  language: "es",
  about: ABOUT,
  reach: (classes) => listed(classes, "or"),
  bounds: BOUNDS,
  colon: COLON,
  semicolon: SEMICOLON,
  numbers: NUMBERS,
  series: PAGES.optics.fit.series,
  ...tableWords("es"),
  standings: {
    measured: { word: "medido", gloss: "nuestra propia medición" },
    derived: { word: "calculado", gloss: "a partir de otras cifras de la ficha" },
    estimated: {
      word: "estimado",
      gloss: "de un manual o una regla práctica: un intervalo o una clase",
    },
    stated: { word: "declarado", gloss: "según alguien, como un proveedor" },
    "not stated": {
      word: "no indicado",
      gloss: "aún no lo sabemos; la ficha dice qué haría falta",
    },
  },
  restsOn: (root) => ROOTS[root],
  factWords: FACT_WORDS,
  trade: TRADE,
  terms: TERMS,
  families: FAMILIES,
  listed,
  lowerFirst,
  nameWithin: within,
  pages: PAGES,
  operations: OPERATIONS,
  signalWords: SIGNAL_WORDS,
  pictograms: PICTOGRAMS,
  date: dateWords,
  tints: TINT_WORDS,
  contributions: CONTRIBUTION_WORDS,
  criteria: CRITERIA,
  limits: limitsText,
  comparisons: COMPARISON_RULINGS,
  rulings: rulingsIn("es", { ...COMPARISON_RULINGS, ...tintSentences(TINT_WORDS) }),
};
