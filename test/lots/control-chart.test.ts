import { describe, expect, test } from "vitest";
import { controlChart } from "../../lib/lots/control-chart.ts";
import { replicateSpread } from "../../lib/lots/replicate-spread.ts";
import { checkTable } from "../support/checks.ts";

/**
 * Twenty hardness readings. The exercise prints their moving ranges, their sum 1061 and the limits; the readings
 * themselves are from memory, and held below against both.
 */
const HARDNESS = [51, 52, 54, 55, 55, 51, 52, 50, 51, 56, 51, 57, 58, 50, 53, 52, 54, 50, 56, 53];
const PRINTED_RANGES = [1, 2, 1, 0, 4, 1, 2, 1, 5, 5, 6, 1, 8, 3, 1, 2, 4, 6, 3];
const chart = controlChart(HARDNESS, "strength");

test("the readings are those of the exercise: sum and moving ranges as printed", () => {
  expect(HARDNESS.reduce((sum, value) => sum + value, 0)).toBe(1061);
  expect(chart.movingRanges).toEqual(PRINTED_RANGES);
});

const EXERCISE = {
  basis: "published",
  source: "montgomery-runger",
  locator: "15-4, exercise 17",
} as const;
checkTable(
  "individuals and moving range",
  (what: "mean" | "meanMovingRange" | "low" | "high" | "movingRangeLimit") =>
    what === "low" ? chart.limits[0] : what === "high" ? chart.limits[1] : chart[what],
  [
    { ...EXERCISE, input: "mean", expected: 53.05, tolerance: 0.005 },
    { ...EXERCISE, input: "meanMovingRange", expected: 2.947, tolerance: 0.0005 },
    { ...EXERCISE, input: "high", expected: 60.888, tolerance: 0.0015 },
    { ...EXERCISE, input: "low", expected: 45.212, tolerance: 0.0015 },
    { ...EXERCISE, input: "movingRangeLimit", expected: 9.628, tolerance: 0.0015 },
  ],
);

/** Ten flow rates, of the section on individuals charts. */
const FLOW = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
checkTable("flow rates", (at: 0 | 1) => controlChart(FLOW, "strength").limits[at], [
  {
    basis: "memory",
    source: "nist-handbook",
    locator: "6.3.2.2",
    input: 0,
    expected: 45.8159,
    tolerance: 0.005,
  },
  {
    basis: "memory",
    source: "nist-handbook",
    locator: "6.3.2.2",
    input: 1,
    expected: 55.8041,
    tolerance: 0.005,
  },
]);

describe("signals", () => {
  const rules = (values: readonly number[]): readonly string[] =>
    controlChart(values, "strength").signals.map(({ rule }) => rule);

  test("none of the exercise: no point beyond the limits, no run", () =>
    expect(rules(HARDNESS)).toEqual([]));

  test("six that rise are a drift, five are none; six that fall too", () => {
    expect(rules([100, 101, 102, 103, 104, 105])).toEqual(["lots-drifting-up"]);
    expect(rules([100, 101, 102, 103, 104])).toEqual([]);
    expect(rules([100, 99, 98, 97, 96, 95])).toEqual(["lots-drifting-down"]);
    expect(
      controlChart([99, 100, 101, 102, 103, 104, 105, 104.5], "strength").signals,
    ).toContainEqual(
      expect.objectContaining({
        rule: "lots-drifting-up",
        values: { of: "strength", from: 0, at: 6, count: 7 },
      }),
    );
  });

  test("eight above the mean are told, seven are not", () => {
    const above = (count: number): number[] => [
      ...Array.from({ length: count }, (_, i) => 101 + 3 * (i % 2)),
      ...Array.from({ length: count }, (_, i) => 96 + 3 * (i % 2)),
    ];
    expect(rules(above(8))).toEqual(["lots-all-above", "lots-all-below"]);
    expect(rules(above(7))).toEqual([]);
  });

  test("one that jumps among many that do not lies beyond the limits", () => {
    const values = Array.from({ length: 20 }, (_, i) => 100 + (i % 2) * 0.5).with(12, 112);
    expect(controlChart(values, "strength").signals[0]).toMatchObject({
      rule: "lot-beyond-limits",
      values: { of: "strength", at: 12, value: 112 },
    });
  });

  test("two neighbours further apart than 3.267 mean ranges are told, at the later of them", () => {
    const values = Array.from({ length: 20 }, (_, i) => 100 + (i % 2) * 0.5).with(12, 112);
    const [signal] = controlChart(values, "strength").signals.filter(
      ({ rule }) => rule === "lots-far-apart",
    );
    expect(signal?.values).toMatchObject({ of: "strength", at: 12, range: 11.5 });
    expect(rules(HARDNESS)).not.toContain("lots-far-apart");
  });

  test("a difference has no limit below nought, a strength may", () => {
    const values = [0.1, 0.9, 0.2, 0.8];
    expect(controlChart(values, "letDown").limits[0]).toBe(0);
    expect(controlChart(values, "strength").limits[0]).toBeLessThan(0);
  });

  test("fewer than twenty give provisional limits, one gives none", () => {
    expect(chart.isProvisional).toBe(false);
    expect(controlChart(HARDNESS.slice(1), "strength").isProvisional).toBe(true);
    expect(() => controlChart([1], "strength")).toThrow("count of values");
    expect(() => controlChart([1, NaN], "strength")).toThrow("value of a chart");
  });
});

test("replicates are pooled over lots by degrees of freedom: sets 1, 3 and 10, 10, 13 have (2 + 6) / 3", () => {
  expect(replicateSpread([[1, 3], [10, 10, 13], [7]])).toEqual({
    standardDeviation: Math.sqrt(8 / 3),
    degrees: 3,
  });
  expect(replicateSpread([[7], []])).toBeUndefined();
});
