import { describe, expect, test } from "vitest";
import type { Geometry, Measurement } from "../../lib/optics/fit/measurement.ts";
import { weighingShift } from "../../lib/optics/tints/weighing-shift.ts";
import { flatSpectrum } from "../../lib/quantities/spectrum.ts";

const GRID = { startNm: 400, stepNm: 10, count: 31 };

function read(R: number, geometry: Geometry = "d/8 excluded"): Measurement {
  return { spectrum: flatSpectrum(GRID, R), geometry };
}

/** R of a mixture by Duncan's rule, worked out apart: K and S added by the mass ratio. */
function mixed(white: number, masstone: number, ratio: number, strength: number): number {
  const F = (R: number): number => (1 - R) ** 2 / (2 * R);
  const q = (F(white) + ratio * strength * F(masstone)) / (1 + ratio * strength);
  return 1 + q - Math.sqrt(q * q + 2 * q);
}

describe("weighingShift", () => {
  test.each([
    [0.9, 0.02, 0.01],
    [0.9, 0.02, 1],
    [0.85, 0.3, 0.1],
    [0.8, 0.95, 0.2],
  ])(
    "between white %s and masstone %s at a ratio of %s is Duncan's mixture weighed a little more (derived)",
    (white, masstone, ratio) => {
      const [R, more] = [1, 1.0001].map((slip) => mixed(white, masstone, ratio * slip, 0.7));
      const [shift] = weighingShift(read(R ?? NaN), read(white), read(masstone), 0.03);
      expect((shift ?? NaN) / (((more ?? NaN) - (R ?? NaN)) / 0.0001)).toBeCloseTo(0.03, 4);
    },
  );

  test("a masstone that is not known counts as far away: the shift is the larger", () => {
    const R = mixed(0.9, 0.02, 0.3, 0.7);
    const [known] = weighingShift(read(R), read(0.9), read(0.02));
    const [unknown] = weighingShift(read(R), read(0.9), undefined);
    expect(Math.abs(unknown ?? NaN)).toBeGreaterThan(Math.abs(known ?? NaN));
  });

  test("a masstone read in another geometry is no end of this ladder", () => {
    const R = mixed(0.9, 0.02, 0.3, 0.7);
    expect(weighingShift(read(R), read(0.9), read(0.06, "d/8 included"))).toEqual(
      weighingShift(read(R), read(0.9), undefined),
    );
  });

  test("a let-down that reads as its white does not move, and none runs away at the ends of the scale", () => {
    expect(Math.abs(weighingShift(read(0.9), read(0.9), read(0.02))[0] ?? NaN)).toBe(0);
    for (const R of [-0.004, 0, 1, 1.1])
      for (const shift of weighingShift(read(R), read(0.9), read(0.02)))
        expect(Math.abs(shift)).toBeLessThan(0.05);
  });
});
