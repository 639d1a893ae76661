import { describe, expect, test } from "vitest";
import { COLORIMETRY_RULINGS } from "../../lib/words/rulings/colorimetry.ts";
import { COMPARISON_RULINGS } from "../../lib/words/in-browser/compare.ts";
import { DRAWDOWN_RULINGS } from "../../lib/words/rulings/drawdowns.ts";
import { DRYING_RULINGS } from "../../lib/words/rulings/drying.ts";
import { DRAWN_COAT_RULINGS } from "../../lib/words/rulings/drawn-coat.ts";
import { EXPECTED_RULINGS } from "../../lib/words/rulings/expected.ts";
import { FORMULATION_RULINGS } from "../../lib/words/rulings/formulation.ts";
import { LABEL_RULINGS } from "../../lib/words/rulings/label.ts";
import { MARKET_RULINGS } from "../../lib/words/rulings/markets.ts";
import { STUDIO_RULINGS } from "../../lib/words/rulings/studio.ts";
import { MIXTURE_RULINGS } from "../../lib/words/rulings/mixtures.ts";
import { OPACITY_RULINGS } from "../../lib/words/rulings/opacity.ts";
import { OPTICS_RULINGS } from "../../lib/words/rulings/optics.ts";
import { PATCH_RULINGS } from "../../lib/words/rulings/patches.ts";
import { PERMANENCE_RULINGS } from "../../lib/words/rulings/permanence.ts";
import {
  dateWords,
  dayCount,
  listed,
  percent,
  significant,
  timesTheDays,
  within,
} from "../../lib/words/languages/en.ts";
import { LOT_RULINGS } from "../../lib/words/rulings/lots.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { tintWords } from "../../lib/words/rulings/tints.ts";
import { tintSentences } from "../../lib/words/tint-sentence.ts";
import { sentenceFaults } from "./statements-held.ts";

describe("a sentence for each rule", () => {
  test("no two sciences word one rule", () => {
    const all = [
      COLORIMETRY_RULINGS,
      OPTICS_RULINGS,
      DRAWDOWN_RULINGS,
      OPACITY_RULINGS,
      EXPECTED_RULINGS,
      DRAWN_COAT_RULINGS,
      MIXTURE_RULINGS,
      FORMULATION_RULINGS,
      DRYING_RULINGS,
      PERMANENCE_RULINGS,
      LABEL_RULINGS,
      STUDIO_RULINGS,
      MARKET_RULINGS,
      tintSentences(tintWords("en")),
      COMPARISON_RULINGS,
      LOT_RULINGS,
      PATCH_RULINGS,
    ].flatMap((wordings) => Object.keys(wordings));
    expect(new Set(all).size).toBe(all.length);
    expect(Object.keys(ENGLISH.rulings).sort()).toEqual(all.sort());
  });

  test("a printable sentence passes, and each fault is found", () => {
    expect(sentenceFaults("Turns blue (b* \u22124.1) in 3\u20135\u00a0days.")).toEqual([]);
    for (const bad of [
      "Is undefined.",
      "Is NaN.",
      "Two  spaces.",
      "two small.",
      "No stop",
      "Two stops..",
      "Minus -3.",
      "Is 0.12345.",
      "A safe white.",
      "Lasts 100 years.",
      "By filmThicknessUm.",
      "Empty ().",
    ]) {
      expect(sentenceFaults(bad), bad).not.toEqual([]);
    }
  });
});

describe("phrases", () => {
  test.each([
    ["Titanium White", "Titanium White"],
    ["titanium-zinc-white", "titanium zinc white"],
    ["Prussian Blue", "Prussian Blue"],
    ["Titanium-Zinc White", "Titanium-Zinc White"],
    ["PBk 9", "PBk 9"],
    ["Titanium dioxide, rutile", "Titanium dioxide, rutile"],
    ["Lamp Black, milled", "Lamp Black, milled"],
    ["One, two, three", "One, two, three"],
    ["Ochre, dug at the Ford", "Ochre, dug at the Ford"],
  ])("%s stands in a sentence as %s", (name, text) => {
    expect(within(name)).toBe(text);
  });

  test("lists read with commas and an and; names with commas of their own with semicolons", () => {
    expect([listed([]), listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"], "or")]).toEqual([
      "",
      "a",
      "a and b",
      "a, b or c",
    ]);
    expect(listed(["white, of no name, old", "chalk", "barytes"])).toBe(
      "white, of no name, old; chalk; and barytes",
    );
  });

  test("figures claim no more digits than they bear", () => {
    expect([
      significant(3, 2),
      significant([1.1, 2], 2),
      significant(0.3, 2),
      significant(100, 2),
      significant([3.1, 3.12], 2),
    ]).toEqual(["3", "1.1\u20132", "0.3", "100", "about 3.1"]);
    expect([
      percent(0.0015),
      percent(0.003),
      percent(0.6449),
      percent(1),
      percent(6.4),
      percent([0.02, 0.06]),
    ]).toEqual([
      "0.15\u00a0%",
      "0.3\u00a0%",
      "64\u00a0%",
      "100\u00a0%",
      "640\u00a0%",
      "2\u20136\u00a0%",
    ]);
    expect([dayCount(1), dayCount([3, 6]), dateWords("2009-06-01")]).toEqual([
      "1\u00a0day",
      "3\u20136\u00a0days",
      "1 June 2009",
    ]);
  });

  test("what slows multiplies the days, and what speeds leaves a share of them", () => {
    expect([
      timesTheDays([1.6, 2.2]),
      timesTheDays([0.3, 0.5]),
      timesTheDays([0.9, 1]),
      timesTheDays([1, 1]),
    ]).toEqual([
      "1.6\u20132.2 times the days",
      "30\u201350\u00a0% of the days",
      "90\u2013100\u00a0% of the days",
      "the same days",
    ]);
  });

  test("a term is listed only where its print differs from its key", () => {
    expect(Object.entries(ENGLISH.terms).length).toBeGreaterThan(0);
    for (const [key, print] of Object.entries(ENGLISH.terms)) expect(print).not.toBe(key);
  });
});
