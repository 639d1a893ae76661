import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import { xyzToLab } from "../../lib/colorimetry/lab.ts";
import { tristimulus } from "../../lib/colorimetry/tristimulus.ts";
import { VIEWINGS, WHITE_POINTS, type Viewing, type Xyz } from "../../lib/colorimetry/viewing.ts";
import { flatSpectrum } from "../../lib/quantities/spectrum.ts";
import { CURVES, gridOf, sampled, type CurveName } from "./spectra.ts";

/**
 * Summed from the printed 5 nm tables (CIE 15:2004, observers and illuminants),
 * 380-780 nm, each channel scaled to the CIE white, in another language: derived.
 */
const SUMMED_AT_5_NM: readonly (readonly [CurveName, Viewing, number, number, number])[] = [
  ["red edge", "C/2", 38.3412, 23.4853, 4.7633],
  ["red edge", "D65/2", 37.5519, 23.132, 4.3896],
  ["red edge", "D65/10", 35.2895, 21.931, 4.3025],
  ["red edge", "D50/2", 41.7897, 25.098, 3.335],
  ["red edge", "A/10", 55.6968, 31.6057, 1.4144],
  ["yellow edge", "C/2", 67.2763, 73.241, 17.8585],
  ["yellow edge", "D65/2", 65.9712, 73.2209, 16.8537],
  ["yellow edge", "D65/10", 65.307, 69.9412, 15.1057],
  ["yellow edge", "D50/2", 70.6402, 74.4399, 13.5416],
  ["yellow edge", "A/10", 88.6445, 76.3118, 5.9375],
  ["blue peak", "C/2", 16.5615, 16.4233, 67.7241],
  ["blue peak", "D65/2", 15.5334, 16.527, 62.2657],
  ["blue peak", "D65/10", 15.7835, 19.2229, 61.2109],
  ["blue peak", "D50/2", 13.0844, 15.3663, 47.2206],
  ["blue peak", "A/10", 9.607, 13.2865, 20.0075],
  ["green peak", "C/2", 16.0299, 34.7288, 12.5371],
  ["green peak", "D65/2", 15.8078, 35.4453, 11.9022],
  ["green peak", "D65/10", 17.1012, 34.5281, 10.4701],
  ["green peak", "D50/2", 15.7853, 34.3639, 9.6727],
  ["green peak", "A/10", 17.4646, 29.473, 4.3097],
  ["warm black", "C/2", 0.7046, 0.6757, 0.5548],
  ["warm black", "D65/2", 0.6856, 0.6738, 0.5119],
  ["warm black", "D65/10", 0.6751, 0.6612, 0.5007],
  ["warm black", "D50/2", 0.7172, 0.6838, 0.3898],
  ["warm black", "A/10", 0.8699, 0.7108, 0.1665],
];

const GRIDS = [
  [380, 780, 1],
  [380, 780, 5],
  [380, 780, 10],
  [360, 740, 10],
  [380, 730, 10],
  [400, 700, 1],
  [400, 700, 5],
  [400, 700, 10],
] as const;

const labOf = (xyz: Xyz, viewing: Viewing) => xyzToLab(xyz, viewing);

describe("a smooth spectrum against the printed 5 nm tables", () => {
  test.each(SUMMED_AT_5_NM)(
    "%s under %s, on every grid within Delta-E00 0.1",
    (name, viewing, X, Y, Z) => {
      for (const [start, end, step] of GRIDS) {
        const found = tristimulus(sampled(CURVES[name], gridOf(start, end, step)), viewing);
        expect(
          deltaE00(labOf(found, viewing), labOf({ X, Y, Z }, viewing)),
          `${start}-${end}/${step}`,
        ).toBeLessThanOrEqual(0.1);
      }
    },
  );

  test.each(SUMMED_AT_5_NM)("%s under %s, 20 nm splined within 0.15", (name, viewing, X, Y, Z) => {
    const found = tristimulus(sampled(CURVES[name], gridOf(400, 700, 20)), viewing);
    expect(deltaE00(labOf(found, viewing), labOf({ X, Y, Z }, viewing))).toBeLessThanOrEqual(0.15);
  });
});

describe("the same smooth spectrum at 1, 2, 5 and 10 nm", () => {
  test.each(
    VIEWINGS.flatMap((viewing) =>
      Object.keys(CURVES).map((name) => [name as CurveName, viewing] as const),
    ),
  )("%s under %s within Delta-E00 0.1", (name, viewing) => {
    const labs = [1, 2, 5, 10].map((step) =>
      labOf(tristimulus(sampled(CURVES[name], gridOf(380, 780, step)), viewing), viewing),
    );
    for (const one of labs)
      for (const other of labs) expect(deltaE00(one, other)).toBeLessThanOrEqual(0.1);
  });
});

