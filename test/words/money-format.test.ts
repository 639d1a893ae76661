import { expect, test } from "vitest";
import { WORDS } from "../../lib/words/languages.ts";

// Source: the sign of sterling in each language's trade; CLDR has "£GB" in French, for sterling beside other pounds.
test.each([
  ["en", "\u00a318.00"],
  ["de", "18,00 \u00a3"],
  ["fr", "18,00 \u00a3"],
  ["es", "18,00 \u00a3"],
] as const)("a price in sterling has its sign alone in %s", (language, price) => {
  const written = WORDS[language].pages.handling.offer.price(18, "GBP");
  expect(written.replace(/[\u00a0\u202f]/g, " ")).toBe(price);
});

test("a dollar is still told from another", () => {
  expect(WORDS.fr.pages.handling.offer.price(18, "USD")).toContain("$US");
});
