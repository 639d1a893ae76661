import { CRITERIA, limitsText } from "./statements-lots.ts";
import type { Standing } from "../../quantities/figure.ts";
import { TINT_WORDS } from "./tint-words.ts";
import type { Words } from "../words.ts";
import { CONTRIBUTION_WORDS } from "./contribution-names.ts";
import { FIGURE_GLOSSES, FIGURES, UNITS, UNITS_OF_ONE } from "./figures.ts";
import { lowerFirst, PAGES } from "./pages.ts";
import { COMPARISON_RULINGS } from "./statements-comparison.ts";
import { dateWords, listed, within } from "./phrases.ts";
import { RULINGS } from "./statements.ts";
import { FAMILIES, OPERATIONS, TERMS, TRADE } from "./terms.ts";

/** What the weakest of the figures behind a figure is. */
const ROOTS: Readonly<Record<Exclude<Standing, "measured">, string>> = {
  stated: "partly from a supplier\u2019s figure",
  estimated: "partly from an estimate",
  derived: "from figures worked out",
};

export const ENGLISH: Words = {
  language: "en",
  about: "about",
  bounds: { "at least": "at least", "at most": "at most" },
  series: PAGES.optics.fit.series,
  figures: FIGURES,
  glosses: FIGURE_GLOSSES,
  units: UNITS,
  unitsOfOne: UNITS_OF_ONE,
  standings: {
    measured: { word: "measured", gloss: "our own reading" },
    derived: { word: "worked out", gloss: "from other figures of the sheet" },
    estimated: {
      word: "estimated",
      gloss: "from a handbook or a rule of thumb: a range or a class",
    },
    stated: { word: "stated", gloss: "a supplier\u2019s word" },
    "not stated": {
      word: "not stated",
      gloss: "we do not know yet; the sheet says what it would take",
    },
  },
  restsOn: (root) => ROOTS[root],
  absence: ({ reason, wanting }) =>
    wanting.length === 0
      ? `${sentenceCase(reason)}.`
      : `${sentenceCase(reason)}; needs ${wanting.map(fieldWords).join(", ")}.`,
  method: (method) => method,
  substance: (named) => named,
  factWords: {},
  trade: TRADE,
  terms: TERMS,
  families: FAMILIES,
  listed,
  lowerFirst,
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
  rulings: RULINGS,
};

function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The last part of a record path as words: `pigments.lamp-black.densityGPerCm3` is "density of lamp black". */
function fieldWords(path: string): string {
  const parts = path.split(".");
  const field = (parts.at(-1) ?? path)
    .replace(/(GPer100g|GPerCm3|GPerMl|Um|Days|G60)$/, "")
    .replace(/[A-Z0-9]+/g, (capital) => ` ${capital.toLowerCase()}`)
    .trim();
  const owner =
    parts.length > 2 && parts[0] === "pigments"
      ? ` of ${(parts[1] ?? "").replaceAll("-", " ")}`
      : "";
  return `${field}${owner}`;
}
