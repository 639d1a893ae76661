import { describe, expect, test } from "vitest";
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import {
  GRID_UNCERTAINTY,
  gridUncertainty,
  labSpread,
  labUncertainty,
} from "../../lib/colorimetry/lab-uncertainty.ts";
import {
  HAND_HELD_NOISE,
  statedNoise,
  tiltAt,
  type ReadingNoise,
} from "../../lib/colorimetry/reading-noise.ts";
import { xyzToLab } from "../../lib/colorimetry/lab.ts";
import { tristimulus } from "../../lib/colorimetry/tristimulus.ts";
import type { Lab, Viewing } from "../../lib/colorimetry/viewing.ts";
import { flatSpectrum, type Spectrum } from "../../lib/quantities/spectrum.ts";
import { deviates } from "./deviates.ts";
import { CURVES, gridOf, sampled } from "./spectra.ts";

const grid = gridOf(380, 730, 10);

/** Standard deviation of Lab over many readings, each with an instrument, a reading and wavelengths of its own. */
function simulated(spectrum: Spectrum, viewing: Viewing, noise: ReadingNoise): Lab {
  const next = deviates(7);
  const labs = Array.from({ length: 2000 }, () => {
    const zero = noise.calibration.zero * next() + noise.reading.zero * next();
    const scale = noise.calibration.scale * next() + noise.reading.scale * next();
    const tilt = noise.calibration.tilt * next();
    const values = spectrum.values.map(
      (R, i) =>
        R * (1 + scale + tilt * tiltAt(spectrum.grid, i)) +
        zero +
        noise.wavelength.floor * next() +
        noise.wavelength.share * R * next(),
    );
    return xyzToLab(tristimulus({ grid: spectrum.grid, values }, viewing), viewing);
  });
  const spread = labSpread(labs);
  const ofOne = Math.sqrt(labs.length);
  return { L: spread.L * ofOne, a: spread.a * ofOne, b: spread.b * ofOne };
}

describe("labUncertainty", () => {
  test.each([
    ["red edge", "D65/10"],
    ["yellow edge", "C/2"],
    ["blue peak", "A/10"],
    ["warm black", "D65/2"],
  ] as const)("of a %s under %s agrees with simulated readings to 8 %%", (name, viewing) => {
    const spectrum = sampled(CURVES[name], grid);
    const expected = simulated(spectrum, viewing, HAND_HELD_NOISE);
    const found = labUncertainty(spectrum, viewing);
    for (const key of ["L", "a", "b"] as const) {
      expect(found[key] / Math.hypot(expected[key], gridUncertainty(grid)[key])).toBeGreaterThan(
        0.92,
      );
      expect(found[key] / Math.hypot(expected[key], gridUncertainty(grid)[key])).toBeLessThan(1.08);
    }
  });

  test("without noise it is the grid's alone, and a black's is larger than a white's", () => {
    expect(labUncertainty(flatSpectrum(grid, 0.2), "D65/10", statedNoise(0))).toEqual(
      gridUncertainty(grid),
    );
    expect(labUncertainty(flatSpectrum(grid, 0.01), "D65/10").L).toBeGreaterThan(
      2 * labUncertainty(flatSpectrum(grid, 0.9), "D65/10").L,
    );
  });
});

describe("gridUncertainty", () => {
  test.each([
    [1, 0],
    [10, 0],
    [10.01, 1],
    [20, 1],
  ])("step %s nm takes row %s", (stepNm, row) => {
    expect(gridUncertainty({ startNm: 380, stepNm, count: 40 })).toBe(GRID_UNCERTAINTY[row]?.lab);
  });

  test.each([20.1, 0, NaN])("step %s nm is refused", (stepNm) => {
    expect(() => gridUncertainty({ startNm: 380, stepNm, count: 40 })).toThrow(
      `The wavelength step is ${stepNm}`,
    );
  });

  test("a smooth spectrum at 20 nm strays from its 5 nm self by no more than three times it", () => {
    for (const curve of Object.values(CURVES)) {
      const [coarse, fine] = [gridOf(380, 780, 20), gridOf(380, 780, 5)].map((of) =>
        xyzToLab(tristimulus(sampled(curve, of), "D65/10"), "D65/10"),
      );
      if (coarse === undefined || fine === undefined) throw new Error("Unexpected absence");
      const row = gridUncertainty(gridOf(380, 780, 20));
      expect(deltaE00(coarse, fine)).toBeLessThanOrEqual(3 * Math.hypot(row.L, row.a, row.b));
    }
  });
});

describe("labSpread", () => {
  test("is the standard deviation of the mean, by hand", () => {
    // L* 10, 12, 14: s = 2, over root 3; a* all alike; b* 1, 1, 4: s = root 3, over root 3
    const spread = labSpread([
      { L: 10, a: 5, b: 1 },
      { L: 12, a: 5, b: 1 },
      { L: 14, a: 5, b: 4 },
    ]);
    expect([spread.L, spread.a, spread.b]).toEqual(
      [2 / Math.sqrt(3), 0, 1].map((value) => expect.closeTo(value, 12) as number),
    );
  });

  test("two readings have one: half of what parts them, by hand", () => {
    // L* 50 and 51: s = root 1/2, over root 2.
    const { L, a } = labSpread([
      { L: 50, a: 0, b: 0 },
      { L: 51, a: 0, b: 0 },
    ]);
    expect([L, a]).toEqual([expect.closeTo(0.5, 12), 0]);
  });

  test("one reading has none", () => {
    expect(() => labSpread([{ L: 10, a: 0, b: 0 }])).toThrow(
      new RangeError("The count of readings is 1; right would be count >= 2"),
    );
  });
});
