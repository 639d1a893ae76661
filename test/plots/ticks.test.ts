import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { roundTicks, ticksEvery, tickText } from "../../lib/plots/ticks.ts";

describe("roundTicks", () => {
  // By hand: the step of 1, 2 or 5 times a power of ten nearest by ratio to length / wanted.
  test.each([
    { domain: [0, 1], wanted: 5, values: [0, 0.2, 0.4, 0.6, 0.8, 1], decimals: 1 },
    { domain: [0, 0.1], wanted: 5, values: [0, 0.02, 0.04, 0.06, 0.08, 0.1], decimals: 2 },
    { domain: [0, 180], wanted: 5, values: [0, 50, 100, 150], decimals: 0 },
    { domain: [400, 700], wanted: 6, values: [400, 450, 500, 550, 600, 650, 700], decimals: 0 },
    { domain: [-20, 20], wanted: 4, values: [-20, -10, 0, 10, 20], decimals: 0 },
    { domain: [3, 7], wanted: 4, values: [3, 4, 5, 6, 7], decimals: 0 },
    { domain: [0, 4e-4], wanted: 4, values: [0, 1e-4, 2e-4, 3e-4, 4e-4], decimals: 4 },
  ] as const)("$domain in about $wanted", ({ domain, wanted, values, decimals }) => {
    expect(roundTicks(domain, wanted)).toEqual({ values, decimals });
  });

  test("lie inside, evenly, and are told apart by their decimals", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        fc.double({ min: 1e-3, max: 1e5, noNaN: true }),
        fc.integer({ min: 2, max: 12 }),
        (low, length, wanted) => {
          const { values, decimals } = roundTicks([low, low + length], wanted);
          const slack = length * 1e-6;
          expect(
            values.every((value) => value >= low - slack && value <= low + length + slack),
          ).toBe(true);
          expect(values.length).toBeGreaterThanOrEqual(1);
          expect(values.length).toBeLessThanOrEqual(2 * wanted + 2);
          expect(new Set(values.map((value) => tickText(value, decimals))).size).toBe(
            values.length,
          );
        },
      ),
      { seed: 1, numRuns: 200 },
    );
  });

  test.each([
    [[1, 1], 5],
    [[2, 1], 5],
    [[0, NaN], 5],
    [[0, Infinity], 5],
  ] as const)("refuses an axis %s", (domain, wanted) => {
    expect(() => roundTicks(domain, wanted)).toThrow(/The length of an axis/);
  });
  test.each([0.99, NaN])("refuses %s intervals", (wanted) => {
    expect(() => roundTicks([0, 1], wanted)).toThrow(/The count of intervals/);
  });
  test.each([0, -1, NaN])("ticksEvery refuses a step of %s", (step) => {
    expect(() => ticksEvery(step, [0, 1])).toThrow(/The step between ticks/);
  });
});

describe("tickText", () => {
  test.each([
    [0.5, 1, "0.5"],
    [0.5, 2, "0.50"],
    [-10, 0, "\u221210"],
    [0, 1, "0.0"],
    [-0.001, 1, "0.0"], // no minus before a zero
  ])("%s at %s decimals", (value, decimals, text) => {
    expect(tickText(value, decimals)).toBe(text);
  });
});
