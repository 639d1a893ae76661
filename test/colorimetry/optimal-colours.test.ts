import { describe, expect, test } from "vitest";
import { labToXyz } from "../../lib/colorimetry/lab.ts";
import { outsideOptimal } from "../../lib/colorimetry/optimal-colours.ts";
import { tristimulus } from "../../lib/colorimetry/tristimulus.ts";
import { wavelengthsNm } from "../../lib/quantities/spectrum.ts";
import { VIEWINGS } from "../../lib/colorimetry/viewing.ts";

const GRID = { startNm: 380, stepNm: 10, count: 41 };

/** An optimal colour by MacAdam's and Schroedinger's theorem: 1 between two wavelengths and 0 elsewhere, or the other way. */
function block(fromNm: number, toNm: number, inside: 0 | 1 = 1): number[] {
  return wavelengthsNm(GRID).map((nm) => (nm >= fromNm && nm <= toNm ? inside : 1 - inside));
}

describe("limits of reflecting surfaces (derived: two-step spectra are the border)", () => {
  test.each([
    [450, 550, 1],
    [380, 480, 1],
    [580, 780, 1],
    [500, 570, 0],
  ] as const)(
    "%i to %i nm, %i inside, lies on the border and a little more lies outside",
    (from, to, inside) => {
      for (const viewing of VIEWINGS) {
        const values = block(from, to, inside);
        const xyz = tristimulus({ grid: GRID, values }, viewing);
        const grey = tristimulus({ grid: GRID, values: values.map(() => 0.5) }, viewing);
        const away = (share: number) => ({
          X: grey.X + share * (xyz.X - grey.X),
          Y: grey.Y + share * (xyz.Y - grey.Y),
          Z: grey.Z + share * (xyz.Z - grey.Z),
        });
        expect(outsideOptimal(xyz, viewing)).toBeLessThan(1e-9);
        expect(outsideOptimal(away(0.98), viewing)).toBe(0);
        expect(outsideOptimal(away(1.05), viewing)).toBeGreaterThan(0.5);
      }
    },
  );

  test.each([
    ["the perfect diffuser", { L: 100, a: 0, b: 0 }, true],
    ["a cadmium yellow", { L: 80, a: 15, b: 95 }, true],
    ["a phthalo blue's masstone", { L: 20, a: 5, b: -25 }, true],
    ["a cadmium red", { L: 45, a: 62, b: 45 }, true],
    ["as strong a red at L* 90", { L: 90, a: 62, b: 45 }, false],
    ["a yellow with L* and b* exchanged", { L: 12, a: 75, b: 76 }, false],
    ["lighter than white", { L: 104, a: 0, b: 0 }, false],
  ])("%s: within %s", (_, lab, within) => {
    expect(outsideOptimal(labToXyz(lab, "D65/10"), "D65/10") <= 0.5).toBe(within);
  });
});
