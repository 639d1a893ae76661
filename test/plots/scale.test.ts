import { describe, expect, test } from "vitest";
import { evenScale, smallestHolding, smallestRoundHolding } from "../../lib/plots/scale.ts";

describe("evenScale", () => {
  test("puts the ends at the ends and the middle in the middle, upwards or downwards", () => {
    const scale = evenScale([400, 700], [30, 330]);
    expect([400, 550, 700].map(scale)).toEqual([30, 180, 330]);
    const up = evenScale([-20, 20], [200, 0]);
    expect([-20, 0, 20].map(up)).toEqual([200, 100, 0]);
  });
  test.each([[[1, 1]], [[2, 1]], [[0, NaN]], [[0, Infinity]]] as const)("refuses %s", (domain) => {
    expect(() => evenScale(domain, [0, 1])).toThrow(/The axis from, to/);
  });
});

describe("smallestHolding", () => {
  test.each([
    [0, 0.1],
    [0.1, 0.1],
    [0.1001, 1],
    [1, 1],
    [1.0001, 1.2],
    [1.2, 1.2],
  ])("%s -> %s", (value, step) => {
    expect(smallestHolding([0.1, 1, 1.2], value, "reflectance factor")).toBe(step);
  });
  test.each([1.2001, NaN])("refuses %s", (value) => {
    expect(() => smallestHolding([0.1, 1, 1.2], value, "reflectance factor")).toThrow(
      `The reflectance factor is ${value}; right would be at most 1.2`,
    );
  });
});

describe("smallestRoundHolding", () => {
  test.each([
    [1, 1],
    [1.01, 2],
    [2, 2],
    [2.1, 5],
    [5, 5],
    [5.1, 10],
    [52, 100],
    [0.14, 0.2],
    [0.3, 0.5],
    [3e-7, 5e-7],
    [0.1 + 0.2 - 0.1, 0.2],
  ])("%s -> %s", (value, step) => {
    expect(smallestRoundHolding(value, "coefficient")).toBe(step);
  });
  test.each([0, -1, NaN, Infinity])("refuses %s", (value) => {
    expect(() => smallestRoundHolding(value, "coefficient")).toThrow(/The coefficient/);
  });
});
