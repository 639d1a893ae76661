/** What a language's words say: every text of theirs, and what is wrong with one as print. */
import { forbiddenWords } from "../support/known.ts";
import type { StatementLanguage } from "../../lib/hazard/texts/statement-texts.ts";
import { frenchFaults } from "./french-glossary.ts";
import { PAGE_KINDS } from "../../lib/site/all-pages.ts";
import type { OwnWords } from "../../lib/words/words.ts";
import { germanFaults } from "./german-glossary.ts";
import { spanishFaults } from "./spanish-glossary.ts";

/** Words that English cannot do without and neither French nor Spanish has. */
const ENGLISH_WORDS =
  /(?<![\p{L}\p{N}-])(?:the|with|and|is|not|of|from|by|are|for|its|which|that|than|have|this|we|our|only|day|days|oil|sheet|white|paint)(?![\p{L}\p{N}-])/iu;
/** What a wording prints when it was not given what it needs, or misreads it. */
const UNPRINTED = /undefined|NaN|\[object|Infinity/;
/** French sets a narrow space that does not break before these; the colon after a key, as of `planned: true`, is none of its own. */
const FRENCH_STOP_ALONE = /[^\u202f](?:[;?!](?= |$)|:(?! true\b)(?= |$))/u;

/** What is wrong with a text by its language's own glossary and rules of print. */
const OWN_FAULTS: Readonly<Record<StatementLanguage, (text: string) => string[]>> = {
  en: () => [],
  de: germanFaults,
  fr: frenchFaults,
  es: spanishFaults,
};

export function faultsOf(text: string, language: StatementLanguage): string[] {
  return [
    ...(UNPRINTED.test(text) ? [`not printed text: ${text}`] : []),
    ...(ENGLISH_WORDS.test(text) ? [`English: ${text}`] : []),
    ...(/[ \u00a0\u202f]{2}|\(\)/.test(text.trim()) ? [`an empty place: ${text}`] : []),
    ...(language === "fr" && FRENCH_STOP_ALONE.test(text)
      ? [`a stop without the narrow space before it, \\u202f: ${text}`]
      : []),
    ...OWN_FAULTS[language](text),
    ...forbiddenWords(text, language).map(({ word }) => `the word "${word}": ${text}`),
  ];
}

/** Arguments that one parameter of a page's function may take. */
const SAMPLES: readonly unknown[] = ["Alba", 3, ["Alba", "Blanca"]];
const MOST_ASKED = 6;

/** Every text under a value, by its path; a function's is what it says to the first arguments that it takes. */
export function textsOf(value: unknown, path: string): Map<string, string> {
  if (typeof value === "string") return new Map([[path, value]]);
  if (typeof value === "function")
    return new Map([[path, saidBy(value as (...args: unknown[]) => unknown)]]);
  if (typeof value !== "object" || value === null || value instanceof RegExp) return new Map();
  return new Map(
    Object.entries(value).flatMap(([key, part]) => [...textsOf(part, `${path}.${key}`)]),
  );
}

/** As many arguments as it needs, which its length does not tell: a row hands on whatever it is asked for. */
function saidBy(wording: (...args: unknown[]) => unknown): string {
  let tuples: unknown[][] = [[]];
  for (let count = 0; count <= MOST_ASKED; count++) {
    for (const args of tuples) {
      try {
        const text = String(wording(...args));
        if (!UNPRINTED.test(text)) return text;
      } catch {
        // These arguments are not of its kind.
      }
    }
    tuples = tuples.flatMap((args) => SAMPLES.map((sample) => [...args, sample]));
  }
  return "";
}

/** What pages say: what several may, and what one alone is declared with. */
export function pagesIn({ pages, language }: Pick<OwnWords, "pages" | "language">): object {
  return { ...pages, said: PAGE_KINDS.flatMap(({ said }) => said?.(language) ?? []) };
}
