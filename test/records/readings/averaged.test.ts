import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Spectrum } from "../../../lib/quantities/spectrum.ts";
import { averaged } from "../../../lib/records/readings/averaged.ts";

const grid = { startNm: 400, stepNm: 10, count: 2 };
const spectrum = (...values: number[]): Spectrum => ({ grid, values });

describe("averaged", () => {
  test("gives the mean and the sample standard deviation at each wavelength", () => {
    // By hand: 0.1, 0.2, 0.6 have mean 0.3 and s = sqrt((0.04 + 0.01 + 0.09) / 2) = sqrt(0.07).
    const { mean, spread } = averaged([spectrum(0.1, 0.5), spectrum(0.2, 0.5), spectrum(0.6, 0.5)]);
    expect(mean.grid).toEqual(grid);
    expect(mean.values[0]).toBeCloseTo(0.3, 15);
    expect(spread[0]).toBeCloseTo(Math.sqrt(0.07), 15);
    expect([mean.values[1], spread[1]]).toEqual([0.5, 0]);
  });

  test("a single reading is its own mean and has no spread", () => {
    expect(averaged([spectrum(0.1, 0.2)])).toEqual({ mean: spectrum(0.1, 0.2), spread: [] });
  });

  test("equal readings have exactly their own mean, and no order matters much", () => {
    const R = fc.double({ min: 0, max: 1.2, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(R, R), { minLength: 2, maxLength: 6 }), (rows) => {
        const [first = [0, 0]] = rows;
        const readings = rows.map((row) => spectrum(...row));
        expect(averaged(rows.map(() => spectrum(...first)))).toEqual({
          mean: spectrum(...first),
          spread: [0, 0],
        });
        const { mean, spread } = averaged(readings);
        const turned = averaged(readings.toReversed());
        mean.values.forEach((value, i) => expect(turned.mean.values[i]).toBeCloseTo(value, 12));
        expect(spread.every((s) => s >= 0 && s <= 1.2)).toBe(true);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  test.each([
    ["no reading", [], "The count of readings is 0; right would be count >= 1"],
    [
      "another grid",
      [spectrum(0.1, 0.2), { grid: { ...grid, stepNm: 20 }, values: [0.1, 0.2] }],
      "The wavelength grid is 400 nm, step 20 nm, 2 wavelengths; right would be 400 nm, step 10 nm, 2 wavelengths",
    ],
    [
      "too few values",
      [spectrum(0.1)],
      "The count of reflectance factors is 1; right would be 2, one a wavelength",
    ],
    [
      "NaN",
      [spectrum(0.1, NaN)],
      "The reflectance factor at 410 nm is NaN; right would be a finite number",
    ],
    [
      "infinity",
      [spectrum(Infinity, 0.1)],
      "The reflectance factor at 400 nm is Infinity; right would be a finite number",
    ],
  ])("refuses %s", (_, spectra, message) => {
    expect(() => averaged(spectra)).toThrow(new RangeError(message));
  });
});
