import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { ComparedAmount, ComparedColour } from "../../lib/collection/compared-colour.ts";
import { COVERAGE } from "../../lib/collection/least-differences.ts";
import { COMPARED, sideBySide, type ComparedRow } from "../../lib/collection/side-by-side.ts";
import type { Quantity } from "../../lib/quantities/interval.ts";
import { checkTable } from "../support/checks.ts";

type Amounts = Readonly<Record<string, ComparedAmount>>;
const NAMES = ["One", "Two", "Three", "Four", "Five"];
const colours = (...each: readonly Amounts[]): ComparedColour[] =>
  each.map((amounts, i) => ({ slug: `c${i}`, name: NAMES[i] ?? "", amounts }));

/** The one row that the colours have. */
function row(key: string, ...each: readonly (ComparedAmount | undefined)[]): ComparedRow {
  const { rows } = sideBySide(
    colours(...each.map((amount) => (amount === undefined ? {} : { [key]: amount }))),
  );
  if (rows.length !== 1 || rows[0] === undefined)
    throw new Error(`Unexpected count of rows ${rows.length}`);
  return rows[0];
}
const number = (value: Quantity, uncertainty?: number): ComparedAmount => ({
  kind: "number",
  value,
  ...(uncertainty === undefined ? {} : { uncertainty }),
});
const colour = (L: number, a: number, b: number, uncertainty?: number): ComparedAmount => ({
  kind: "colour",
  L,
  a,
  b,
  ...(uncertainty === undefined ? {} : { uncertainty }),
});
const word = (value: string, standing?: "measured" | "estimated"): ComparedAmount => ({
  kind: "word",
  value,
  ...(standing === undefined ? {} : { standing }),
});

const chi = {
  basis: "published",
  source: "NIST/SEMATECH e-Handbook of Statistical Methods (quoted from memory)",
  locator: "1.3.6.7.4, chi-squared, upper tail .05",
} as const;
checkTable(
  "coverage of a difference, squared",
  (axes: number) => ([COVERAGE.number, COVERAGE.plane, COVERAGE.space][axes - 1] ?? NaN) ** 2,
  [
    { ...chi, input: 1, expected: 3.841, tolerance: 0.002 },
    { ...chi, input: 2, expected: 5.991, tolerance: 0.003 },
    { ...chi, input: 3, expected: 7.815, tolerance: 0.004 },
  ],
);

describe("numbers", () => {
  // A tenth of the smaller, common practice: the limit from both sides.
  test.each<[string, Quantity, Quantity, string]>([
    ["more than a tenth apart", 111, 100, "differs"],
    ["just a tenth apart", 110, 100, "not told"],
    ["less", 104, 100, "not told"],
    ["the same", 100, 100, "same"],
    ["estimates that overlap", [80, 120], [100, 150], "not told"],
    ["estimates that touch", [80, 100], [100, 150], "not told"],
    ["estimates a tenth of the lower's end apart", [112, 150], [80, 100], "differs"],
    ["one estimate, written twice", [80, 100], [80, 100], "same"],
    ["a number within an estimate", 90, [80, 100], "not told"],
    ["a number beyond an estimate", 150, [80, 100], "differs"],
  ])("%s: %j and %j", (_, one, other, verdict) => {
    expect(row("oilByMass", number(one), number(other)).verdict).toBe(verdict);
    expect(row("oilByMass", number(other), number(one)).verdict).toBe(verdict);
  });

  test("an uncertainty of 10 and 10 bears no difference under 1.96 times their root of squares, 27.7", () => {
    expect(row("strength", number(128, 10), number(100, 10)).verdict).toBe("differs");
    expect(row("strength", number(127, 10), number(100, 10))).toMatchObject({
      verdict: "not told",
      ruling: { rule: "compared-within-share" },
    });
  });

  test("estimates that overlap, or whose ends nearly touch, are too close to call", () => {
    for (const other of [
      [80, 120],
      [80, 95],
    ] as const)
      expect(row("oilByMass", number([100, 150]), number(other)).ruling).toEqual({
        rule: "compared-too-close",
        values: {},
      });
  });

  test("a ratio is of the nearer ends, and says so", () => {
    expect(row("oilByMass", number([30, 40]), number([80, 100])).ruling).toEqual({
      rule: "compared-ratio",
      values: { of: "oilByMass", more: "Two", less: "One", ratio: 2, atLeast: "the nearer ends" },
    });
    expect(row("oilByMass", number(40), number(80)).ruling).toEqual({
      rule: "compared-ratio",
      values: { of: "oilByMass", more: "Two", less: "One", ratio: 2 },
    });
  });

  test("the pair that lies farthest apart speaks", () => {
    expect(row("oilByMass", number(40), number(80), number(20)).ruling?.values).toMatchObject({
      more: "Two",
      less: "Three",
      ratio: 4,
    });
  });

  test("what whites whiten is a row where any of them does, and a ratio", () => {
    expect(row("whitens", number(12), number(59))).toMatchObject({
      verdict: "differs",
      ruling: { values: { of: "whitens", ratio: 59 / 12 } },
    });
  });

  test("parts of a white are rows of their own, named by the white", () => {
    expect(row("parts.zinc-white", number(2), number(4))).toMatchObject({
      key: "parts.zinc-white",
      ruling: { values: { of: "parts" } },
    });
  });

  test.each([
    [0, "0"],
    [NaN, "NaN"],
  ])("%s is no amount", (value, printed) => {
    expect(() => row("oilByMass", number(value), number(value))).toThrow(
      `The amount of oilByMass is ${printed}; right would be > 0`,
    );
  });
});

