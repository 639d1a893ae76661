import { describe, expect, test } from "vitest";
import { massAndVolumeRuling, oilGPer100cm3 } from "../../lib/formulation/oil-by-volume.ts";

describe("oilGPer100cm3", () => {
  // Reference arithmetic: 75 g/100 g at 1.8 g/cm3 and 25 at 4.7 take 135 and 118 g of oil per 100 cm3.
  test("75 g to 100 g at 1.8 g/cm3 are 135 g to 100 cm3", () =>
    expect(oilGPer100cm3(75, 1.8)).toBeCloseTo(135, 12));
  test("25 g to 100 g at 4.7 g/cm3 are 117.5, printed 118", () =>
    expect(oilGPer100cm3(25, 4.7)).toBeCloseTo(117.5, 12));
  test.each([
    [0, 2],
    [20, 0],
    [NaN, 2],
    [20, Infinity],
  ])("refuses %s at %s", (oil, density) =>
    expect(() => oilGPer100cm3(oil, density)).toThrow(RangeError),
  );
});

describe("massAndVolumeRuling", () => {
  test("threefold by mass, near equal by volume", () => {
    const ruling = massAndVolumeRuling(
      { oilIndexGPer100g: 75, densityGPerCm3: 1.8 },
      { oilIndexGPer100g: 25, densityGPerCm3: 4.7 },
    );
    expect(ruling.statement.rule).toBe("oil-differs-by-mass-alone");
    expect(ruling.massRatio).toBeCloseTo(3, 12);
    expect(ruling.volumeRatio).toBeCloseTo(135 / 117.5, 12);
  });
  test.each([
    // the other: oil index, density; against 20 at 4: 80 by volume
    [39.99, 4, "oil-differs-by-volume-alone"],
    [40, 3, "oil-differs-by-mass-alone"],
    [40, 3.01, "oil-differs-both-ways"],
    [39.99, 2, "oil-alike"],
    [30, 4, "oil-alike"],
    [30, 4.01, "oil-differs-by-volume-alone"],
    [20, 4, "oil-alike"],
  ])("20 at 4 against %s at %s: %s", (oilIndexGPer100g, densityGPerCm3, rule) => {
    const other = { oilIndexGPer100g, densityGPerCm3 };
    expect(
      massAndVolumeRuling({ oilIndexGPer100g: 20, densityGPerCm3: 4 }, other).statement.rule,
    ).toBe(rule);
    expect(
      massAndVolumeRuling(other, { oilIndexGPer100g: 20, densityGPerCm3: 4 }).statement.rule,
    ).toBe(rule);
  });
});
