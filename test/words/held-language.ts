import { describe, expect, test } from "vitest";
import { METALS, type Metal } from "../../lib/hazard/studio/metal-content.ts";
import { metalKey } from "../../lib/hazard/texts/contents-line.ts";
import { signalWordKey } from "../../lib/hazard/texts/statement-texts.ts";
import { hazardKnowledge } from "../../lib/knowledge/hazard-tables.ts";
import { loadedTables, wordsOfTables } from "../../lib/knowledge/tables.ts";
import type { TintStatement } from "../../lib/optics/tints/tint-statement.ts";
import type { NotStated } from "../../lib/quantities/figure.ts";
import { REASONS } from "../../lib/words/absence.ts";
import type { OtherLanguage } from "../../lib/quantities/languages.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { METHODS } from "../../lib/words/methods.ts";
import type { OwnWords } from "../../lib/words/words.ts";
import { KNOWN } from "../support/known.ts";
import { faultsOf, pagesIn, textsOf } from "./said.ts";

interface HeldLanguage {
  readonly words: OwnWords;
  /** A metal as the label's table has it. */
  readonly metal: (metal: Metal) => string;
}

/** Where a page's words hold a key, which no reader sees. */
const KEYS = /\.sections\.\d+\.0$|\.id$/;

/** Text of a label's table in a language; undefined where it has none. */
export function official(code: string, language: OwnWords["language"]): string | undefined {
  const { tables } = loadedTables();
  return tables === undefined
    ? undefined
    : hazardKnowledge(tables).texts.get(code)?.texts[language];
}

/** How figures are found, why they are missing and what pigments are called, in a language. */
export function textsBesidePages(language: OtherLanguage): string[] {
  return [
    ...Object.values(METHODS),
    ...Object.values(REASONS),
    ...wordsOfTables(KNOWN.tables).values(),
  ]
    .map((told) => told[language])
    .filter((text) => typeof text === "string");
}

/** That a language says all that the English says, in print and in no English, and hazard words as the law does. */
export function holdLanguage({ words, metal }: HeldLanguage): void {
  const { language } = words;
  describe("words of pages", () => {
    const said = textsOf(pagesIn(words), "pages");
    const english = textsOf(pagesIn(ENGLISH), "pages");

    test("a text or a function stands at every place of the English", () => {
      expect([...english.keys()].filter((path) => !said.has(path))).toEqual([]);
      expect(said.size).toBeGreaterThan(900);
    });

    test("none is left in English or unprinted", () => {
      expect(
        [...said]
          .filter(([path]) => !KEYS.test(path))
          .flatMap(([path, text]) => faultsOf(text, language).map((fault) => `${path}: ${fault}`)),
      ).toEqual([]);
    });

    test("none of several words is the English one", () => {
      const same = [...said].filter(
        ([path, text]) =>
          /\p{Ll}{3,} \p{Ll}{3,}/u.test(text) &&
          english.get(path) === text &&
          !/toReview|whitens$/.test(path),
      );
      expect(same).toEqual([]);
    });

    test("figures, glosses, terms and standings are in its language too", () => {
      const { figures, glosses, terms, trade, families, operations, standings, bounds } = words;
      const texts = [
        figures,
        glosses,
        terms,
        trade,
        families,
        operations,
        standings,
        bounds,
      ].flatMap((each) => [...textsOf(each, "").values()]);
      expect(texts.flatMap((text) => faultsOf(text, language))).toEqual([]);
    });
  });

  describe("hazard words are those of the law", () => {
    // basis: published, Regulation (EC) No 1272/2008, Annex I, as the table of label wordings has them
    test.each(["Danger", "Warning"] as const)("signal word %s", (word) => {
      expect(words.signalWords[word]).toBe(official(signalWordKey(word), language));
      expect(words.pages.sheetPage.safe[word]).toBe(official(signalWordKey(word), language));
    });

    test.each(METALS)("a label and a sheet call %s alike", (each) => {
      expect(metal(each)).toBe(official(metalKey(each), language));
    });
  });
}

/** A grey of b* at L* 50 in a white. */
export function greyIn(white: string, b: number): { white: string; ruling: TintStatement } {
  return {
    white,
    ruling: {
      rule: b < -3.5 ? "turns-clearly" : "leans",
      values: { white, L: 50, a: 0, b, chroma: -b, hue: "blue", basis: "measured" },
    },
  };
}

/** Why a figure is missing, and what it would take. */
export function absent(words: OwnWords, reason: string, ...wanting: readonly string[]): string {
  return words.absence({ standing: "not stated", reason, wanting } as unknown as NotStated);
}
