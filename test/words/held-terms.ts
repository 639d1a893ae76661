import { describe, expect, test } from "vitest";
import type { OtherLanguage } from "../../lib/quantities/languages.ts";
import type { Term } from "./glossary.ts";
import { textsBesidePages } from "./held-language.ts";

interface HeldTerms {
  readonly language: OtherLanguage;
  readonly glossary: readonly Term[];
  /** What is wrong with a text: another word for a term, or how it is set. */
  readonly faults: (text: string) => readonly string[];
  /** A text with a word that is in use too, and the term that stands for it. */
  readonly otherWords: readonly (readonly [text: string, said: string])[];
  /** A text that is not set as print, and why. */
  readonly notPrint: readonly (readonly [text: string, fault: string])[];
  readonly asPrint: string;
}

/** A language keeps one word for one thing and is set as print: each fault is told, and its texts beside the pages have none. */
export function holdTerms(held: HeldTerms): void {
  const { language, glossary, faults, otherWords, notPrint, asPrint } = held;
  describe("terms of the trade", () => {
    test.each(glossary)("$english is $said, and no other word", ({ said, instead }) => {
      expect(said).not.toMatch(instead);
      expect(faults(said)).toEqual([]);
    });

    test.each(otherWords)("%s is told from it", (text, said) => {
      expect(faults(text)).toEqual([`another word for ${said}: ${text}`]);
    });

    test.each(notPrint)("%s is not set as print", (text, fault) => {
      expect(faults(text)).toContain(`${fault}: ${text}`);
    });

    test("how figures are found, why they are missing and what pigments are called keep to it", () => {
      const texts = textsBesidePages(language);
      expect(texts.length).toBeGreaterThan(400);
      expect(texts.flatMap(faults)).toEqual([]);
    });

    test("what is set as print is", () => {
      expect(faults(asPrint)).toEqual([]);
    });
  });
}
