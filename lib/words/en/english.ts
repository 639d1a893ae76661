import { CRITERIA, limitsText } from "./lot-phrases.ts";
import type { Standing } from "../../quantities/figure.ts";
import { TINT_WORDS } from "./tint-words.ts";
import type { Words } from "../words.ts";
import { CONTRIBUTION_WORDS } from "./contribution-names.ts";
import { tableWords } from "../table-words.ts";
import { lowerFirst } from "../letter-case.ts";
import { pageWords } from "../pages/all-pages.ts";
import { COMPARE_PAGES } from "./compare-pages.ts";
import { MIXING_PAGES } from "./mixing-pages.ts";
import { COMPARISON_RULINGS } from "./statements-comparison.ts";
import { COLON, SEMICOLON, NUMBERS, dateWords, listed, within } from "./phrases.ts";
import { rulingsIn } from "../rulings/all-rulings.ts";
import { tintSentences } from "../tint-sentence.ts";
import { FAMILIES, OPERATIONS, TERMS, TRADE } from "./terms.ts";

const PAGES = pageWords("en", { compare: COMPARE_PAGES, mixing: MIXING_PAGES });

/** Names that keep their capital inside a sentence. */
const PROPER = /^(Prussian|Venetian|Indian|Naples|Mars|Cologne|Pozzuoli|Verona|Paris)\b/;

/** What the weakest of the figures behind a figure is. */
const ROOTS: Readonly<Record<Exclude<Standing, "measured">, string>> = {
  stated: "partly from a supplier\u2019s figure",
  estimated: "partly from an estimate",
  derived: "from figures worked out",
};

export const ENGLISH: Words = {
  language: "en",
  about: "about",
  reach: (classes) => `${classes[0] ?? ""} to ${classes.at(-1) ?? ""}`,
  bounds: { "at least": "at least", "at most": "at most" },
  colon: COLON,
  semicolon: SEMICOLON,
  numbers: NUMBERS,
  series: PAGES.optics.fit.series,
  ...tableWords("en"),
  standings: {
    measured: { word: "measured", gloss: "our own reading" },
    derived: { word: "worked out", gloss: "from other figures of the sheet" },
    estimated: {
      word: "estimated",
      gloss: "from a handbook or a rule of thumb: a range or a class",
    },
    stated: { word: "stated", gloss: "somebody\u2019s word, as a supplier\u2019s" },
    "not stated": {
      word: "not stated",
      gloss: "we do not know yet; the sheet says what it would take",
    },
  },
  restsOn: (root) => ROOTS[root],
  factWords: {},
  trade: TRADE,
  terms: TERMS,
  families: FAMILIES,
  listed,
  lowerFirst: (text) => (PROPER.test(text) ? text : lowerFirst(text)),
  nameWithin: within,
  pages: PAGES,
  operations: OPERATIONS,
  signalWords: { Danger: "Danger", Warning: "Warning" },
  pictograms: {
    GHS01: "Exploding bomb",
    GHS02: "Flame",
    GHS03: "Flame over circle",
    GHS04: "Gas cylinder",
    GHS05: "Corrosion",
    GHS06: "Skull and crossbones",
    GHS07: "Exclamation mark",
    GHS08: "Health hazard",
    GHS09: "Environment",
  },
  date: dateWords,
  tints: TINT_WORDS,
  contributions: CONTRIBUTION_WORDS,
  criteria: CRITERIA,
  limits: limitsText,
  comparisons: COMPARISON_RULINGS,
  rulings: rulingsIn("en", { ...COMPARISON_RULINGS, ...tintSentences(TINT_WORDS) }),
};
