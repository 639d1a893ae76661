import { describe, expect, test } from "vitest";
import {
  dilutedIngredients,
  mixtureParts,
  type Ingredient,
} from "../../lib/hazard/classify/composition.ts";
import { leadCarbonate, oil, substance } from "./ingredients.ts";

const parts = (...ingredients: readonly Ingredient[]) =>
  mixtureParts({ ingredients, form: "paste", frame: "EU CLP", publicSale: false });

describe("bad input", () => {
  test.each([1.0001, -0.0001, NaN, Infinity])("a fraction of %s", (fraction) => {
    expect(() => parts(substance("a", fraction))).toThrow(
      new RangeError(`The mass fraction of a is ${fraction}; right would be 0 <= fraction <= 1`),
    );
  });

  test("a range turned round, or reaching over the whole", () => {
    expect(() => parts(substance("a", [0.2, 0.1]))).toThrow(
      new RangeError("The lower end of mass fraction of a is 0.2; right would be lower <= 0.1"),
    );
    expect(() => parts(substance("a", [0.2, 1.1]))).toThrow("The mass fraction of a is 1.1");
  });

  test("a total over 1; ranges are held by their lower ends", () => {
    expect(() => parts(substance("a", 0.6), substance("b", 0.41))).toThrow(
      /The total of mass fractions is 1\.01; right would be total <= 1/,
    );
    expect(() => parts(substance("a", [0.5, 0.7]), substance("b", [0.4, 0.6]))).not.toThrow();
    expect(() =>
      parts(substance("a", 0.1), substance("b", 0.2), substance("c", 0.7)),
    ).not.toThrow();
    // Shares to three digits: each may be half of the third too much.
    expect(() =>
      parts(substance("a", 0.334), substance("b", 0.333), substance("c", 0.334)),
    ).not.toThrow();
    expect(() => parts(substance("a", 0.5), substance("b", 0.502))).toThrow(/ is 1\.002;/);
  });

  test("an unknown code stops nothing: it is kept as stated", () => {
    expect(parts(substance("a", 1, "H305x", "H302")).atMost).toMatchObject([
      { unread: ["H305x"], classifications: [{ statement: "H302" }] },
    ]);
  });

  test("a limit on a metal whose share is not known", () => {
    expect(() => parts(substance("glaze", 0.1, { statement: "H360D", countedAs: "lead" }))).toThrow(
      new RangeError(
        "The share of lead in glaze is not stated; right would be a mass fraction, because H360D counts the metal",
      ),
    );
  });

  test.each([-1e-9, 1 + 1e-9, -0.1, 1.1, NaN])("a share of metal of %s", (lead) => {
    expect(() => parts({ ...substance("a", 1), metals: { lead } })).toThrow(
      new RangeError(`The share of lead in a is ${lead}; right would be 0 <= share <= 1`),
    );
  });
});

test.each([0, 1])("a share of metal of %i is none, or all of it", (lead) => {
  expect(parts({ ...substance("a", 1), metals: { lead } }).atMost).toHaveLength(1);
});

describe("parts", () => {
  test("the same ingredient twice is one, with both fractions", () => {
    const { atMost } = parts(leadCarbonate(0.1), oil(0.7), leadCarbonate([0.1, 0.2]));
    expect(atMost.map(({ slug, massFraction, stated }) => [slug, massFraction, stated])).toEqual([
      ["lead-carbonate", 0.30000000000000004, [0.2, 0.30000000000000004]],
      ["linseed-oil", 0.7, 0.7],
    ]);
  });

  test("what is missing is said, from the upper ends", () => {
    expect(parts(oil([0.5, 0.9])).unaccounted).toBeCloseTo(0.1, 12);
    expect(parts(oil(1)).unaccounted).toBe(0);
  });
});

describe("dilutedIngredients", () => {
  test("multiplies fractions, and ranges end by end", () => {
    expect(dilutedIngredients([oil(0.5)], 0.4)[0]?.massFraction).toBeCloseTo(0.2, 12);
    expect(dilutedIngredients([oil([0.1, 0.5])], [0.2, 0.4])[0]?.massFraction).toEqual([
      expect.closeTo(0.02, 12),
      expect.closeTo(0.2, 12),
    ]);
  });

  test.each([1.1, -1, NaN])("refuses a share of %s", (share) => {
    expect(() => dilutedIngredients([oil(1)], share)).toThrow(
      new RangeError(`The mass fraction is ${share}; right would be 0 <= fraction <= 1`),
    );
  });
});
