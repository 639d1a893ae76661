import { describe, expect, test } from "vitest";
import { upperFirst } from "../../lib/words/letter-case.ts";
import { within } from "../../lib/words/phrases.ts";
import { WORDS } from "../../lib/words/languages.ts";
import { faultsOf } from "../words/said.ts";
import { forbiddenWords } from "../support/known.ts";
import type { Language } from "../../lib/records/schema/terms.ts";

/** What is wrong with a sentence as print; empty when it may be printed. */
export function sentenceFaults(text: string): string[] {
  const faults: readonly (readonly [RegExp, string])[] = [
    [/undefined|\bnull\b|NaN|Infinity|\[object/, "a value that was never put into words"],
    [/[ \u00a0]{2}/, "two spaces"],
    [/\s[.,;:]/, "a space before a stop"],
    [/^[^\p{Lu}\p{N}\u201c]/u, "no capital at its beginning"],
    [/[^.]$|\.\.$/, "no one full stop at its end"],
    [/(?<=^|[\s(\u2013])-\d/, "a hyphen for a minus"],
    [/\d\.\d{4}/, "more decimals than any science here claims"],
    [/\d-\d+(?!-)(?=\u00a0)/, "a hyphen in a range"],
    [/\byears?\b/, "years"],
    [/[a-z]+[A-Z][a-z]|_/, "a key in place of a word"],
    [/\(\)|\( |: \./, "an empty place"],
  ];
  return [
    ...faults.filter(([pattern]) => pattern.test(text)).map(([, fault]) => fault),
    ...forbiddenWords(text, "en").map(({ word }) => `the word "${word}"`),
  ];
}

/** How a sentence of each other language begins and ends, and what is never in one. */
const OTHERS = {
  de: { whole: /^[\p{Lu}\d\u201e].*\.$/su, never: /$^/ },
  fr: { whole: /^[\p{Lu}\d\u00ab].*\.$/su, never: /[^\u202f\d] ?[;?!](?= |$)| :/ },
  es: { whole: /^[\p{Lu}\d\u00ab\u00bf].*\.$/su, never: /$^/ },
} as const;
type Other = keyof typeof OTHERS;
type Wordings = Readonly<Record<string, (values: never) => string>>;

function rulingsOf(language: Language): Wordings {
  return WORDS[language].rulings;
}

/** What is wrong with a sentence of another language, but for the names that records gave. */
function faultsIn(language: Other, text: string, values: object): string[] {
  const { whole, never } = OTHERS[language];
  const names = Object.values(values)
    .flat()
    .filter((value) => typeof value === "string")
    .map((value) => value.replace(/ 1:\d+$/, ""))
    .filter((value) => /^\p{Lu}/u.test(value) || value.includes("white"));
  const ours = names
    .flatMap((name) => [within(name), upperFirst(within(name))])
    .reduce((left, name) => left.replaceAll(name, "Alba"), text);
  return [
    ...faultsOf(ours, language),
    ...(whole.test(text) ? [] : ["no sentence"]),
    ...(never.test(ours) ? ["a stop without its space"] : []),
  ];
}

/**
 * Holds the wordings of a science, in every language, against statements that its own functions returned:
 * each rule is reached, and each sentence may be printed. That each kind has a wording in each language,
 * which gets the fields of that kind, the compiler holds.
 */
export function holdSentences<S extends AnyStatement>(
  title: string,
  rulings: Readonly<Record<S["rule"], unknown>>,
  statements: readonly S[],
  wordingsOf: (language: Language) => Wordings = rulingsOf,
): void {
  describe(title, () => {
    const rules = Object.keys(rulings);
    test("every wording is reached by a statement that a science returned", () => {
      expect([...new Set(statements.map(({ rule }) => rule))].sort()).toEqual(rules.toSorted());
    });
    test.each(rules)("%s makes sentences that may be printed", (rule) => {
      for (const { values } of statements.filter((each) => each.rule === rule)) {
        const said = (language: Language): string =>
          wordingsOf(language)[rule]?.(values as never) ?? "";
        expect(sentenceFaults(said("en")), said("en")).toEqual([]);
        for (const language of Object.keys(OTHERS) as Other[])
          expect(faultsIn(language, said(language), values), said(language)).toEqual([]);
      }
    });
  });
}

interface AnyStatement {
  readonly rule: string;
  readonly values: object;
}
