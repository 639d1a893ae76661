/** Translation, to be reviewed by a reader of trade French. */
import { CRITERIA, limitsText } from "./lot-phrases.ts";
import { lowerFirst } from "../letter-case.ts";
import type { OwnWords } from "../words.ts";
import { contributionWords } from "../contribution-name.ts";
import { tableWords } from "../table-words.ts";
import { pageWords } from "../pages/all-pages.ts";
import { COLON, SEMICOLON, NUMBERS, ABOUT, dateWords, listed, within } from "./phrases.ts";
import { rulingsIn } from "../rulings/all-rulings.ts";
import { tintWords } from "../rulings/tints.ts";
import { COMPARISON_RULINGS } from "../rulings/comparison.ts";
import { wordingsIn } from "../rulings/rulings-in-each.ts";
import { tintSentences } from "../tint-sentence.ts";
import { TRADE } from "./trade-terms.ts";

const PAGES = pageWords("fr");

const TINTS = tintWords("fr");

export const FRENCH: OwnWords = {
  language: "fr",
  about: ABOUT,
  reach: (classes) => listed(classes, "or"),
  colon: COLON,
  semicolon: SEMICOLON,
  numbers: NUMBERS,
  series: PAGES.optics.fit.series,
  ...tableWords("fr"),
  trade: TRADE,
  listed,
  lowerFirst,
  nameWithin: within,
  pages: PAGES,
  date: dateWords,
  tints: TINTS,
  contributions: contributionWords("fr"),
  criteria: CRITERIA,
  limits: limitsText,
  comparisons: wordingsIn("fr", COMPARISON_RULINGS),
  rulings: rulingsIn("fr", tintSentences(TINTS)),
};
