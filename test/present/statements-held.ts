import { describe, expect, test } from "vitest";
import { upperFirst } from "../../lib/words/letter-case.ts";
import { within } from "../../lib/words/phrases.ts";
import { WORDED } from "../support/worded.ts";
import { faultsOf } from "../words/said.ts";
import { forbiddenWords } from "../support/known.ts";
import type { WithCases } from "../../lib/quantities/statement.ts";
import type { Substance } from "../../lib/words/words.ts";
import type { Language } from "../../lib/quantities/languages.ts";

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

/** How a sentence of each other language begins and ends. */
const OTHERS = {
  de: /^[\p{Lu}\d\u201e].*\.$/su,
  fr: /^[\p{Lu}\d\u00ab].*\.$/su,
  es: /^[\p{Lu}\d\u00ab\u00bf].*\.$/su,
} as const;
type Other = keyof typeof OTHERS;
type Wordings = Readonly<Record<string, (values: never, substance: Substance) => string>>;

function rulingsOf(language: Language): Wordings {
  return WORDED[language].rulings;
}

/** What is wrong with a sentence of another language, but for the names that records gave. */
function faultsIn(language: Other, text: string, values: object): string[] {
  const names = Object.values(values)
    .flat()
    .filter((value) => typeof value === "string")
    .map((value) => value.replace(/ 1:\d+$/, ""))
    .filter((value) => /^\p{Lu}/u.test(value) || value.includes("white"));
  const ours = names
    .flatMap((name) => [within(name), upperFirst(within(name))])
    .reduce((left, name) => left.replaceAll(name, "Alba"), text);
  return [...faultsOf(ours, language), ...(OTHERS[language].test(text) ? [] : ["no sentence"])];
}

/** What a rule returns: nothing, a statement or a list of them. */
type Returned<S> = S | undefined | readonly S[];

/** When a rule is said: what its science returns where it holds, at its limits, and what just beyond them. */
export interface RuleCase<S extends AnyStatement> {
  readonly when: S["rule"];
  /** Each of these has the rule among what it says. */
  readonly said: readonly Returned<S>[];
  /** None of these. */
  readonly unsaid: readonly Returned<S>[];
}

/** The cases that rules of a list have beside them. @param facts a paint of which nothing is known but this. */
export function casesOf<Facts, S extends AnyStatement>(
  rules: readonly ((facts: Facts) => Returned<S>)[],
  facts: (known: Partial<Facts>) => Facts,
): RuleCase<S>[] {
  return rules.flatMap((rule) =>
    Object.entries("cases" in rule ? (rule as unknown as WithCases).cases : {}).map(
      ([when, { said, unsaid }]) => ({
        when,
        said: said.map((known) => rule(facts(known))),
        unsaid: unsaid.map((known) => rule(facts(known))),
      }),
    ),
  );
}

/** What a test of sentences lists: what a science returned, or when a rule is said. */
export type Stated<S extends AnyStatement> = S | undefined | RuleCase<S>;

function statementsIn<S extends AnyStatement>(returned: Returned<S>): readonly S[] {
  return returned === undefined ? [] : "rule" in returned ? [returned] : returned;
}

/**
 * Holds the wordings of a science, in every language, against statements that its own functions returned:
 * each rule is reached, and each sentence may be printed. A case holds beside that when its rule is said.
 * That each kind has a wording in each language, which gets the fields of that kind, the compiler holds.
 */
export function holdSentences<S extends AnyStatement>(
  title: string,
  rulings: Readonly<Record<S["rule"], unknown>>,
  returned: readonly Stated<S>[],
  wordingsOf: (language: Language) => Wordings = rulingsOf,
): void {
  const cases = returned.filter((one): one is RuleCase<S> => one !== undefined && "when" in one);
  const statements = returned
    .flatMap((one) => (one !== undefined && "when" in one ? one.said : [one]))
    .flatMap((one): readonly S[] => statementsIn<S>(one));
  describe(title, () => {
    const rules = Object.keys(rulings);
    test("every wording is reached by a statement that a science returned", () => {
      const reached = new Set<string>(statements.map(({ rule }) => rule));
      expect(rules.filter((rule) => !reached.has(rule))).toEqual([]);
      expect([...reached].filter((rule) => !rules.includes(rule))).toEqual([]);
    });
    test.each(cases)("$when is said there, and not beyond", ({ when, said, unsaid }) => {
      const rulesOf = (returned: Returned<S>): string[] =>
        statementsIn<S>(returned).map(({ rule }) => rule);
      const wanted = "a case has what is returned at a limit, and what beyond it";
      expect(Math.min(said.length, unsaid.length), wanted).toBeGreaterThan(0);
      for (const one of said) expect(rulesOf(one)).toContain(when);
      for (const one of unsaid) expect(rulesOf(one)).not.toContain(when);
    });
    test.each(rules)("%s makes sentences that may be printed", (rule) => {
      for (const { values } of statements.filter((each) => each.rule === rule)) {
        const said = (language: Language): string =>
          wordingsOf(language)[rule]?.(values as never, WORDED[language].substance) ?? "";
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
