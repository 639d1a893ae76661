import { describe, expect, test } from "vitest";
import { WORDS } from "../../lib/words/languages.ts";
import { letDownCount } from "../../lib/pages/home-page.ts";
import { RECORDS, worked } from "../support/demonstration.ts";
import { ENGLISH } from "../../lib/words/en/english.ts";

describe.each(Object.entries(WORDS))("in %s", (_, { pages }) => {
  const of = (count: number): string[] => [
    pages.mixing.recipes.found(count, count, 20, false),
    pages.mixing.recipes.found(0, count, 20, false),
    pages.mixing.map.describe(count, "Zinc White", "100"),
  ];
  test("one is not told as several, and several are counted", () => {
    expect(of(1).filter((text) => /(?<![\d*])1\b(?!\d)/.test(text))).toEqual([]);
    expect(of(3).filter((text) => !text.includes("3"))).toEqual([]);
  });
});

describe("the first page's sentence", () => {
  const { promise } = ENGLISH.pages.home;
  test.each([
    [4, 0, 4, "4 oil colours, each shown as we measured it: alone, and mixed with white."],
    [
      4,
      1,
      3,
      "3 oil colours as we measured them, alone and mixed with white, and 1 still to measure.",
    ],
    [
      8,
      2,
      3,
      "6 oil colours as we measured them, 3 of them mixed with white as well, and 2 still to measure.",
    ],
    [4, 0, 3, "4 oil colours as we measured them, 3 of them mixed with white as well."],
    [4, 0, 0, "4 oil colours as we measured them."],
  ])("of %s, %s unread, %s let down: %s", (count, unread, tinted, said) =>
    expect(promise(count, unread, tinted)).toBe(said),
  );

  test("counts as let down what the records have a let-down of", () =>
    expect(letDownCount(worked().context)).toBe(
      [...RECORDS.colours.values()].filter(({ record }) => (record.tints ?? []).length > 0).length,
    ));
});
