import { expect, test } from "vitest";
import type { TintStatement } from "../../lib/optics/tints/tint-statement.ts";
import { WORDS } from "../../lib/words/languages.ts";
import { tintsInWords } from "../../lib/words/tints-in-words.ts";

const inWhite = (
  white: string,
  chromaChange: number,
): { white: string; ruling: TintStatement } => ({
  white,
  ruling: {
    rule: chromaChange < 0 ? "loses-chroma" : "keeps-chroma",
    values: {
      white,
      L: 50,
      a: 4,
      b: 12,
      chroma: 12.6,
      hue: "brown",
      basis: "measured",
      turn: "keeps-hue",
      masstoneChroma: 12.6 - chromaChange,
      chromaChange,
    },
  },
});

// A brown that keeps chroma and hue is not what a painter calls clean: that is a colour that is not muddy.
test.each([
  ["en", "Duller in Titanium White, true to its colour in Lead White."],
  ["de", "Stumpfer in Titanium White, farbtreu in Lead White."],
  ["fr", "Plus terne dans Titanium White, fidèle à sa couleur dans Lead White."],
  ["es", "Más apagado en Titanium White, fiel a su color en Lead White."],
] as const)("a colour that a white leaves as it is, in %s", (language, expected) => {
  expect(
    tintsInWords([inWhite("Titanium White", -9), inWhite("Lead White", 0)], WORDS[language].tints),
  ).toBe(expected);
});