describe("days", () => {
  test("that overlap, or whose ends lie less than one apart, are too close to call", () => {
    for (const later of [
      [3, 9],
      [5.5, 9],
    ] as const)
      expect(row("drying", number(later), number([2, 5])).ruling).toEqual({
        rule: "compared-too-close",
        values: {},
      });
  });

  test.each<[Quantity, Quantity, string]>([
    [[5, 5], [4, 4], "differs"],
    [[4.5, 4.5], [4, 4], "not told"],
    [[4, 4], [4, 4], "same"],
    [[6, 12], [2, 5], "differs"],
    [[6, 12], [2, 6], "not told"],
  ])("%j and %j", (one, other, verdict) => {
    expect(row("drying", number(one), number(other)).verdict).toBe(verdict);
    expect(row("drying", number(other), number(one)).verdict).toBe(verdict);
  });

  test("are told from the end of the one to the start of the other", () => {
    expect(row("drying", number([2, 5]), number([8, 12])).ruling?.values).toEqual({
      later: "Two",
      earlier: "One",
      days: 3,
      atLeast: "the nearer ends",
    });
    expect(row("drying", number([5, 5]), number([8, 8])).ruling?.values).toEqual({
      later: "Two",
      earlier: "One",
      days: 3,
    });
  });
});

describe("masstones and tints", () => {
  test("a distance above 1 counts where nothing is said of the readings; 3, 4 and 12 make 13", () => {
    expect(row("masstone", colour(33, 4, 12), colour(30, 0, 0)).ruling).toEqual({
      rule: "compared-masstones",
      values: {
        one: "One",
        other: "Two",
        a: 4,
        b: 12,
        lighter: 3,
        redder: 4,
        yellower: 12,
        distance: 13,
      },
    });
    expect(row("masstone", colour(30, 1.01, 0), colour(30, 0, 0)).verdict).toBe("differs");
    expect(row("masstone", colour(30, 0.99, 0), colour(30, 0, 0)).verdict).toBe("not told");
    expect(row("masstone", colour(30, 0, 0), colour(30, 0, 0)).verdict).toBe("same");
  });

  test("an uncertainty of 1 an axis and 1 bears none under 2.795 times the root of 2, 3.95", () => {
    expect(row("masstone", colour(30, 3.96, 0, 1), colour(30, 0, 0, 1)).verdict).toBe("differs");
    expect(row("masstone", colour(30, 3.94, 0, 1), colour(30, 0, 0, 1))).toMatchObject({
      verdict: "not told",
      ruling: { rule: "compared-within" },
    });
  });

  const at = (places: Readonly<Record<string, readonly [number, number]>>): ComparedAmount => ({
    kind: "tint",
    atL: Object.fromEntries(Object.entries(places).map(([level, [a, b]]) => [level, { a, b }])),
  });

  test("tints are held together at the lightness that most of them reach, 50 before 70 before 30", () => {
    expect(
      row(
        "white.w",
        at({ 70: [0, 0], 50: [0, -4], 30: [0, 0] }),
        at({ 70: [0, 0], 50: [0, 0], 30: [0, 0] }),
      ),
    ).toMatchObject({
      level: "50",
      verdict: "differs",
      ruling: { rule: "compared-tints", values: { L: 50, yellower: -4 } },
    });
    expect(row("white.w", at({ 70: [0, 0], 50: [0, 0] }), at({ 70: [0, 3] }))).toMatchObject({
      level: "70",
      verdict: "differs",
    });
    expect(row("white.w", at({ 50: [0, 0] }), at({ 30: [0, 3] }))).toMatchObject({
      verdict: "not told",
      ruling: { rule: "compared-no-lightness" },
    });
    expect(row("white.w", at({}), at({})).level).toBeUndefined();
  });

  test("a white that one of them was not let down in is not stated", () => {
    expect(row("white.w", at({ 50: [0, 0] }), undefined)).toMatchObject({
      verdict: "not stated",
      ruling: { rule: "compared-not-stated", values: { names: ["Two"] } },
    });
  });
});

