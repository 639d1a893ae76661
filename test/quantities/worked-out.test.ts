import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  inputsOf,
  isFigure,
  notStated,
  sourceFigure,
  weakestRoot,
  type Figure,
  type RootStanding,
} from "../../lib/quantities/figure.ts";
import {
  classifiedFigure,
  derivedFigure,
  type Method,
} from "../../lib/quantities/derived-figure.ts";
import type { Quantity } from "../../lib/quantities/interval.ts";

const root = (standing: RootStanding, value: Quantity, uncertainty?: number): Figure<Quantity> =>
  sourceFigure(standing, value, { unit: "g/cm3", method: "weighed", uncertainty, inputs: [] });
const METHOD = { name: "sum", unit: "g/cm3" } as const;

describe("derivedFigure", () => {
  test("gives value, inputs and the weakest root of what went in", () => {
    const [one, other] = [root("measured", 2), root("stated", 3)];
    const sum = derivedFigure(METHOD, { a: one, b: other }, ({ a, b }) => a + b);
    expect(inputsOf(sum)).toEqual([one, other]);
    expect(sum).toEqual({
      standing: "derived",
      value: 5,
      unit: "g/cm3",
      method: "sum",
      restsOn: "stated",
    });
  });

  test("spreads absence, with its reason and what is wanting", () => {
    const missing = notStated("no density recorded", ["pigments.lamp-black.densityGPerCm3"]);
    const sum = derivedFigure(METHOD, { a: root("measured", 2), b: missing }, ({ a, b }) => a + b);
    expect(sum).toEqual({
      standing: "not stated",
      reason: "no density recorded",
      wanting: ["pigments.lamp-black.densityGPerCm3"],
    });
  });

  test("says once what two inputs want alike", () => {
    const one = notStated("no density recorded", ["density"]);
    const both = notStated("no oil recorded; no density recorded", ["oil", "density"]);
    expect(derivedFigure(METHOD, { a: one, b: both }, ({ a, b }) => a + b)).toEqual({
      standing: "not stated",
      reason: "no density recorded; no oil recorded",
      wanting: ["density", "oil"],
    });
  });

  // By hand: 2.05 x 10 = 20.5, give or take 2.05 x 1 by the one and (21 - 20)/2 by the other, which as a range is .5/sqrt 3.
  test("a range that moves the figure less than its uncertainties do becomes its middle with both, where that is asked for", () => {
    const of = (b: Quantity, method: Method = METHOD): Figure<Quantity> =>
      derivedFigure(
        method,
        { a: root("measured", 10, 1), b: root("estimated", b) },
        ({ a, b: times }) => a * times,
      );
    const telling = { ...METHOD, middleOfNarrow: true } as const;
    const narrow = of([2, 2.1], telling);
    expect(narrow).toMatchObject({ value: 20.5, standing: "derived", restsOn: "estimated" });
    expect("uncertainty" in narrow ? narrow.uncertainty : NaN).toBeCloseTo(2.0702, 4);
    expect(of([2, 2.1])).toMatchObject({ value: [20, 21] });
    const wide = of([1, 3], telling);
    expect(wide).toMatchObject({ value: [10, 30] });
    expect(wide).not.toHaveProperty("uncertainty");
  });

  test("takes an estimate through at both of its ends, whichever way the equation runs", () => {
    const difference = derivedFigure(
      METHOD,
      { a: root("measured", 10), b: root("estimated", [2, 3]) },
      ({ a, b }) => a - b,
    );
    expect(difference).toMatchObject({ value: [7, 8], standing: "derived", restsOn: "estimated" });
  });

  test("a rule of thumb makes an estimate of measured figures", () => {
    const figure = derivedFigure(
      { ...METHOD, standing: "estimated", source: "practice-formulation" },
      { a: root("measured", 1) },
      ({ a }) => a,
    );
    expect(figure).toMatchObject({
      standing: "estimated",
      restsOn: "estimated",
      source: "practice-formulation",
    });
  });

  test("adds uncertainties in quadrature: 3 and 4 give 5 (derived: GUM, law of propagation for a sum)", () => {
    const sum = derivedFigure(
      METHOD,
      { a: root("measured", 10, 3), b: root("measured", 20, 4) },
      ({ a, b }) => a + b,
    );
    expect(sum).toMatchObject({ value: 30, uncertainty: 5 });
  });

  test("never leaves the hull of a monotone equation's ends", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        (one, other) => {
          const range = [Math.min(one, other), Math.max(one, other)] as const;
          const figure = derivedFigure(METHOD, { a: root("estimated", range) }, ({ a }) => 1 / a);
          expect(figure).toMatchObject({ value: [1 / range[1], 1 / range[0]] });
        },
      ),
      { seed: 1, numRuns: 100 },
    );
  });
});

describe("classifiedFigure", () => {
  test("chooses a word from values as they are, ranges included", () => {
    const word = classifiedFigure(
      { name: "class", unit: "" },
      { days: root("estimated", [2, 5]) },
      ({ days }) => (Array.isArray(days) ? "range" : "number"),
    );
    expect(word).toMatchObject({
      value: "range",
      standing: "derived",
      restsOn: "estimated",
    });
  });
});

test.each([
  [[], "measured"],
  [["measured", "stated"], "stated"],
  [["stated", "estimated", "measured"], "estimated"],
] as const)("the weakest root of %j is %s", (roots, weakest) => {
  expect(weakestRoot(roots)).toBe(weakest);
});

test("a figure is made and never put together: a copy, a cast and a literal are none", () => {
  const figure = root("measured", 2);
  const copy = { ...figure } as Figure<Quantity>;
  expect([isFigure(figure), isFigure(copy), isFigure(JSON.parse(JSON.stringify(figure)))]).toEqual([
    true,
    false,
    false,
  ]);
  expect(() => inputsOf(copy)).toThrow("A figure put together by hand is none");
});
