/** How a declared figure is found, and where its row stands: sections made up for this, worked by hand. */
import { describe, expect, test } from "vitest";
import { isKnown, notStated, sourceFigure, type Figure } from "../../lib/quantities/figure.ts";
import type { Quantity } from "../../lib/quantities/interval.ts";
import {
  list,
  optional,
  quantity,
  section,
  text,
  word,
  type Declared,
} from "../../lib/sheet/declaration.ts";
import { listedRows } from "../../lib/sheet/figure-table.ts";
import { pathBelow } from "../../lib/sheet/figure-path.ts";
import {
  filled,
  following,
  foundFrom,
  wordFollowing,
  type Amounts,
  type Following,
} from "../../lib/sheet/found.ts";
import { SHEET } from "../../lib/sheet/sheet.ts";

function grams(value: Quantity): Figure<Quantity> {
  return sourceFigure("measured", value, { unit: "g", method: "weighed", inputs: [] });
}

interface Worked {
  readonly pattern: string;
  readonly part: Following<Declared, unknown>;
}

/** Every figure of a sheet that is declared with an example. */
function followers(part: Declared, pattern: string): Worked[] {
  if ("example" in part) return [{ pattern, part: part as Following<Declared, unknown> }];
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
    const [from, value] = part.example ?? [{}, "no example"];
    const inputs = Object.entries(from).map(([key, one]) => [key, grams(one)] as const);
    const figure = part.follows(Object.fromEntries(inputs), {});
    const found = isKnown(figure) ? figure.value : figure.reason;
    if (typeof value === "string") expect(found).toBe(value);
    else expect(Math.abs(Number(found) - value)).toBeLessThanOrEqual(tolerance(value));
  });
});

const NUMBER = { unit: "g", kind: "decimal", digits: 0 } as const;
interface Weighed {
  readonly pan: Figure<Quantity>;
  readonly mark?: string;
}
const weighed = foundFrom<Weighed & Amounts<"whole" | "half">>();
const SECTION = section({
  /** Above what it follows from. */
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
  whole: weighed.found(quantity({ ...NUMBER, word: "whole" }), ({ pan }) => pan),
  half: weighed.derived(
    quantity({ ...NUMBER, word: "half" }),
    ({ whole }) => ({ whole }),
    { name: ({ mark }) => `half of ${mark ?? "it"}`, example: [{ whole: 8 }, 4] },
    (v) => v.whole / 2,
  ),
  size: wordFollowing(
    word("size"),
    ["quarter"],
    { name: "size", example: [{ quarter: 3 }, "large"] },
    (v) => ([v.quarter].flat().every((end) => end > 2) ? "large" : "small"),
  ),
  label: weighed.found(optional(text), ({ mark }) => mark),
  slug: text,
  others: list(text),
});
const rest = { slug: "pan", others: [] };

describe("a section", () => {
  const figures = filled(SECTION, { ...rest, pan: grams([8, 12]) });
  test("works its parts out of what it is handed and of one another, in the unit of the declaration", () => {
    expect(figures.half).toMatchObject({
      value: [4, 6],
      unit: "g",
      standing: "derived",
      method: "half of it",
    });
    expect(figures.quarter).toMatchObject({
      value: [2, 3],
      unit: "kg",
      standing: "estimated",
      source: "practice-formulation",
    });
    expect(figures.size).toMatchObject({ value: "small", unit: "" });
    expect(filled(SECTION, { ...rest, pan: grams(12) }).size).toMatchObject({ value: "large" });
  });
  test("has them in the order of the declaration, without those of which nothing is known", () => {
    expect(Object.keys(figures)).toEqual(["quarter", "whole", "half", "size", "slug", "others"]);
    const labelled = filled(SECTION, { ...rest, pan: grams(1), mark: "a pan" });
    expect(labelled.label).toBe("a pan");
    expect(labelled.half).toMatchObject({ method: "half of a pan" });
  });
  test("misses what follows for the reason that it misses what that follows from", () => {
    const pan = notStated("not weighed", ["whole"], []);
    const { size } = filled(SECTION, { ...rest, pan });
    expect(size).toMatchObject({ reason: "not weighed", wanting: ["whole"] });
  });
  test("works each part out once", () => {
    let times = 0;
    const counted = section({
      whole: weighed.found(quantity({ ...NUMBER, word: "whole" }), ({ pan }) => {
        times += 1;
        return pan;
      }),
      half: SECTION.shape.members.half,
    });
    filled(counted, { pan: grams(8) });
    expect(times).toBe(1);
  });
  test("refuses a part that is found from itself", () => {
    const round = section({
      half: SECTION.shape.members.half,
      whole: following(
        quantity({ ...NUMBER, word: "whole" }),
        ["half"],
        { name: "twice", example: [{ half: 1 }, 2] },
        (v) => v.half * 2,
      ),
    });
    expect(() => filled(round, { pan: grams(1) })).toThrow(
      new RangeError("half is found from itself"),
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
