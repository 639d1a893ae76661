/** Translation, to be reviewed by a reader of trade French. */
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

const PAGES = pageWords("fr", { compare: COMPARE_PAGES, mixing: MIXING_PAGES });

/** What the weakest of the figures behind a figure is. */
const ROOTS: Readonly<Record<Exclude<Standing, "measured">, string>> = {
  stated: "en partie d’après un chiffre du fournisseur",
  estimated: "en partie d’après une estimation",
  derived: "d’après des chiffres calculés",
};

export const FRENCH: Words = {
  language: "fr",
  about: ABOUT,
  reach: (classes) => listed(classes, "or"),
  bounds: BOUNDS,
  colon: COLON,
  semicolon: SEMICOLON,
  numbers: NUMBERS,
  series: PAGES.optics.fit.series,
  ...tableWords("fr"),
  standings: {
    measured: { word: "mesuré", gloss: "notre propre mesure" },
    derived: { word: "calculé", gloss: "d’après d’autres chiffres de la fiche" },
    estimated: {
      word: "estimé",
      gloss: "d’après un manuel ou une règle empirique\u202f: un intervalle ou une classe",
    },
    stated: { word: "déclaré", gloss: "sur déclaration, comme d’un fournisseur" },
    "not stated": {
      word: "non indiqué",
      gloss: "nous ne le savons pas encore\u202f; la fiche dit ce qu’il y faudrait",
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
  rulings: rulingsIn("fr", { ...COMPARISON_RULINGS, ...tintSentences(TINT_WORDS) }),
};
