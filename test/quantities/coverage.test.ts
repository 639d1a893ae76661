import { expect, test } from "vitest";
import { NINETY_PERCENT } from "../../lib/quantities/coverage.ts";

/** Error function by its series: Abramowitz and Stegun (1964), 7.1.5, from memory. */
function erf(x: number): number {
  let [term, sum] = [x, x];
  for (let n = 1; n < 60; n++) {
    term *= (-x * x) / n;
    sum += term / (2 * n + 1);
  }
  return (2 / Math.sqrt(Math.PI)) * sum;
}

test("so many standard deviations hold 90 % of a normal distribution, as one holds 68 %", () => {
  expect(erf(NINETY_PERCENT / Math.SQRT2)).toBeCloseTo(0.9, 4);
  expect(erf(1 / Math.SQRT2)).toBeCloseTo(0.6827, 4);
});
