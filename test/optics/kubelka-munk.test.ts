import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { absorptionScatteringRatio, masstoneReflectance } from "../../lib/optics/kubelka-munk.ts";
import { checkTable, type Check } from "../support/checks.ts";

const KM = {
  basis: "derived",
  source: "kubelka-munk-1931",
  locator: "K/S of an infinitely thick film",
} as const;

checkTable<number>("absorptionScatteringRatio", absorptionScatteringRatio, [
  { ...KM, input: 1, expected: 0, tolerance: 0, note: "perfect white absorbs nothing" },
  { ...KM, input: 0.8, expected: 0.025, tolerance: 1e-15, note: "0.2^2 / 1.6" },
  { ...KM, input: 0.5, expected: 0.25, tolerance: 0, note: "0.5^2 / 1" },
  { ...KM, input: 0.2, expected: 1.6, tolerance: 1e-15, note: "0.8^2 / 0.4" },
  { ...KM, input: 0.1, expected: 4.05, tolerance: 1e-15, note: "0.9^2 / 0.2" },
] satisfies Check<number, number>[]);

const SIX_DIGITS = { ...KM, tolerance: 5e-7, note: "1 + q - sqrt(q^2 + 2q), worked by hand" };
checkTable<number>("masstoneReflectance", masstoneReflectance, [
  { ...KM, input: 0, expected: 1, tolerance: 0 },
  { ...KM, input: 0.25, expected: 0.5, tolerance: 1e-15 },
  { ...KM, input: 4, expected: 5 - Math.sqrt(24), tolerance: 1e-15, note: "1 + 4 - sqrt(16 + 8)" },
  { ...SIX_DIGITS, input: 0.001, expected: 0.956267 },
  { ...SIX_DIGITS, input: 0.01, expected: 0.868226 },
  { ...SIX_DIGITS, input: 0.05, expected: 0.729844 },
  { ...SIX_DIGITS, input: 0.1, expected: 0.641742 },
  { ...SIX_DIGITS, input: 0.5, expected: 0.381966 },
  { ...SIX_DIGITS, input: 1, expected: 0.267949 },
  { ...SIX_DIGITS, input: 2, expected: 0.171573 },
  { ...SIX_DIGITS, input: 5, expected: 0.08392 },
  { ...SIX_DIGITS, input: 10, expected: 0.045549 },
  { ...SIX_DIGITS, input: 50, expected: 0.009805 },
  {
    ...KM,
    input: 1e8,
    expected: 5e-9,
    tolerance: 1e-16,
    note: "R tends to 1 / (2 K/S) in a deep black",
  },
] satisfies Check<number, number>[]);

describe("the pair", () => {
  test.each([1, 0.99, 0.5, 0.04, 1e-3, 1e-9])("round-trips R = %s", (R) => {
    expect(masstoneReflectance(absorptionScatteringRatio(R)) / R).toBeCloseTo(1, 7);
  });

  test("round-trips every reflectance", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1, noNaN: true }), (R) => {
        expect(Math.abs(masstoneReflectance(absorptionScatteringRatio(R)) - R)).toBeLessThan(1e-7);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  test("darker is always a higher K/S", () => {
    const ratios = Array.from({ length: 100 }, (_, i) =>
      absorptionScatteringRatio((100 - i) / 100),
    );
    expect(ratios).toEqual(ratios.toSorted((a, b) => a - b));
  });
});

describe("outside the domain", () => {
  test.each([0, -0.1, 1.0001, NaN, Infinity])(
    "absorptionScatteringRatio(%s) names value and limits",
    (R) => {
      expect(() => absorptionScatteringRatio(R)).toThrow(
        new RangeError(`The internal reflectance is ${R}; right would be 0 < R <= 1`),
      );
    },
  );

  test.each([-1, NaN, Infinity])("masstoneReflectance(%s) names value and limits", (ratio) => {
    expect(() => masstoneReflectance(ratio)).toThrow(
      new RangeError(`The K/S is ${ratio}; right would be 0 <= K/S < Infinity`),
    );
  });
});
