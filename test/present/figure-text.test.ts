import { expect, test } from "vitest";
import { claimText } from "../../lib/present/claim-text.ts";
import { figureText } from "../../lib/present/figure-text.ts";
import { figureRow } from "../../lib/sheet/figure-table.ts";
import { figureEntries } from "../../lib/sheet/figure-entries.ts";
import type { Bound } from "../../lib/quantities/figure.ts";
import { WORDED } from "../support/worded.ts";
import { answered, answerWith } from "../claims/answered-workshop.ts";

type Bounded = { readonly value: number; readonly bound?: Bound };

const STRENGTH = figureRow("optics.tintingStrength");
const share = (value: number, uncertainty?: number): string =>
  figureText(
    STRENGTH,
    { value, unit: "1", ...(uncertainty === undefined ? {} : { uncertainty }) },
    WORDED.en,
  );

test("a small percentage has a second digit where its uncertainty bears one, and no other has", () => {
  expect(share(0.026, 0.0013)).toBe("2.6\u00a0%");
  expect(share(0.026, 0.006)).toBe("3\u00a0%");
  expect(share(0.05)).toBe("5\u00a0%");
  expect(share(0.28, 0.002)).toBe("28\u00a0%");
  expect(share(1.25, 0.002)).toBe("125\u00a0%");
});

test.each([
  ["en", "medium or slow", "fast to slow"],
  ["de", "mittel oder langsam", "schnell bis langsam"],
  ["fr", "moyen ou lent", "de rapide à lent"],
  ["es", "medio o lento", "de rápido a lento"],
] as const)("a class is said with all that it reaches into, in %s", (language, two, three) => {
  const said = (...reaches: readonly string[]): string =>
    figureText(
      figureRow("drying.class"),
      { value: "medium", unit: "", ...(reaches.length === 0 ? {} : { reaches }) },
      WORDED[language],
    );
  expect(said("medium", "slow")).toBe(two);
  expect(said("fast", "medium", "slow")).toBe(three);
  expect(two.startsWith(said())).toBe(true);
});

/** Of 27 g as weighed and a tenth of that besides, no tenth of a gram is known. */
test("oil that was reckoned from grams is printed in whole grams, and as weighed where it was weighed", () => {
  const grams = (value: number, standing: "measured" | "derived", uncertainty?: number): string =>
    figureText(
      figureRow("oil.oilIndexGPer100g"),
      { value, standing, unit: "g/100 g", ...(uncertainty === undefined ? {} : { uncertainty }) },
      WORDED.en,
    );
  expect(grams(29.7, "derived")).toBe("30 g/100\u00a0g");
  expect(grams(165.4, "derived")).toBe("165 g/100\u00a0g");
  expect(grams(29.7, "measured")).toBe("29.7 g/100\u00a0g");
  expect(grams(29.7, "derived", 0.2)).toBe("29.7 g/100\u00a0g");
});

/** 10 000 / 30.5456 \u00b5m is 327.379 cm2: of "at least 330" more would be promised than is known. */
test("a bound is printed on the safe side of what is known", () => {
  const text = (path: "optics.hidingFilmUm" | "optics.coverageCm2PerMl", figure: Bounded): string =>
    figureText(figureRow(path), { unit: "", ...figure }, WORDED.en);
  expect(text("optics.hidingFilmUm", { value: 30.5456, bound: "at most" })).toBe("at most 31");
  expect(text("optics.hidingFilmUm", { value: 30.4, bound: "at most" })).toBe("at most 31");
  expect(text("optics.coverageCm2PerMl", { value: 327.379, bound: "at least" })).toBe(
    "at least 320",
  );
  expect(text("optics.coverageCm2PerMl", { value: 327.379 })).toBe("330");
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
      WORDED.en,
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
      WORDED[language],
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
    figureText(figureRow("drying.touchDryDays"), { value, unit: "d" }, WORDED[language]);
  expect([days(1), days(2), days([1, 2])]).toEqual([one, two, range]);
});
