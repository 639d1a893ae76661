/** Prices as each language writes them: CLDR's patterns, as Intl has them; a unit price by Directive 98/6/EC. */
import { describe, expect, test } from "vitest";
import { offerViews } from "../../lib/pages/sheet-page.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";
import { WORDS } from "../../lib/words/languages.ts";

const offered = (sizes: NonNullable<Sheet["offer"]>["sizes"], currency = "EUR") =>
  ({ offer: { currency, sizes, withheldFor: [] } }) as unknown as Sheet;

describe("sizes with their prices", () => {
  const sheet = offered([
    { ml: 40, price: 12.5, unitPrice: { ml: 1000, price: 1312.5 } },
    { ml: 1000, price: 300 },
    { ml: 15 },
  ]);
  test.each([
    ["en", "40 ml €12.50 (€1,312.50/l)", "1000 ml €300.00"],
    ["de", "40 ml 12,50 € (1.312,50 €/l)", "1000 ml 300,00 €"],
    ["fr", "40 ml 12,50 € (1\u202f312,50 €/l)", "1000 ml 300,00 €"],
    ["es", "40 ml 12,50 € (1312,50 €/l)", "1000 ml 300,00 €"],
  ] as const)("in %s", (language, small, large) => {
    expect(
      offerViews(sheet, WORDS[language]).map(({ text }) => text.replaceAll("\u00a0", " ")),
    ).toEqual([small, large, "15 ml"]);
  });

  test("of 100 ml, where a workshop has that", () => {
    const [size] = offerViews(
      offered([{ ml: 40, price: 8, unitPrice: { ml: 100, price: 20 } }], "GBP"),
      WORDS.en,
    );
    expect(size).toEqual({
      text: "40\u00a0ml £8.00 (£20.00/100\u00a0ml)",
      size: "40\u00a0ml",
      price: "£8.00",
      unitPrice: "£20.00/100\u00a0ml",
    });
  });
});
