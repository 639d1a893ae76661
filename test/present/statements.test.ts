import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { COLORIMETRY_RULINGS } from "../../lib/words/en/statements-colorimetry.ts";
import { COMPARISON_RULINGS } from "../../lib/words/en/statements-comparison.ts";
import { DRYING_RULINGS } from "../../lib/words/en/statements-drying.ts";
import { DRAWN_COAT_RULINGS } from "../../lib/words/en/statements-drawn-coat.ts";
import { EXPECTED_RULINGS } from "../../lib/words/en/statements-expected.ts";
import { FORMULATION_RULINGS } from "../../lib/words/en/statements-formulation.ts";
import { HAZARD_RULINGS } from "../../lib/words/en/statements-hazard.ts";
import { MIXTURE_RULINGS } from "../../lib/words/en/statements-mixtures.ts";
import { OPACITY_RULINGS } from "../../lib/words/en/statements-opacity.ts";
import { OPTICS_RULINGS } from "../../lib/words/en/statements-optics.ts";
import { PERMANENCE_RULINGS } from "../../lib/words/en/statements-permanence.ts";
import {
  dateWords,
  dayCount,
  listed,
  percent,
  significant,
  timesTheDays,
  within,
} from "../../lib/words/en/statements-phrases.ts";
import {
  numberOf,
  quantityOf,
  textOf,
  textsOf,
  wordOf,
} from "../../lib/words/en/statement-params.ts";
import { LOT_RULINGS } from "../../lib/words/en/statements-lots.ts";
import { RULINGS } from "../../lib/words/en/statements.ts";
import { TERMS } from "../../lib/words/en/terms.ts";
import { BIBLIOGRAPHY } from "../../lib/sources/bibliography.ts";
import { sentenceFaults } from "./statements-held.ts";

/** Hyphenated words of the sciences that name no rule: members of closed sets, and the names of complaints about records. */
const OTHER_WORDS = new Set([
  "near-neutral",
  "leave-one-out",
  "darkest-reading",
  "semi-opaque",
  "semi-transparent",
  "blue-green",
  "y-bar",
  "no-hue-to-compare",
  "keeps-hue",
  "turns-toward",
]);

function sources(room: string): string[] {
  const folder = new URL(`../../lib/${room}/`, import.meta.url);
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) =>
      readFileSync(new URL(file, folder), "utf8")
        .replace(/\/\*[\s\S]*?\*\//g, "")
        .replace(/\/\/.*$/gm, "")
        .replace(/^import .*$/gm, ""),
    );
}

/** Every rule that a science's source names: hyphenated words that are nothing else, and single words that stand after `rule:`. */
function rulesIn(room: string): string[] {
  const words = sources(room).flatMap((text) =>
    [...text.matchAll(/"([a-z][a-z0-9]*(?:-[a-z0-9]+)+)"|\brule: "([a-z0-9-]+)"/g)].map(
      ([, hyphened, named]) => hyphened ?? named ?? "",
    ),
  );
  const rules = words.filter((word) => !(word in BIBLIOGRAPHY) && !OTHER_WORDS.has(word));
  return [...new Set(rules)].sort();
}

describe("a sentence for each rule", () => {
  test.each([
    ["colorimetry", COLORIMETRY_RULINGS],
    [
      "optics",
      {
        ...OPTICS_RULINGS,
        ...OPACITY_RULINGS,
        ...EXPECTED_RULINGS,
        ...DRAWN_COAT_RULINGS,
        ...MIXTURE_RULINGS,
      },
    ],
    ["permanence", PERMANENCE_RULINGS],
  ] as const)(
    "%s: the rules of its source are those that are worded, and no others",
    (room, wordings) => {
      expect(rulesIn(room)).toEqual(Object.keys(wordings).sort());
    },
  );

  test.each(["sheet", "collection"])("%s passes on no rule that is not worded", (room) => {
    const rules = sources(room).flatMap((text) =>
      [...text.matchAll(/\brule: "([a-z0-9-]+)", values/g)].map(([, rule]) => rule ?? ""),
    );
    expect(rules.filter((rule) => !(rule in RULINGS))).toEqual([]);
  });

  test("no two sciences word one rule", () => {
    const all = [
      COLORIMETRY_RULINGS,
      OPTICS_RULINGS,
      OPACITY_RULINGS,
      EXPECTED_RULINGS,
      DRAWN_COAT_RULINGS,
      MIXTURE_RULINGS,
      FORMULATION_RULINGS,
      DRYING_RULINGS,
      PERMANENCE_RULINGS,
      HAZARD_RULINGS,
      COMPARISON_RULINGS,
      LOT_RULINGS,
    ].flatMap((wordings) => Object.keys(wordings));
    expect(new Set(all).size).toBe(all.length);
    expect(Object.keys(RULINGS).sort()).toEqual(all.sort());
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

describe("values of a ruling", () => {
  const values = {
    number: 2,
    range: [1, 2],
    text: "red",
    texts: ["a", "b", "a"],
    empty: "",
    wrong: NaN,
    open: [1, Infinity],
  } as const;

  test("are read as what they are", () => {
    expect([
      numberOf(values, "number"),
      quantityOf(values, "range"),
      quantityOf(values, "number"),
      textOf(values, "text"),
    ]).toEqual([2, [1, 2], 2, "red"]);
    expect(textsOf(values, "texts")).toEqual(["a", "b"]);
    expect(wordOf(values, "text", { red: 1, blue: 2 })).toBe("red");
  });

  test.each([
    [
      () => numberOf(values, "none"),
      "The value of a ruling is undefined at none; right would be a number",
    ],
    [
      () => numberOf(values, "wrong"),
      "The value of a ruling is null at wrong; right would be a number",
    ],
    [
      () => numberOf(values, "range"),
      "The value of a ruling is [1,2] at range; right would be a number",
    ],
    [
      () => quantityOf(values, "open"),
      "The value of a ruling is [1,null] at open; right would be a number or an estimate's two ends",
    ],
    [
      () => quantityOf(values, "text"),
      'The value of a ruling is "red" at text; right would be a number or an estimate\'s two ends',
    ],
    [() => textOf(values, "empty"), 'The value of a ruling is "" at empty; right would be a text'],
    [
      () => textsOf(values, "range"),
      "The value of a ruling is [1,2] at range; right would be a list of texts",
    ],
    [
      () => wordOf(values, "text", { blue: 1 }),
      'The value of a ruling is "red" at text; right would be blue',
    ],
  ])("are complained of when they are something else (%#)", (read, complaint) => {
    expect(read).toThrow(new RangeError(complaint));
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
    expect(Object.entries(TERMS).length).toBeGreaterThan(0);
    for (const [key, print] of Object.entries(TERMS)) expect(print).not.toBe(key);
  });
});
