/** The demonstration's predictions held against what the script of its readings knows to be true. */
import { expect, test } from "vitest";
import { RECORDS } from "../support/demonstration.ts";
import { ladderTruthErrors } from "./demonstration-errors.ts";

test("the true let-downs lie within the printed 68 and 90 % about as often as is said", () => {
  const errors = ladderTruthErrors(RECORDS);
  const inside = (printed: "p68" | "p90"): number =>
    errors.filter(({ deltaE00, uncertainty }) => deltaE00 <= uncertainty[printed]).length /
    errors.length;
  expect(errors.length).toBeGreaterThan(250);
  expect(inside("p68")).toBeGreaterThan(0.6);
  expect(inside("p68")).toBeLessThan(0.85);
  expect(inside("p90")).toBeGreaterThan(0.85);
  const printed = errors.map(({ uncertainty }) => uncertainty.p68).toSorted((a, b) => a - b);
  expect(printed[errors.length >> 1]).toBeLessThan(0.6);
}, 60_000);
