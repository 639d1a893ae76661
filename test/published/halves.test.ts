/** Two halves of one drawdown of real oil paint, read in one sitting. Source: reconstructed-oil-paints. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { PLACE_TO_PLACE } from "../../lib/colorimetry/lab-uncertainty.ts";
import { inside } from "./figure-errors.ts";
import { halfErrors, leastPlace, nestedHalves } from "./half-errors.ts";

test("what a place does is the least that holds the halves of all paints", () => {
  expect(halfErrors(PLACE_TO_PLACE)).toHaveLength(3 * 22);
  expect(leastPlace()).toBe(PLACE_TO_PLACE);
});

test("chosen without the judged paint, 68 and 95 % of the halves lie within what is told of them", () => {
  const { count, inside68, inside95 } = nestedHalves();
  expect(inside68 / count).toBeGreaterThan(0.6);
  expect(inside68 / count).toBeLessThan(0.8);
  expect(inside95 / count).toBeGreaterThan(0.92);
  expect(readFileSync("README.md", "utf8")).toContain(
    `chosen for each paint without that paint, ${inside68} and ${inside95} of ${count} lie inside 68 and 95 %`,
  );
});

test("the instrument alone would hold too few: the halves differ by more than it errs by", () => {
  expect(inside(halfErrors(0), 1)).toBeLessThan(0.6);
  expect(inside(halfErrors(0), 1.96)).toBeLessThan(0.75);
});
