import fc from "fast-check";
import { expect, test } from "vitest";
import { percentToFactor, writtenNumber } from "../../../lib/records/readings/written-number.ts";

test.each([
  ["0", 0],
  ["4.25", 4.25],
  ["4,25", 4.25],
  [".5", 0.5],
  [",5", 0.5],
  ["5.", 5],
  ["+1", 1],
  ["-0.005", -0.005],
  ["1e-3", 0.001],
  ["1,5E+02", 150],
  ["", undefined],
  [" 1", undefined],
  ["1.234,5", undefined],
  ["1 000", undefined],
  ["NaN", undefined],
  ["Infinity", undefined],
  ["1e999", undefined],
  ["0x10", undefined],
  ["1_000", undefined],
  ["5%", undefined],
  ["--1", undefined],
  [".", undefined],
  ["e5", undefined],
  ["1e", undefined],
  ["9".repeat(41), undefined],
])("%j is %s", (text, number) => {
  expect(writtenNumber(text)).toBe(number);
});

test("a number with a comma is the number with a point", () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (number) => {
      expect(writtenNumber(String(number).replace(".", ","))).toBe(
        number === 0 ? Number(String(number)) : number,
      );
    }),
    { seed: 1, numRuns: 200 },
  );
});

test.each([
  [3.7, 0.037],
  [5.11, 0.0511],
  [100, 1],
  [-0.5, -0.005],
  [0, 0],
  [1e-9, 1e-11],
])("%s percent is %s", (percent, factor) => {
  expect(percentToFactor(percent)).toBe(factor);
});
