import { CRITERIA, limitsText } from "./lot-phrases.ts";
import type { Words } from "../words.ts";
import { contributionWords } from "../contribution-name.ts";
import { tableWords } from "../table-words.ts";
import { lowerFirst } from "../letter-case.ts";
import { pageWords } from "../pages/all-pages.ts";
import { COLON, SEMICOLON, NUMBERS, dateWords, listed, within } from "./phrases.ts";
import { rulingsIn } from "../rulings/all-rulings.ts";
import { tintWords } from "../rulings/tints.ts";
import { COMPARISON_RULINGS } from "../rulings/comparison.ts";
import { wordingsIn } from "../rulings/rulings-in-each.ts";
import { tintSentences } from "../tint-sentence.ts";
import { TRADE } from "./trade-terms.ts";

const PAGES = pageWords("en");

/** Names that keep their capital inside a sentence. */
const PROPER = /^(Prussian|Venetian|Indian|Naples|Mars|Cologne|Pozzuoli|Verona|Paris)\b/;

const TINTS = tintWords("en");

export const ENGLISH: Words = {
  language: "en",
  about: "about",
  reach: (classes) => listed(classes, "or"),
  colon: COLON,
  semicolon: SEMICOLON,
  numbers: NUMBERS,
  series: PAGES.optics.fit.series,
  ...tableWords("en"),
  substance: (named) => named,
  trade: TRADE,
  listed,
  lowerFirst: (text) => (PROPER.test(text) ? text : lowerFirst(text)),
  nameWithin: within,
  pages: PAGES,
  date: dateWords,
  tints: TINTS,
  contributions: contributionWords("en"),
  criteria: CRITERIA,
  limits: limitsText,
  comparisons: wordingsIn("en", COMPARISON_RULINGS),
  rulings: rulingsIn("en", tintSentences(TINTS)),
};
