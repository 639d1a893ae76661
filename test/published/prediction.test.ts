/** Predictions held against real oil paint. Source: reconstructed-oil-paints, readings in oil-paints/. */
import { describe, expect, test } from "vitest";
import {
  blackMixtureErrors,
  covered,
  leftOutErrors,
  quantile,
  type PredictionError,
} from "./prediction-errors.ts";

const LEFT_OUT = leftOutErrors("with films");
const MIXED = blackMixtureErrors("with films");

function sizes(errors: readonly PredictionError[]): number[] {
  return errors.map(({ deltaE00 }) => deltaE00);
}

describe("a let-down left out", () => {
  const hiding = sizes(LEFT_OUT.filter(({ hides }) => hides));

  test("of a paint that hides is missed by 1.7 in the middle and 3.5 in nine of ten", () => {
    expect(hiding).toHaveLength(24);
    expect(quantile(hiding, 0.5)).toBeLessThan(1.7);
    expect(quantile(hiding, 0.9)).toBeLessThan(3.5);
  });

  test("lies within what is printed as often as is said", () => {
    expect(LEFT_OUT).toHaveLength(32);
    expect(covered(LEFT_OUT, "p68") / LEFT_OUT.length).toBeGreaterThan(0.6);
    expect(covered(LEFT_OUT, "p68") / LEFT_OUT.length).toBeLessThan(0.85);
    expect(covered(LEFT_OUT, "p90") / LEFT_OUT.length).toBeGreaterThan(0.85);
  });
});

describe("a mixture with black", () => {
  test("is worked out for every pair, and missed by 4.3 on average, 8 in nine of ten", () => {
    expect(MIXED).toHaveLength(9);
    const errors = sizes(MIXED);
    expect(errors.reduce((sum, one) => sum + one, 0) / errors.length).toBeLessThan(4.3);
    expect(quantile(errors, 0.9)).toBeLessThan(8);
  });

  test("lies within the printed 90 % in most cases", () => {
    expect(covered(MIXED, "p90") / MIXED.length).toBeGreaterThan(0.85);
  });
});
