import { describe, expect, test } from "vitest";
import { forbiddenWords } from "../../lib/hazard/label/forbidden-words.ts";
import type { StatementWording } from "../../lib/words/words.ts";
import type { Statement, WordingsOf } from "../../lib/quantities/statement.ts";

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
 * Holds the wordings of a science against rulings that its own functions returned:
 * each wording is reached, each sentence may be printed, and a value that goes
 * missing is complained of, or was not needed.
 * @param fields of typed statements the compiler holds that none is missing.
 */
export function holdSentences(
  name: string,
  wordings: Readonly<Record<string, StatementWording>>,
  rulings: readonly Statement[],
  fields: "loose" | "typed" = "loose",
): void {
  describe(name, () => {
    test("every wording is reached by a ruling that a science returned, and every ruling has one", () => {
      expect([...new Set(rulings.map(({ rule }) => rule))].sort()).toEqual(
        Object.keys(wordings).sort(),
      );
    });

    const byRule = Object.keys(wordings).map(
      (rule) => [rule, distinct(rulings.filter((ruling) => ruling.rule === rule))] as const,
    );

    test.each(byRule)("%s makes sentences that may be printed", (rule, values) => {
      for (const each of values) {
        const text = wordings[rule]?.(each) ?? "";
        expect(sentenceFaults(text), text).toEqual([]);
      }
    });

    if (fields === "typed") return;
    test.each(byRule)(
      "%s complains of a value that is missing, or does without",
      (rule, values) => {
        for (const each of values) {
          for (const dropped of Object.keys(each)) {
            const text = textOrComplaint(
              () =>
                wordings[rule]?.(
                  Object.fromEntries(Object.entries(each).filter(([key]) => key !== dropped)),
                ) ?? "",
            );
            expect(
              text.startsWith(
                `The value of a ruling is undefined at ${dropped}; right would be `,
              ) || sentenceFaults(text).length === 0,
              `without ${dropped}: ${text}`,
            ).toBe(true);
          }
        }
      },
    );
  });
}

/**
 * The same for wordings of a closed union, of which the compiler holds that each kind has one
 * and gets the fields of that kind.
 */
export function holdTypedSentences<S extends AnyStatement>(
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

function distinct(rulings: readonly Statement[]): Statement["values"][] {
  return [...new Map(rulings.map(({ values }) => [JSON.stringify(values), values])).values()];
}

function textOrComplaint(wording: () => string): string {
  try {
    return wording();
  } catch (complaint) {
    if (!(complaint instanceof RangeError)) throw complaint;
    return complaint.message;
  }
}
