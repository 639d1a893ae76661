import { describe, expect, test } from "vitest";
import { densityContradiction, measuredDensity } from "../../lib/formulation/measured-density.ts";

describe("density of a paint as its lots were weighed", () => {
  // Worked by hand: the middle one, of an even number the mean of the two middle ones.
  test.each([
    [[1.34], 1.34],
    [[1.3, 1.5, 1.31], 1.31],
    [[1.342, 1.346, 1.333, 1.338], 1.34],
    [[1.514, 1.522], 1.518],
  ])("median of %j", (lots, median) => {
    expect(measuredDensity(lots).densityGPerCm3).toBeCloseTo(median, 12);
  });

  test("lots differ by the root of their mean square from the mean, one less counted; one by nothing known", () => {
    // Mean 1.33975: squares 2.25^2 + 6.25^2 + 6.75^2 + 1.75^2 = 92.75 of 10^-6, over 3.
    expect(measuredDensity([1.342, 1.346, 1.333, 1.338]).spreadGPerCm3).toBeCloseTo(0.00556, 5);
    expect(measuredDensity([1.34])).toEqual({ densityGPerCm3: 1.34 });
  });

  test("refuses no lot, and a density that is none", () => {
    expect(() => measuredDensity([])).toThrow("No lot was weighed; right would be at least one");
    for (const density of [0, -1, NaN])
      expect(() => measuredDensity([1.3, density])).toThrow("density of a lot");
  });
});

describe("lots beside what was reckoned, at a tolerance of 2 %", () => {
  // 1.4 less 2 % is 1.372, and with it 1.428.
  test.each([
    [1.372, undefined],
    [1.3719, "lots-lighter-than-reckoned"],
    [1.428, undefined],
    [1.4281, "lots-heavier-than-reckoned"],
  ])("%d against 1.4: %s", (measured, rule) => {
    expect(densityContradiction(measured, 1.4, 2, 2)?.rule).toBe(rule);
  });

  test("of an estimate the nearer end counts", () => {
    expect(densityContradiction(1.6, [1.63, 1.74], 2, 2)).toBeUndefined();
    expect(densityContradiction(1.59, [1.63, 1.74], 2, 2)?.rule).toBe("lots-lighter-than-reckoned");
    expect(densityContradiction(1.78, [1.63, 1.74], 2, 2)?.rule).toBe("lots-heavier-than-reckoned");
  });
});
