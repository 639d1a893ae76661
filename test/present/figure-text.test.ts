import { expect, test } from "vitest";
import { claimText } from "../../lib/present/claim-text.ts";
import { figureText } from "../../lib/present/figure-text.ts";
import { figureRow } from "../../lib/sheet/figure-table.ts";
import { figureEntries } from "../../lib/sheet/figure-entries.ts";
import { WORDS } from "../../lib/words/languages.ts";
import { answered, answerWith } from "../claims/answered-workshop.ts";

const STRENGTH = figureRow("optics.tintingStrength");
const share = (value: number, uncertainty?: number): string =>
  figureText(
    STRENGTH,
    { value, unit: "1", ...(uncertainty === undefined ? {} : { uncertainty }) },
    WORDS.en,
  );

test("a small percentage has a second digit where its uncertainty bears one, and no other has", () => {
  expect(share(0.026, 0.0013)).toBe("2.6\u00a0%");
  expect(share(0.026, 0.006)).toBe("3\u00a0%");
  expect(share(0.05)).toBe("5\u00a0%");
  expect(share(0.28, 0.002)).toBe("28\u00a0%");
  expect(share(1.25, 0.002)).toBe("125\u00a0%");
});

test("a limit in percent reads as its author wrote it", () => {
  const figure = "soot-black.oil.pvc";
  const claim = { figure, above: 0.355 };
  const { worked } = answered(answerWith([`{ figure: ${figure}, above: 0.355 }`]));
  const sheet = worked?.sheets.find(({ slug }) => slug === "soot-black");
  const leaf = sheet && figureEntries(sheet).find(({ path }) => path === "oil.pvc");
  if (sheet === undefined || leaf === undefined) throw new Error("Unexpected range without it");
  expect(
    claimText(
      { claim, figures: [{ sheet, leaf }] },
      () => sheet.name,
      WORDS.en,
      () => sheet,
    ),
  ).toContain("above 35.5\u00a0%");
});

test.each([
  ["en", "Walnut White: Vehicle is Walnut oil"],
  ["de", "Walnut White: Bindemittel ist Walnut oil"],
  ["fr", "Walnut White\u202f: Liant\u202f: Walnut oil"],
  ["es", "Walnut White: Aglutinante: Walnut oil"],
] as const)("in %s the name of an oil is not told as the colour's", (language, expected) => {
  expect(
    claimText(
      { claim: { fact: "walnut-white.vehicle.name", is: "Walnut oil" }, figures: [] },
      () => "Walnut White",
      WORDS[language],
      () => undefined,
    ),
  ).toBe(expected);
});

test.each([
  ["en", "1\u00a0day", "2\u00a0days", "1\u20132\u00a0days"],
  ["de", "1\u00a0Tag", "2\u00a0Tage", "1\u20132\u00a0Tage"],
  ["fr", "1\u00a0jour", "2\u00a0jours", "1\u20132\u00a0jours"],
  ["es", "1\u00a0día", "2\u00a0días", "1\u20132\u00a0días"],
] as const)("in %s a single day is not told as several", (language, one, two, range) => {
  const days = (value: number | readonly [number, number]): string =>
    figureText(figureRow("drying.touchDryDays"), { value, unit: "d" }, WORDS[language]);
  expect([days(1), days(2), days([1, 2])]).toEqual([one, two, range]);
});
