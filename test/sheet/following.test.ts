/** How a declared figure follows from others of its section, and where its row stands: sections made up for this, worked by hand. */
import { describe, expect, test } from "vitest";
import { isKnown, notStated, sourceFigure, type Figure } from "../../lib/quantities/figure.ts";
import type { Quantity } from "../../lib/quantities/interval.ts";
import { quantity, word, type Declared } from "../../lib/sheet/declaration.ts";
import { listedRows } from "../../lib/sheet/figure-table.ts";
import { pathBelow } from "../../lib/sheet/figure-entries.ts";
import {
  following,
  withFollowing,
  wordFollowing,
  type Following,
} from "../../lib/sheet/following.ts";
import { SHEET } from "../../lib/sheet/sheet.ts";

function grams(value: Quantity): Figure<Quantity> {
  return sourceFigure("measured", value, { unit: "g", method: "weighed", inputs: [] });
}

interface Worked {
  readonly pattern: string;
  readonly part: Following<Declared, string>;
}

/** Every figure of a sheet that is declared with how it follows. */
function followers(part: Declared, pattern: string): Worked[] {
  if ("follows" in part) return [{ pattern, part: part as Following<Declared, string> }];
  const { shape } = part;
  if (shape.form === "members")
    return Object.entries(shape.members).flatMap(([key, one]) =>
      followers(one, pathBelow(pattern, key)),
    );
  return shape.form === "list" || shape.form === "map"
    ? followers(shape.member, `${pattern}.*`)
    : [];
}
const FOLLOWERS = followers(SHEET, "");

/** Half of the last digit that an example is written to. */
const tolerance = (value: number): number =>
  0.5 * 10 ** -(String(value).split(".")[1]?.length ?? 0);

describe("the example of each figure that follows", () => {
  test("there are such", () => expect(FOLLOWERS.length).toBeGreaterThan(5));
  test.each(FOLLOWERS)("$pattern comes out as worked by hand", ({ part }) => {
    const [from, value] = part.example;
    const figure = part.follows(
      Object.fromEntries(Object.entries(from).map(([key, one]) => [key, grams(one)])),
    );
    const found = isKnown(figure) ? figure.value : figure.reason;
    if (typeof value === "string") expect(found).toBe(value);
    else expect(Math.abs(Number(found) - value)).toBeLessThanOrEqual(tolerance(value));
  });
});

const NUMBER = { unit: "g", kind: "decimal", digits: 0 } as const;
const HALF = following(
  quantity({ ...NUMBER, word: "half" }),
  ["whole"],
  { name: "half of it", example: [{ whole: 8 }, 4] },
  (v) => v.whole / 2,
);
const SECTION = {
  whole: quantity({ ...NUMBER, word: "whole" }),
  half: HALF,
  quarter: following(
    quantity({ unit: "kg", kind: "decimal", digits: 2, word: "quarter" }),
    ["half"],
    {
      name: "half of that",
      standing: "estimated",
      source: "practice-formulation",
      example: [{ half: 4 }, 2],
    },
    (v) => v.half / 2,
  ),
  size: wordFollowing(
    word("size"),
    ["quarter"],
    { name: "size", example: [{ quarter: 3 }, "large"] },
    (v) => ([v.quarter].flat().every((end) => end > 2) ? "large" : "small"),
  ),
};

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
    expect(paths("oil").slice(0, 4)).toEqual([
      "oil.oilIndexGPer100g",
      "oil.mainOilGPer100g",
      "oil.oilAbsorptionGPer100g",
      "oil.oilGPer100cm3",
    ]);
  });
  test("are none of a section that lists nothing", () => expect(paths("tints")).toEqual([]));
});
