import { describe, expect, test } from "vitest";
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import { lamplight, lamplightRule } from "../../lib/colorimetry/lamplight.ts";
import { metamerism, metamerismRule } from "../../lib/colorimetry/metamerism.ts";
import { tristimulus } from "../../lib/colorimetry/tristimulus.ts";
import { flatSpectrum, wavelengthsNm, type Spectrum } from "../../lib/quantities/spectrum.ts";
import { CURVES, edge, gridOf, sampled } from "./spectra.ts";

const grid = gridOf(380, 730, 10);

describe("lamplight", () => {
  test("a flat grey does not shift at all", () => {
    const found = lamplight(flatSpectrum(grid, 0.2));
    for (const shift of Object.values(found.deltaE00)) expect(shift).toBeLessThan(1e-9);
    expect(found.statement.rule).toBe("holds-in-lamplight");
    expect(Object.keys(found.statement.values)).toEqual(["incandescent", "led", "fluorescent"]);
  });

  // XYZ summed from the printed 5 nm tables and adapted by colorjs.io 0.7.1 (CAT16): derived, in another language and library.
  test("a red edge: Lab in both lights", () => {
    const { daylight, lamplight: lamp } = lamplight(sampled(CURVES["red edge"], grid));
    const expected = [
      [daylight, { L: 53.954, a: 58.142, b: 52.159 }],
      [lamp, { L: 62.643, a: 56.546, b: 56.383 }],
    ] as const;
    // Both within what the carried tables cost.
    for (const [found, printed] of expected)
      expect(deltaE00(found, printed)).toBeLessThanOrEqual(0.05);
  });

  // Tungsten light is rich in red and poor in blue: common practice, no source; a sharp red edge comes out lighter and redder-yellower, a blue darker.
  test("a red is lighter and a blue darker in lamplight", () => {
    expect(lamplight(sampled(CURVES["red edge"], grid)).statement.values).toMatchObject({
      lightness: "lighter",
      chroma: "stronger",
    });
    expect(lamplight(sampled(CURVES["blue peak"], grid)).statement.values).toMatchObject({
      lightness: "darker",
    });
  });

  test.each([
    [0, "holds-in-lamplight"],
    [1.99, "holds-in-lamplight"],
    [2, "shifts-slightly-in-lamplight"],
    [3.99, "shifts-slightly-in-lamplight"],
    [4, "shifts-clearly-in-lamplight"],
    [20, "shifts-clearly-in-lamplight"],
  ])("Delta-E00 %s: %s", (shift, rule) => {
    expect(lamplightRule(shift)).toBe(rule);
  });

  test.each([-0.1, NaN])("Delta-E00 %s is refused", (shift) => {
    expect(() => lamplightRule(shift)).toThrow(
      new RangeError(`The colour inconstancy Delta-E00 is ${shift}; right would be Delta-E00 >= 0`),
    );
  });
});

/** Adds to a spectrum a mixture of waves that D65/10 cannot see: a metameric black, by three equations. */
function metamerOf(spectrum: Spectrum, size: number): Spectrum {
  const waves = [40, 60, 85, 120].map((period) =>
    wavelengthsNm(grid).map((nm) => 0.5 + 0.5 * Math.cos((2 * Math.PI * nm) / period)),
  );
  const [p = [], q = [], r = [], s = []] = waves.map((values) => {
    const { X, Y, Z } = tristimulus({ grid, values }, "D65/10");
    return [X, Y, Z];
  });
  const determinant = (u: number[], v: number[], w: number[]): number => {
    const [[u0 = 0, u1 = 0, u2 = 0], [v0 = 0, v1 = 0, v2 = 0], [w0 = 0, w1 = 0, w2 = 0]] = [
      u,
      v,
      w,
    ] as [number[], number[], number[]];
    return u0 * (v1 * w2 - v2 * w1) - u1 * (v0 * w2 - v2 * w0) + u2 * (v0 * w1 - v1 * w0);
  };
  const whole = determinant(p, q, r);
  const shares = [
    determinant(s, q, r) / whole,
    determinant(p, s, r) / whole,
    determinant(p, q, s) / whole,
    -1,
  ];
  const largest = Math.max(
    ...wavelengthsNm(grid).map((_, i) =>
      Math.abs(shares.reduce((sum, share, k) => sum + share * (waves[k]?.[i] ?? NaN), 0)),
    ),
  );
  return {
    grid,
    values: spectrum.values.map(
      (R, i) =>
        R +
        (size / largest) *
          shares.reduce((sum, share, k) => sum + share * (waves[k]?.[i] ?? NaN), 0),
    ),
  };
}

describe("metamerism", () => {
  const grey = flatSpectrum(grid, 0.4);

  test("a colour and itself match in both lights", () => {
    expect(metamerism(grey, grey)).toMatchObject({
      daylight: 0,
      lamplight: 0,
      index: { incandescent: 0, led: 0, fluorescent: 0 },
      statement: { rule: "matches-in-both-lights" },
    });
  });

  test("a metameric black leaves daylight as it is and parts the pair in lamplight", () => {
    const found = metamerism(grey, metamerOf(grey, 0.3));
    expect(found.daylight).toBeLessThan(1e-6);
    expect(found.lamplight).toBeGreaterThan(2);
    expect(found.index.incandescent).toBeCloseTo(found.lamplight, 5);
    expect(found.statement.rule).toBe("metameric-pair");
  });

  test("a lighter grey differs by its lightness in both lights, and its index is nothing", () => {
    const found = metamerism(grey, flatSpectrum(grid, 0.6));
    expect(found.daylight).toBeGreaterThan(2);
    expect(found.lamplight).toBeCloseTo(found.daylight, 6);
    for (const index of Object.values(found.index)) expect(index).toBeLessThan(1e-6);
    expect(found.statement.rule).toBe("differs-in-daylight");
  });

  test("a black of no reflectance does not divide by zero", () => {
    for (const index of Object.values(metamerism(grey, flatSpectrum(grid, 0)).index))
      expect(Number.isFinite(index)).toBe(true);
  });

  test("is the same whichever comes first, but for the index's direction", () => {
    const other = sampled(edge(560, 30, 0.3, 0.5), grid);
    expect(metamerism(grey, other).daylight).toBeCloseTo(metamerism(other, grey).daylight, 12);
    expect(metamerism(grey, other).lamplight).toBeCloseTo(metamerism(other, grey).lamplight, 12);
  });

  test.each([
    [2, 2, "metameric-pair"],
    [2, 1.99, "matches-in-both-lights"],
    [2.01, 5, "differs-in-daylight"],
    [0, 0, "matches-in-both-lights"],
  ])("daylight %s, index %s: %s", (daylight, index, rule) => {
    expect(metamerismRule(daylight, index)).toBe(rule);
  });

  test.each([
    [-1, 0],
    [0, NaN],
    [NaN, 0],
  ])("refuses daylight %s, index %s", (daylight, index) => {
    expect(() => metamerismRule(daylight, index)).toThrow(/The Delta-E00/);
  });
});
