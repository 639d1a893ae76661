/** Translation, to be reviewed by a reader of trade French. */
import { FACT_WORDS } from "./fact-words.ts";
import { CRITERIA, limitsText } from "./lot-phrases.ts";
import { lowerFirst } from "../letter-case.ts";
import { TINT_WORDS } from "./tint-words.ts";
import type { Words } from "../words.ts";
import { BOUNDS } from "./bounds.ts";
import { CONTRIBUTION_WORDS } from "./contribution-names.ts";
import { tableWords } from "../table-words.ts";
import { SIGNAL_WORDS } from "./label-words.ts";
import { pageWords } from "../pages/all-pages.ts";
import { COLON, SEMICOLON, NUMBERS, ABOUT, dateWords, listed, within } from "./phrases.ts";
import { rulingsIn } from "../rulings/all-rulings.ts";
import { COMPARISON_RULINGS } from "../rulings/comparison.ts";
import { wordingsIn } from "../rulings/rulings-in-each.ts";
import { tintSentences } from "../tint-sentence.ts";
import { TERMS, TRADE } from "./terms.ts";

const PAGES = pageWords("fr");

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
  factWords: FACT_WORDS,
  trade: TRADE,
  terms: TERMS,
  listed,
  lowerFirst,
  nameWithin: within,
  pages: PAGES,
  signalWords: SIGNAL_WORDS,
  date: dateWords,
  tints: TINT_WORDS,
  contributions: CONTRIBUTION_WORDS,
  criteria: CRITERIA,
  limits: limitsText,
  comparisons: wordingsIn("fr", COMPARISON_RULINGS),
  rulings: rulingsIn("fr", tintSentences(TINT_WORDS)),
};
