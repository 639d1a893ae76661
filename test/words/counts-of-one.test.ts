import { describe, expect, test } from "vitest";
import { WORDS } from "../../lib/words/languages.ts";
import { rangeCounts } from "../../lib/pages/range-counts.ts";
import { RECORDS, worked } from "../support/demonstration.ts";
import { ENGLISH } from "../../lib/words/english.ts";

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
  const { promise, besides } = ENGLISH.pages.home;
  const counts = { measured: 4, mediums: 0, byEye: 0, unread: 0, tinted: 4 };
  test.each([
    [{}, "4 oil colours, each shown as we measured it: alone, and mixed with white.", ""],
    [
      { measured: 3, unread: 1, tinted: 3 },
      "3 oil colours as we measured them, alone and mixed with white.",
      "1 still to measure",
    ],
    [
      { measured: 5, mediums: 1, unread: 2, tinted: 3 },
      "5 oil colours and 1 medium as we measured them, 3 of them mixed with white as well.",
      "2 still to measure",
    ],
    [
      { mediums: 2, byEye: 1, tinted: 3 },
      "4 oil colours and 2 mediums as we measured them, 3 of them mixed with white as well.",
      "1 more by eye or by figures of others",
    ],
    [{ tinted: 0 }, "4 oil colours as we measured them.", ""],
  ])("of %j: %s %s", (some, said, beside) => {
    const of = { ...counts, ...some };
    expect([promise(of), besides(of)]).toEqual([said, beside]);
  });

  test("counts by how the records tell each colour", () => {
    const records = [...RECORDS.colours.values()].map(({ record }) => record);
    const read = records.filter(({ masstone }) => masstone !== undefined && "reading" in masstone);
    expect(rangeCounts(worked().context)).toEqual({
      measured: read.filter(({ family }) => family !== "extender").length,
      mediums: read.filter(({ family }) => family === "extender").length,
      byEye: records.filter(({ masstone }) => masstone !== undefined).length - read.length,
      unread: records.filter(({ masstone }) => masstone === undefined).length,
      tinted: records.filter(({ tints }) => (tints ?? []).length > 0).length,
    });
  });
});