describe("words and sets", () => {
  test("words differ or are the same, but for one that is only expected", () => {
    expect(row("opacity", word("opaque"), word("transparent"))).toEqual({
      key: "opacity",
      verdict: "differs",
    });
    expect(row("opacity", word("opaque", "measured"), word("opaque", "measured")).verdict).toBe(
      "same",
    );
    expect(
      row("lightfastness", word("excellent", "measured"), word("excellent", "estimated")),
    ).toMatchObject({ verdict: "not told", ruling: { rule: "compared-one-expected" } });
    expect(
      row("lightfastness", word("fair", "measured"), word("excellent", "estimated")).verdict,
    ).toBe("differs");
  });

  test("sets are the same in any order, and an empty one is a statement", () => {
    const set = (...members: string[]): ComparedAmount => ({ kind: "set", members });
    expect(row("label", set("H302", "H410"), set("H410", "H302")).verdict).toBe("same");
    expect(row("label", set(), set("H410")).verdict).toBe("differs");
    expect(row("label", set(), set()).verdict).toBe("same");
  });
});

test("of three, two that differ differ though the third states nothing; two that agree do not make all the same", () => {
  expect(row("opacity", word("opaque"), word("transparent"), undefined).verdict).toBe("differs");
  expect(row("opacity", word("opaque"), word("opaque"), undefined)).toMatchObject({
    verdict: "not stated",
    ruling: { values: { names: ["Three"] } },
  });
});

test("a chip matched by eye is shown, and held against no reading; two readings beside it still are", () => {
  const chip: ComparedAmount = { kind: "apart" };
  expect(row("masstone", colour(30, 0, 0), chip)).toEqual({
    key: "masstone",
    verdict: "not told",
    ruling: { rule: "compared-otherwise-known", values: { names: ["Two"] } },
  });
  expect(row("masstone", chip, chip).verdict).toBe("not told");
  expect(row("masstone", colour(30, 0, 0), chip, colour(40, 0, 0))).toMatchObject({
    verdict: "differs",
    ruling: { values: { one: "One", other: "Three" } },
  });
});

test("what none of them states is listed apart", () => {
  const { rows, unstated } = sideBySide(
    colours({ finish: word("matte") }, { finish: word("gloss") }),
  );
  expect(rows.map(({ key }) => key)).toEqual(["finish"]);
  const ofWhites = ["white", "parts", "whitens"];
  expect(unstated).toEqual(COMPARED.filter((key) => key !== "finish" && !ofWhites.includes(key)));
});

test.each([[1], [5]])("%i colours are refused", (count) => {
  expect(() => sideBySide(colours(...Array.from({ length: count }, () => ({}))))).toThrow(
    `The count of colours is ${count}; right would be 2 to 4`,
  );
});

test("a colour beside itself is refused", () => {
  expect(() => sideBySide([...colours({}), ...colours({})])).toThrow(
    "A colour stands twice in c0, c0",
  );
});

test("the order in which colours stand changes no verdict", () => {
  const amount = fc.oneof(
    fc.double({ min: 1, max: 200, noNaN: true }).map((value) => number(value)),
    fc
      .tuple(fc.integer({ min: 1, max: 50 }), fc.integer({ min: 0, max: 50 }))
      .map(([low, more]) => number([low, low + more])),
  );
  fc.assert(
    fc.property(
      fc.array(fc.option(amount, { nil: undefined }), { minLength: 2, maxLength: 4 }),
      fc.constantFrom("oilByMass", "drying"),
      (amounts, key) => {
        const verdicts = (each: readonly (ComparedAmount | undefined)[]): (string | undefined)[] =>
          sideBySide(
            colours(...each.map((one) => (one === undefined ? {} : { [key]: one }))),
          ).rows.map(({ verdict }) => verdict);
        expect(verdicts(amounts.toReversed())).toEqual(verdicts(amounts));
      },
    ),
    { seed: 1, numRuns: 200 },
  );
});
