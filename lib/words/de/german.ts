/** Translation, to be reviewed by a reader of trade German. */
import { CRITERIA, limitsText } from "./lot-phrases.ts";
import type { OwnWords } from "../words.ts";
import { within } from "../phrases.ts";
import { lowerFirst } from "../letter-case.ts";
import { contributionWords } from "../contribution-name.ts";
import { tableWords } from "../table-words.ts";
import { pageWords } from "../pages/all-pages.ts";
import { rulingsIn } from "../rulings/all-rulings.ts";
import { tintWords } from "../rulings/tints.ts";
import { COMPARISON_RULINGS } from "../rulings/comparison.ts";
import { wordingsIn } from "../rulings/rulings-in-each.ts";
import { tintSentences } from "../tint-sentence.ts";
import { COLON, SEMICOLON, NUMBERS, ABOUT, dateWords, listed } from "./phrases.ts";
import { TRADE } from "./trade-terms.ts";

const PAGES = pageWords("de");

const TINTS = tintWords("de");

export const GERMAN: OwnWords = {
  language: "de",
  about: ABOUT,
  reach: (classes) => listed(classes, "or"),
  colon: COLON,
  semicolon: SEMICOLON,
  numbers: NUMBERS,
  series: PAGES.optics.fit.series,
  ...tableWords("de"),
  trade: TRADE,
  listed,
  // Nouns keep their capital, and most names of figures begin with one; a preposition loses it.
  lowerFirst: (text) => (/^(?:Nach|In|Mit|Von|Ohne) /.test(text) ? lowerFirst(text) : text),
  nameWithin: within,
  pages: PAGES,
  date: dateWords,
  tints: TINTS,
  contributions: contributionWords("de"),
  criteria: CRITERIA,
  limits: limitsText,
  comparisons: wordingsIn("de", COMPARISON_RULINGS),
  rulings: rulingsIn("de", tintSentences(TINTS)),
};
