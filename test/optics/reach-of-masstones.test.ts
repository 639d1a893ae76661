import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import { spectrumLab } from "../../lib/colorimetry/spectrum-lab.ts";
import { masstoneReflectance } from "../../lib/optics/kubelka-munk.ts";
import { nearestBetween } from "../../lib/optics/mixtures/reach-of-masstones.ts";
import type { Spectrum } from "../../lib/quantities/spectrum.ts";

const GRID = { startNm: 400, stepNm: 10, count: 31 };
function spectrum(reflectance: (i: number) => number): Spectrum {
  return { grid: GRID, values: Array.from({ length: GRID.count }, (_, i) => reflectance(i)) };
}
const [BLACK, WHITE] = [spectrum(() => 0.04), spectrum(() => 0.8)];

describe("the nearest that masstones give", () => {
  test("of one paint is that paint, whatever is asked for", () => {
    for (const lab of [
      { L: 90, a: 0, b: 0 },
      { L: 20, a: 40, b: -30 },
    ])
      expect(deltaE00(nearestBetween([WHITE], lab), spectrumLab(WHITE))).toBeLessThan(1e-9);
  });

  // CIE 15:2018: L* = 116 cbrt(Y/100) - 16; of a flat .04 it is 23.7, of a flat .8 it is 91.7.
  test.each([
    [99, 91.68],
    [91, 91],
    [50, 50],
    [24, 24],
    [5, 23.67],
  ])("of a black and a white: grey L* %d is met at L* %d", (L, met) => {
    const found = nearestBetween([BLACK, WHITE], { L, a: 0, b: 0 });
    expect(Math.abs(found.L - met)).toBeLessThan(0.6);
  });

  test("no red comes of a green and a blue", () => {
    const green = spectrum((i) => (i > 8 && i < 18 ? 0.3 : 0.05));
    const blue = spectrum((i) => (i < 9 ? 0.3 : 0.05));
    const red = { L: 45, a: 50, b: 30 };
    expect(deltaE00(nearestBetween([green, blue], red), red)).toBeGreaterThan(20);
  });

  // duncan-1940: K/S = Sum c_i K_i / Sum c_i S_i, so no mixture lies outside, whatever its parts and strengths.
  test("every mixture by Kubelka and Munk lies within", () => {
    const theta = fc.array(fc.double({ min: 0.001, max: 20, noNaN: true }), {
      minLength: GRID.count,
      maxLength: GRID.count,
    });
    const strength = fc.double({ min: 0.05, max: 20, noNaN: true });
    fc.assert(
      fc.property(theta, theta, strength, (one, other, S) => {
        const read = (of: readonly number[]): Spectrum =>
          spectrum((i) => masstoneReflectance(of[i] ?? NaN));
        const mixed = one.map((own, i) => (own + S * (other[i] ?? NaN)) / (1 + S));
        const lab = spectrumLab(read(mixed));
        return deltaE00(nearestBetween([read(one), read(other)], lab), lab) < 0.6;
      }),
      { seed: 14, numRuns: 60 },
    );
  });

  test("without a masstone, or of several grids, nothing is reckoned", () => {
    const lab = { L: 50, a: 0, b: 0 };
    expect(() => nearestBetween([], lab)).toThrow("count of masstones");
    const coarser = {
      grid: { ...GRID, stepNm: 20, count: 16 },
      values: BLACK.values.slice(0, 16),
    };
    expect(() => nearestBetween([BLACK, coarser], lab)).toThrow(
      "Masstones are on several grids; right would be one",
    );
  });
});
