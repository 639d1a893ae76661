/** How a declared figure follows from others of its section, and where its row stands: sections made up for this, worked by hand. */
import { describe, expect, test } from "vitest";
import { isKnown, notStated, sourceFigure, type Figure } from "../../lib/quantities/figure.ts";
import type { Quantity } from "../../lib/quantities/interval.ts";
import { quantity, word } from "../../lib/sheet/declaration.ts";
import { listedRows } from "../../lib/sheet/figure-table.ts";
import { following, withFollowing, wordFollowing } from "../../lib/sheet/following.ts";

const NUMBER = { unit: "g", kind: "decimal", digits: 0 } as const;
const HALF = following(
  quantity({ ...NUMBER, word: "half" }),
  ["whole"],
  { name: "half of it" },
  (v) => v.whole / 2,
);
const SECTION = {
  whole: quantity({ ...NUMBER, word: "whole" }),
  half: HALF,
  quarter: following(
    quantity({ unit: "kg", kind: "decimal", digits: 2, word: "quarter" }),
    ["half"],
    { name: "half of that", standing: "estimated", source: "practice-formulation" },
    (v) => v.half / 2,
  ),
  size: wordFollowing(word("size"), ["quarter"], { name: "size" }, (v) =>
    [v.quarter].flat().every((end) => end > 2) ? "large" : "small",
  ),
};
const grams = (value: Quantity): Figure<Quantity> =>
  sourceFigure("measured", value, { unit: "g", method: "weighed", inputs: [] });

describe("figures that follow", () => {
  const figures = withFollowing(SECTION, { whole: grams([8, 12]) });
  test("are worked out from what stands above them, in the unit of their declaration", () => {
    expect(figures.half).toMatchObject({ value: [4, 6], unit: "g", standing: "derived" });
    expect(figures.quarter).toMatchObject({
      value: [2, 3],
      unit: "kg",
      standing: "estimated",
      source: "practice-formulation",
    });
    expect(figures.size).toMatchObject({ value: "small", unit: "" });
    expect(withFollowing(SECTION, { whole: grams(12) }).size).toMatchObject({ value: "large" });
  });
  test("stand in the order of the declaration", () =>
    expect(Object.keys(figures)).toEqual(["whole", "half", "quarter", "size"]));
  test("are missing for the reason that what they follow from is", () => {
    const { size } = withFollowing(SECTION, { whole: notStated("not weighed", ["whole"], []) });
    expect(isKnown(size)).toBe(false);
    expect(size).toMatchObject({ reason: "not weighed", wanting: ["whole"] });
  });
  test("are refused above what they follow from", () => {
    const { whole, half } = SECTION;
    expect(() => withFollowing({ half, whole }, { whole: grams(8) })).toThrow(
      new RangeError("Nothing at whole"),
    );
  });
});

describe("rows of a section's table", () => {
  const paths = (section: string): string[] => listedRows(section).map(({ pattern }) => pattern);
  test("stand as declared, but where one says after which it stands", () => {
    expect(paths("drying")).toEqual([
      "drying.class",
      "drying.touchDryDays",
      "drying.throughDryDays",
      "drying.expectedDays",
    ]);
    // By page: strengths together, then what decides the opacity before its film.
    expect(paths("optics").slice(0, 6)).toEqual([
      "optics.tintingStrength",
      "optics.tintingStrengthByVolume",
      "optics.dispersion.strength",
      "optics.opacityClass",
      "optics.scatteringPower",
      "optics.contrastRatio",
    ]);
    expect(paths("oil").slice(0, 3)).toEqual([
      "oil.oilIndexGPer100g",
      "oil.oilAbsorptionGPer100g",
      "oil.oilGPer100cm3",
    ]);
  });
  test("are none of a section that lists nothing", () => expect(paths("tints")).toEqual([]));
});
