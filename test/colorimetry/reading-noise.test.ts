import { describe, expect, test } from "vitest";
import {
  HAND_HELD_NOISE,
  noiseOfMean,
  reflectanceSigma,
  replicateNoise,
  statedNoise,
  tiltAt,
  type ReadingNoise,
} from "../../lib/colorimetry/reading-noise.ts";
import { labUncertainty } from "../../lib/colorimetry/lab-uncertainty.ts";
import { flatSpectrum, type Spectrum } from "../../lib/quantities/spectrum.ts";
import { deviates } from "./deviates.ts";
import { CURVES, gridOf, sampled } from "./spectra.ts";

const grid = gridOf(400, 700, 10);

/** Sets of three readings of several films, as an instrument of that noise would give them. */
function replicates(noise: ReadingNoise, sets: number, seed = 3): Spectrum[][] {
  const next = deviates(seed);
  const films = Object.values(CURVES).map((curve) => sampled(curve, grid));
  return Array.from({ length: sets }, (_, set) => {
    const film = films[set % films.length] ?? flatSpectrum(grid, 0.5);
    return Array.from({ length: 3 }, () => {
      const [zero, scale] = [noise.reading.zero * next(), noise.reading.scale * next()];
      return {
        grid,
        values: film.values.map(
          (R) =>
            R * (1 + scale + noise.wavelength.share * next()) +
            zero +
            noise.wavelength.floor * next(),
        ),
      };
    });
  });
}

const threefold: ReadingNoise = {
  calibration: HAND_HELD_NOISE.calibration,
  reading: { zero: 0.0009, scale: 0.009 },
  wavelength: { floor: 0.0006, share: 0.003 },
};

describe("the usual noise", () => {
  test("is of the size that is common with hand-held instruments (common practice, no source)", () => {
    const [black = NaN] = reflectanceSigma(HAND_HELD_NOISE, flatSpectrum(grid, 0));
    expect(black).toBeGreaterThanOrEqual(0.0002);
    expect(black).toBeLessThanOrEqual(0.001);
    const white = labUncertainty(flatSpectrum(grid, 0.9), "D65/10");
    expect(Math.hypot(white.L, white.a, white.b)).toBeGreaterThan(0.1);
    expect(Math.hypot(white.L, white.a, white.b)).toBeLessThan(0.4);
  });

  test("moves a grey's lightness more than its hue, since zero and scale are common to all wavelengths", () => {
    const grey = labUncertainty(flatSpectrum(grid, 0.2), "D65/10");
    expect(grey.L).toBeGreaterThan(1.5 * grey.a);
    expect(grey.L).toBeGreaterThan(1.5 * grey.b);
  });

  test("a tilted white standard moves b* alone, as X, Y and Z differ in wavelength", () => {
    const tilted: ReadingNoise = {
      calibration: { zero: 0, scale: 0, tilt: 0.01 },
      reading: { zero: 0, scale: 0 },
      wavelength: { floor: 0, share: 0 },
    };
    const white = labUncertainty(flatSpectrum(grid, 0.9), "D65/10", tilted);
    expect(white.b).toBeGreaterThan(10 * white.L);
    expect(white.b).toBeGreaterThan(3 * white.a);
    expect([400, 550, 700].map((nm) => tiltAt(grid, (nm - 400) / 10))).toEqual([1, 0, -1]);
    expect([tiltAt(gridOf(360, 780, 10), 0), tiltAt(gridOf(360, 780, 10), 42)]).toEqual([1, -1]);
  });
});

describe("statedNoise", () => {
  test("is the stated figure at every reflectance (by hand: the root of two halves)", () => {
    for (const R of [0, 0.04, 0.9])
      expect(reflectanceSigma(statedNoise(0.002), flatSpectrum(grid, R))[0]).toBeCloseTo(0.002, 12);
  });

  test.each([-0.001, NaN, Infinity])("%s is refused", (uncertainty) => {
    expect(() => statedNoise(uncertainty)).toThrow(
      `The uncertainty of a reflectance factor is ${uncertainty}`,
    );
  });
});

describe("noiseOfMean", () => {
  test("of four readings halves what moves each, and leaves the calibration", () => {
    const mean = noiseOfMean(HAND_HELD_NOISE, 4);
    expect(mean.calibration).toEqual(HAND_HELD_NOISE.calibration);
    expect(mean.reading.scale).toBeCloseTo(HAND_HELD_NOISE.reading.scale / 2, 12);
    expect(mean.wavelength.floor).toBeCloseTo(HAND_HELD_NOISE.wavelength.floor / 2, 12);
    expect(noiseOfMean(HAND_HELD_NOISE, 1)).toEqual(HAND_HELD_NOISE);
  });

  test.each([0, NaN])("of %s readings is refused", (count) => {
    expect(() => noiseOfMean(HAND_HELD_NOISE, count)).toThrow("count of readings");
  });
});

describe("replicateNoise", () => {
  test("of no replicates, or of single readings, is the usual noise", () => {
    expect(replicateNoise([])).toEqual(HAND_HELD_NOISE);
    expect(replicateNoise([[flatSpectrum(grid, 0.5)]])).toEqual(HAND_HELD_NOISE);
  });

  test.each([
    ["as noisy as usual", HAND_HELD_NOISE],
    ["three times as noisy", threefold],
  ] as const)("of many replicates %s finds both layers to a tenth", (_, noise) => {
    const found = replicateNoise(replicates(noise, 300));
    expect(found.calibration).toEqual(HAND_HELD_NOISE.calibration);
    expect(found.reading.scale / noise.reading.scale).toBeCloseTo(1, 1);
    expect(found.reading.zero / noise.reading.zero).toBeCloseTo(1, 1);
    expect(found.wavelength.share / noise.wavelength.share).toBeCloseTo(1, 1);
  });

  test("tells a reading that moves as a whole from noise on each wavelength", () => {
    const moving = { ...HAND_HELD_NOISE, reading: { zero: 0.003, scale: 0.03 } };
    const found = replicateNoise(replicates(moving, 200));
    expect(found.reading.scale).toBeGreaterThan(0.02);
    expect(found.wavelength.share).toBeLessThan(1.2 * HAND_HELD_NOISE.wavelength.share);
  });

  test("of one set stays near the usual noise: two replicates are no statistics", () => {
    const found = replicateNoise(replicates(threefold, 1));
    expect(found.reading.scale).toBeGreaterThan(0.8 * HAND_HELD_NOISE.reading.scale);
    expect(found.reading.scale).toBeLessThan(threefold.reading.scale);
  });

  test("equal replicates lower it by their few degrees of freedom only (by hand: the root of 6 of 8, 0.87, told to a tenth)", () => {
    const same = flatSpectrum(grid, 0.5);
    const found = replicateNoise([[same, same, same]]);
    expect(found.reading.scale / HAND_HELD_NOISE.reading.scale).toBeCloseTo(0.9, 12);
  });

  test("however many are equal, a tenth of it is left (by hand: the root of 6 of 2505, 0.049)", () => {
    const same = flatSpectrum(grid, 0.5);
    const found = replicateNoise([Array.from({ length: 2500 }, () => same)]);
    expect(found.reading.scale / HAND_HELD_NOISE.reading.scale).toBeCloseTo(0.1, 12);
    expect(found.wavelength.share / HAND_HELD_NOISE.wavelength.share).toBeCloseTo(0.1, 12);
  });
});
