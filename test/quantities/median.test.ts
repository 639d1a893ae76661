import { expect, test } from "vitest";
import { median } from "../../lib/quantities/median.ts";

test("is the middle value by size, of an even count the mean of the two in the middle", () => {
  expect(median([10, 2, 9])).toBe(9);
  expect(median([10, 2, 9, 1])).toBe(5.5);
  expect(median(Float64Array.of(-0.2, -0.1, 3))).toBe(-0.1);
  expect(median([4])).toBe(4);
});

test("none of nothing", () => {
  expect(() => median([])).toThrow(RangeError);
});
