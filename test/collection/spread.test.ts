import { describe, expect, test } from "vitest";
import { spreadOf } from "../../lib/collection/spread.ts";
import type { Quantity } from "../../lib/quantities/interval.ts";

/**
 * Basis: derived. By hand from the definition of sample quantile 1 of Hyndman and Fan (Sample
 * quantiles in statistical packages, The American Statistician 50, 1996), recalled without the
 * text: of n figures in order the one at ceil(p n).
 */
const ROWS: readonly (readonly [readonly Quantity[], readonly number[]])[] = [
  // 0.25 x 8 = 2, 0.5 x 8 = 4, 0.75 x 8 = 6
  [
    [80, 10, 70, 20, 60, 30, 50, 40],
    [10, 20, 40, 60, 80],
  ],
  // 0.25 x 5 = 1.25, 2.5 and 3.75: the second, third and fourth
  [
    [5, 1, 4, 2, 3],
    [1, 2, 3, 4, 5],
  ],
  [[7], [7, 7, 7, 7, 7]],
  // Middles 3, 6 and 15; the ends are those of the estimates.
  [
    [[2, 4], 6, [10, 20]],
    [2, 3, 6, 15, 20],
  ],
];

describe("the spread of figures", () => {
  test.each(ROWS)("of %j is %j", (figures, expected) => {
    const spread = spreadOf(figures);
    expect(spread?.count).toBe(figures.length);
    expect([
      spread?.lowest,
      spread?.lowerQuartile,
      spread?.median,
      spread?.upperQuartile,
      spread?.highest,
    ]).toEqual(expected);
  });

  test("of none is none", () => expect(spreadOf([])).toBeUndefined());

  test("stands still when a figure moves between two quartiles", () => {
    expect(spreadOf([1, 2, 3, 4, 5, 6, 7, 8.5])).toEqual({
      ...spreadOf([1, 2, 3, 4, 5, 6, 7, 8]),
      highest: 8.5,
    });
    expect(spreadOf([1, 2, 3, 4, 5, 6.5, 7, 8])?.median).toBe(4);
    expect(spreadOf([1, 2, 3.3, 4, 5, 6, 7, 8])).toEqual(spreadOf([1, 2, 3, 4, 5, 6, 7, 8]));
  });
});
