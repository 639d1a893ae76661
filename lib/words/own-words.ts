import { at } from "../quantities/at.ts";
import type { Language } from "../quantities/languages.ts";
import { BETWEEN_OPACITIES, fromTo } from "./closed-sets.ts";
import { contributionWords } from "./contribution-name.ts";
import { criteriaIn, limitsText } from "./lot-criteria.ts";
import { pageWords } from "./pages/all-pages.ts";
import { phrasesIn } from "./phrases-in-each.ts";
import { rulingsIn } from "./rulings/all-rulings.ts";
import { COMPARISON_RULINGS } from "./rulings/comparison.ts";
import { wordingsIn } from "./rulings/rulings-in-each.ts";
import { tintWords } from "./rulings/tints.ts";
import { tableWords } from "./table-words.ts";
import { tintSentences } from "./tint-sentence.ts";
import { TRADE } from "./trade-terms.ts";
import type { OwnWords } from "./words.ts";

/** What this room says in one language; all but the English is translation, to be reviewed by a reader of the trade. */
export function ownWords(language: Language): OwnWords {
  const { ABOUT, COLON, SEMICOLON, NUMBERS, dateWords, listed, lowerFirst, within } =
    phrasesIn(language);
  const pages = pageWords(language);
  const tints = tintWords(language);
  return {
    language,
    about: ABOUT,
    reach: (classes) =>
      classes.length > 2
        ? fromTo(at(classes, 0), at(classes, classes.length - 1))[language]
        : listed(classes, "or"),
    between: (classes) =>
      BETWEEN_OPACITIES.find((one) => one.classes.join() === classes.join())?.text[language],
    colon: COLON,
    semicolon: SEMICOLON,
    numbers: NUMBERS,
    series: pages.optics.fit.series,
    ...tableWords(language),
    trade: TRADE[language],
    listed,
    lowerFirst,
    nameWithin: within,
    pages,
    date: dateWords,
    tints,
    contributions: contributionWords(language),
    criteria: criteriaIn(language),
    limits: (of, limits) => limitsText(of, limits)[language],
    comparisons: wordingsIn(language, COMPARISON_RULINGS),
    rulings: rulingsIn(language, tintSentences(tints)),
  };
}
