import { describe, expect, test } from "vitest";
import { forbiddenWords } from "../support/known.ts";
import type { WordingsOf } from "../../lib/quantities/statement.ts";

/** What is wrong with a sentence as print; empty when it may be printed. */
export function sentenceFaults(text: string): string[] {
  const faults: readonly (readonly [RegExp, string])[] = [
    [/undefined|\bnull\b|NaN|Infinity|\[object/, "a value that was never put into words"],
    [/[ \u00a0]{2}/, "two spaces"],
    [/\s[.,;:]/, "a space before a stop"],
    [/^[^\p{Lu}\p{N}]/u, "no capital at its beginning"],
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

/**
 * Holds the wordings of a science against statements that its own functions returned: each wording
 * is reached, and each sentence may be printed. That each kind has a wording, which gets the fields
 * of that kind, the compiler holds.
 */
export function holdSentences<S extends AnyStatement>(
  name: string,
  wordings: WordingsOf<S>,
  statements: readonly S[],
): void {
  describe(name, () => {
    const rules = Object.keys(wordings) as S["rule"][];
    test("every wording is reached by a statement that a science returned", () => {
      expect([...new Set(statements.map(({ rule }) => rule))].sort()).toEqual(rules.toSorted());
    });
    test.each(rules)("%s makes sentences that may be printed", (rule) => {
      const wording = wordings[rule];
      for (const statement of statements.filter((each) => each.rule === rule)) {
        const text = wording(statement.values);
        expect(sentenceFaults(text), text).toEqual([]);
      }
    });
  });
}

interface AnyStatement {
  readonly rule: string;
  readonly values: object;
}
