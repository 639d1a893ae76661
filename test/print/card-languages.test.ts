import { describe, expect, test } from "vitest";
import { cardOfSheet } from "../../lib/print/card-of-sheet.ts";
import { sheetNamedIn } from "../../lib/print/sheet-in-language.ts";
import type { Language } from "../../lib/quantities/languages.ts";
import { WORDS } from "../../lib/words/languages.ts";
import { CONTEXT } from "./demonstration-cards.ts";

const worded = (slug: string) => {
  const found = CONTEXT.sheets.find(({ sheet }) => sheet.slug === slug);
  if (found === undefined) throw new Error(`Unexpected range without ${slug}`);
  return found;
};
const card = (...languages: Language[]) => cardOfSheet(worded("zinc-white"), CONTEXT, languages);

/** Source: README, `cards` and `languages`. */
describe("a card is in its languages", () => {
  test("all of ours in the only one", () => {
    const { rags, label, facts, deference } = card("de");
    expect(rags?.short).toBe(WORDS.de.pages.cards.ragShort);
    expect(label.overleaf).toBe(WORDS.de.pages.cards.overleaf);
    expect(label.signalWords).toEqual(["Achtung"]);
    for (const text of [label.basis, facts.drying.name, deference])
      expect(text).not.toMatch(/\b(the|and|Label by|Dries|call)\b/);
  });

  test("rags and label in each of several, all else in the page's own where it is among them", () => {
    const several = card("fr", "en");
    expect(several.rags?.lead).toBe(
      `${WORDS.fr.pages.cards.ragLead} ${WORDS.en.pages.cards.ragLead}`,
    );
    expect(several.facts).toEqual(card("en").facts);
    expect(card("fr", "de").facts).toEqual(card("fr").facts);
  });
});

test("names are as their records translate them, and else as they are", () => {
  const { sheet } = worded("zinc-white");
  const [pigment] = sheet.pigments;
  const known = CONTEXT.records.pigments.get(pigment?.slug ?? "");
  if (pigment === undefined || known === undefined)
    throw new Error("Unexpected sheet without pigment");
  const pigments = new Map([
    [
      pigment.slug,
      { ...known, record: { ...known.record, translations: { fr: { name: "Oxyde de zinc" } } } },
    ],
  ]);
  const records = { ...CONTEXT.records, pigments };
  expect(sheetNamedIn(sheet, "fr", records).pigments[0]?.name).toBe("Oxyde de zinc");
  expect(sheetNamedIn(sheet, "de", records).pigments[0]?.name).toBe(pigment.name);
});
