import { CRITERIA, limitsText } from "./lot-phrases.ts";
import { TINT_WORDS } from "./tint-words.ts";
import type { Words } from "../words.ts";
import { CONTRIBUTION_WORDS } from "./contribution-names.ts";
import { tableWords } from "../table-words.ts";
import { lowerFirst } from "../letter-case.ts";
import { pageWords } from "../pages/all-pages.ts";
import { COLON, SEMICOLON, NUMBERS, dateWords, listed, within } from "./phrases.ts";
import { rulingsIn } from "../rulings/all-rulings.ts";
import { COMPARISON_RULINGS } from "../rulings/comparison.ts";
import { wordingsIn } from "../rulings/rulings-in-each.ts";
import { tintSentences } from "../tint-sentence.ts";
import { TERMS, TRADE } from "./terms.ts";

const PAGES = pageWords("en");

/** Names that keep their capital inside a sentence. */
const PROPER = /^(Prussian|Venetian|Indian|Naples|Mars|Cologne|Pozzuoli|Verona|Paris)\b/;

export const ENGLISH: Words = {
  language: "en",
  about: "about",
  reach: (classes) => listed(classes, "or"),
  bounds: { "at least": "at least", "at most": "at most" },
  colon: COLON,
  semicolon: SEMICOLON,
  numbers: NUMBERS,
  series: PAGES.optics.fit.series,
  ...tableWords("en"),
  factWords: {},
  trade: TRADE,
  terms: TERMS,
  listed,
  lowerFirst: (text) => (PROPER.test(text) ? text : lowerFirst(text)),
  nameWithin: within,
  pages: PAGES,
  signalWords: { Danger: "Danger", Warning: "Warning" },
  date: dateWords,
  tints: TINT_WORDS,
  contributions: CONTRIBUTION_WORDS,
  criteria: CRITERIA,
  limits: limitsText,
  comparisons: wordingsIn("en", COMPARISON_RULINGS),
  rulings: rulingsIn("en", tintSentences(TINT_WORDS)),
};
