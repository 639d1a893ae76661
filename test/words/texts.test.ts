import { describe, expect, test } from "vitest";
import { LANGUAGES } from "../../lib/quantities/languages.ts";
import { WORDS } from "../../lib/words/languages.ts";
import { alike, saidIn, type Texts } from "../../lib/words/texts.ts";

const TEXTS = {
  heading: { en: "Oil", de: "Öl", fr: "Huile", es: "Aceite" },
  columns: { symbol: alike("L*"), days: (from: number) => alike([from, from + 1]) },
  steps: [
    { en: "Weigh", de: "Wiegen", fr: "Peser", es: "Pesar" },
    { en: "Mull", de: "Anreiben", fr: "Broyer", es: "Moler" },
  ],
  missing: (name: string, oil?: string) => ({
    en: `${name} has no ${oil ?? "oil"}`,
    de: `${name} hat kein ${oil ?? "Öl"}`,
    fr: `${name} n'a pas d'${oil ?? "huile"}`,
    es: `${name} no tiene ${oil ?? "aceite"}`,
  }),
} satisfies Texts;

describe("texts in rows", () => {
  test("say in one language what stands in its column, however deep", () => {
    const { heading, columns, steps, missing } = saidIn("de", TEXTS);
    expect([heading, columns.symbol, steps]).toEqual(["Öl", "L*", ["Wiegen", "Anreiben"]]);
    expect(columns.days(3)).toEqual([3, 4]);
    expect([missing("Ocker"), missing("Ocker", "Mohnöl")]).toEqual([
      "Ocker hat kein Öl",
      "Ocker hat kein Mohnöl",
    ]);
  });

  test("are the pages' own in each language", () => {
    expect(LANGUAGES.map((language) => WORDS[language].pages.home.ask)).toEqual([
      "Ask",
      "Vos questions",
      "Fragen",
      "Sus preguntas",
    ]);
  });
});
