import { describe, expect, test } from "vitest";
import { glossDepth } from "../../lib/optics/surface/gloss-depth.ts";
import {
  readingInGeometry,
  surfaceStatement,
  unstatedSurface,
} from "../../lib/optics/surface/measurement-in-geometry.ts";
import { OIL_SURFACE } from "../../lib/optics/surface/surface.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { flatSpectrum } from "../../lib/quantities/spectrum.ts";
import { GRID } from "./synthetic-drawdowns.ts";

/** Fresnel at right angles, ((n - 1) / (n + 1))^2: by hand. */
const K1 = { 1.46: 0.03496, 1.48: 0.03746, 1.5: 0.04 } as const;

const included = (values: readonly number[]) => ({
  spectrum: { grid: GRID, values },
  geometry: "d/8 included" as const,
});
const flat = (value: number) => included(flatSpectrum(GRID, value).values);
/** A blue so dark that only its red end passes the surface. */
const blueBlack = (dark: number, red: number) =>
  included(flatSpectrum(GRID, dark).values.map((R, i) => (i > 0.8 * GRID.count ? red : R)));

describe("a surface that nobody recorded is as thin as the darkest reading asks for", () => {
  test.each([
    [0.05, K1[1.5]],
    [0.0401, K1[1.5]],
    [0.039, K1[1.48]],
    [0.036, K1[1.46]],
    [0.02, K1[1.46]],
  ])("darkest %s: k1 %s", (darkest, k1) => {
    expect(unstatedSurface(flat(darkest)).k1).toBeCloseTo(k1, 4);
  });

  test("without gloss it is an oil film's", () => {
    expect(unstatedSurface({ ...flat(0.005), geometry: "45/0" })).toEqual(OIL_SURFACE);
  });
});

describe("a masstone near its surface", () => {
  test("a perfect black without gloss lacks nothing, since no surface is taken off", () => {
    expect(surfaceStatement({ ...flat(0), geometry: "d/8 excluded" }, OIL_SURFACE)).toBeUndefined();
  });

  test("what lacks under the surface, more than a tenth of the rest, leaves no depth to be told", () => {
    const reading = blueBlack(0.0325, 0.06);
    for (const found of [
      glossDepth(reading),
      readingInGeometry({ ...reading, surface: OIL_SURFACE }, "d/8 excluded", OIL_SURFACE),
    ])
      expect(isStatement(found) && found.rule).toMatch(
        /^masstone-(near-its|not-told-from)-surface$/,
      );
  });

  test("where most wavelengths pass it and the rest lack much, it says that it is near", () => {
    const values = flatSpectrum(GRID, 0.0362).values.map((R, i) =>
      i < 0.4 * GRID.count ? 0.031 : R,
    );
    const found = glossDepth(included(values));
    expect(isStatement(found) && found.rule).toBe("masstone-near-its-surface");
  });

  test("a dark masstone that passes the thinnest surface throughout has its depths", () => {
    expect(isStatement(glossDepth(flat(0.038)))).toBe(false);
  });
});