describe("the perfect diffuser", () => {
  // CIE 15:2018, white points as printed; on whatever grid it is read.
  test.each(VIEWINGS.flatMap((viewing) => GRIDS.map((grid) => [viewing, ...grid] as const)))(
    "%s on %s-%s/%s is the CIE white",
    (viewing, start, end, step) => {
      const { X, Y, Z } = tristimulus(flatSpectrum(gridOf(start, end, step), 1), viewing);
      expect([X, Y, Z]).toEqual(
        [WHITE_POINTS[viewing].X, 100, WHITE_POINTS[viewing].Z].map(
          (value) => expect.closeTo(value, 9) as number,
        ),
      );
    },
  );

  test("a neutral has no false a* and b* on 400-700/10, where a plain sum gives it 0.1", () => {
    const lab = labOf(tristimulus(flatSpectrum(gridOf(400, 700, 10), 0.2), "D65/2"), "D65/2");
    expect(Math.hypot(lab.a, lab.b)).toBeLessThan(1e-9);
  });
});

describe("domain", () => {
  const grid = gridOf(400, 700, 10);
  const withOne = (value: number) => ({
    grid,
    values: flatSpectrum(grid, 0.5).values.map((R, i) => (i === 3 ? value : R)),
  });

  test.each([-0.0051, 4.0001, NaN, Infinity])(
    "refuses a reflectance factor of %s and says where",
    (value) => {
      expect(() => tristimulus(withOne(value), "D65/2")).toThrow(
        new RangeError(
          `The reflectance factor at 430 nm is ${value}; right would be -0.005 <= R <= 4`,
        ),
      );
    },
  );

  test.each([-0.005, 0, 1.2])("takes %s", (value) => {
    expect(tristimulus(withOne(value), "D65/2").Y).toBeGreaterThan(0);
  });

  test("takes a small negative factor as 0", () => {
    expect(tristimulus(withOne(-0.004), "D65/2")).toEqual(tristimulus(withOne(0), "D65/2"));
  });

  test("a lone spike, beside which a spline dips below zero, gives no negative Z", () => {
    const spike = { grid, values: Array.from({ length: 31 }, (_, i) => (i === 19 ? 1 : 0)) };
    expect(tristimulus(spike, "D65/10").Z).toBe(0);
  });

  test.each([
    [{ startNm: 401, stepNm: 10, count: 40 }, "The first wavelength is 401"],
    [{ startNm: 380, stepNm: 10, count: 32 }, "The last wavelength is 690"],
    [{ startNm: 380, stepNm: 20.1, count: 30 }, "The wavelength step is 20.1"],
    [{ startNm: 380, stepNm: 0, count: 30 }, "The wavelength step is 0"],
    [{ startNm: NaN, stepNm: 10, count: 40 }, "The first wavelength is NaN"],
    [{ startNm: 380, stepNm: NaN, count: 40 }, "The wavelength step is NaN"],
  ])("refuses the grid %j", (bad, message) => {
    expect(() =>
      tristimulus({ grid: bad, values: Array.from({ length: bad.count }, () => 0.5) }, "D65/2"),
    ).toThrow(message);
  });

  test("refuses values that are not one a wavelength", () => {
    expect(() => tristimulus({ grid, values: [0.5] }, "D65/2")).toThrow(
      "The count of reflectance factors is 1; right would be 31, one a wavelength",
    );
  });
});

describe("properties", () => {
  const values = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), {
    minLength: 31,
    maxLength: 31,
  });
  const grid = gridOf(400, 700, 10);

  test("XYZ is never negative, and lighter reflectance is never darker", () => {
    fc.assert(
      fc.property(values, fc.constantFrom(...VIEWINGS), (low, viewing) => {
        const xyz = tristimulus({ grid, values: low }, viewing);
        expect(Math.min(xyz.X, xyz.Y, xyz.Z)).toBeGreaterThanOrEqual(0);
        const higher = tristimulus(
          { grid, values: low.map((R) => Math.min(R + 0.1, 1.2)) },
          viewing,
        );
        expect(higher.Y).toBeGreaterThan(xyz.Y);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  test("half the reflectance gives half the XYZ", () => {
    fc.assert(
      fc.property(values, fc.constantFrom(...VIEWINGS), (full, viewing) => {
        const [whole, half] = [full, full.map((R) => R / 2)].map((R) =>
          tristimulus({ grid, values: R }, viewing),
        );
        for (const channel of ["X", "Y", "Z"] as const)
          expect(half?.[channel]).toBeCloseTo((whole?.[channel] ?? NaN) / 2, 9);
      }),
      { seed: 1, numRuns: 200 },
    );
  });
});
