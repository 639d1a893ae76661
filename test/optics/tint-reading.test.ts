import { describe, expect, test } from "vitest";
import {
  absorptionSlope,
  keptRatio,
  keptReflectance,
  scatteringSlope,
  shares,
} from "../../lib/optics/tints/tint-reading.ts";

/**
 * basis: practice, no source: instruments tell reflectance to .01 %, so that no reading is darker than that; no white that
 * is made reflects all but a millionth.
 */
describe("an internal reflectance that a fit goes by is kept off black and white", () => {
  test.each([
    ["a reading that the surface alone would give", 0, 1e-4],
    ["one below that, by noise", -0.01, 1e-4],
    ["just below .01 %", 0.99e-4, 1e-4],
    ["just above .01 %", 1.01e-4, 1.01e-4],
    ["a middle one", 0.5, 0.5],
    ["just below the palest", 1 - 2e-6, 1 - 2e-6],
    ["white", 1, 1 - 1e-6],
    ["one above white, by noise", 1.02, 1 - 1e-6],
  ])("%s: %d as %d", (_, internal, kept) => {
    expect(keptReflectance(internal)).toBe(kept);
  });

  // basis: derived, kubelka-munk-1931: K/S = (1 - R)^2 / 2R; .9999^2 / .0002, .5^2 / 1, 1e-12 / 1.999998.
  test.each([
    [0, 4999.00005],
    [0.5, 0.25],
    [1, 5.000005e-13],
  ])("K/S of %d is %d", (internal, ratio) => {
    expect(keptRatio(internal) / ratio).toBeCloseTo(1, 6);
  });
});

// basis: derived: K/S = k/s with k + s = 1 gives k = (1 - R)^2 / (1 + R^2); its slopes by small steps to either side.
describe("shares of absorption and scattering", () => {
  test.each([
    [0, 1, 0],
    [0.5, 0.2, 0.8],
    [1, 0, 1],
  ])("of R %d are %d and %d", (rho, k, s) => {
    expect(shares(rho).k).toBeCloseTo(k, 12);
    expect(shares(rho).s).toBeCloseTo(s, 12);
  });

  test.each([0.001, 0.05, 0.3, 0.7, 0.95])("go with R as their slopes say, at %d", (rho) => {
    const step = 1e-6 * rho;
    const [below, above] = [shares(rho - step), shares(rho + step)];
    const ofLogarithm = (share: "k" | "s"): number =>
      (Math.log(above[share] / below[share]) * rho) / (2 * step);
    expect((above.s - below.s) / (2 * step)).toBeCloseTo(shares(rho).slope, 6);
    expect(ofLogarithm("k")).toBeCloseTo(absorptionSlope(rho), 6);
    expect(ofLogarithm("s")).toBeCloseTo(scatteringSlope(rho), 6);
  });
});
