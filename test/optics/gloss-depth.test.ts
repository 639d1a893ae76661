import { describe, expect, test } from "vitest";
import { isStatement } from "../../lib/quantities/statement.ts";
import { flatSpectrum } from "../../lib/quantities/spectrum.ts";
import { smoothSurface } from "../../lib/optics/surface/fresnel.ts";
import {
  glossDepth,
  SURFACE_LIGHT_SEEN,
  type Depth,
  type Finish,
  type GlossDepth,
} from "../../lib/optics/surface/gloss-depth.ts";
import {
  internalReflectances,
  readingInGeometry,
} from "../../lib/optics/surface/measurement-in-geometry.ts";
import type { Geometry, Measurement } from "../../lib/optics/fit/measurement.ts";
import { measuredReflectance } from "../../lib/optics/surface/surface.ts";
import { checkTable } from "../support/checks.ts";
import { GRID } from "./synthetic-drawdowns.ts";

const OIL = smoothSurface(1.48);

function reading(
  measured: number,
  geometry: Geometry = "d/8 excluded",
  surface = OIL,
): Measurement {
  return { spectrum: flatSpectrum(GRID, measured), geometry, surface };
}

const glossy = (internal: number): Measurement =>
  reading(measuredReflectance(internal, "d/8 excluded", OIL));

function depthsOf(masstone: Measurement): GlossDepth {
  const found = glossDepth(masstone);
  if (isStatement(found)) throw new Error(`Unexpected absence ${found.rule}`);
  return found;
}

function depth(masstone: Measurement, finish: Finish, specular: Depth["specular"]): Depth {
  const found = depthsOf(masstone).depths.find(
    (one) => one.finish === finish && one.specular === specular,
  );
  if (found === undefined) throw new Error(`Unexpected depths without ${finish} ${specular}`);
  return found;
}

const BLACKS = {
  basis: "derived",
  source: "saunderson-1942",
  locator: "blacks of internal reflectance .0005-.049, n 1.48",
} as const;
checkTable<number>(
  "glossy black, gloss excluded: L*",
  (R) => depth(glossy(R), "glossy", "excluded").L[0],
  [
    { ...BLACKS, input: 0.0005, expected: 0.2, tolerance: 0.05 },
    { ...BLACKS, input: 0.049, expected: 16, tolerance: 0.5 },
  ],
);
checkTable<number>(
  "glossy black, gloss included: L*",
  (R) => depth(glossy(R), "glossy", "included").L[0],
  [
    { ...BLACKS, input: 0.0005, expected: 23, tolerance: 0.5 },
    { ...BLACKS, input: 0.049, expected: 29, tolerance: 0.5 },
  ],
);
checkTable<number>(
  "how much darker gloss makes it: L*",
  (R) => depthsOf(glossy(R)).ruling.values.LChange,
  [
    { ...BLACKS, input: 0.0005, expected: 23, tolerance: 0.5 },
    { ...BLACKS, input: 0.049, expected: 13, tolerance: 0.5 },
  ],
);
checkTable<number>(
  "how much darker gloss makes it: Munsell value",
  (R) => depthsOf(glossy(R)).ruling.values.valueChange,
  [
    { ...BLACKS, input: 0.0005, expected: 2.2, tolerance: 0.05 },
    { ...BLACKS, input: 0.049, expected: 1.3, tolerance: 0.05 },
  ],
);
checkTable<number>(
  "5 % of the surface light leaking in: L*",
  (measured) => depth(reading(measured), "satin", "excluded").L[0],
  [
    {
      ...BLACKS,
      input: 5.2 / 903.2963,
      expected: 6.9,
      tolerance: 0.05,
      note: "L* 5.2 is Y .0052 / 9.033; satin's lower end is a leak of 5 %",
    },
  ],
);

describe("glossDepth", () => {
  test("a glossy black is darker than the same black matte (common practice, no source)", () => {
    const black = glossy(0.01);
    expect(depth(black, "glossy", "excluded").L[0]).toBeLessThan(
      depth(black, "satin", "excluded").L[0],
    );
    expect(depth(black, "satin", "excluded").L[1]).toBeLessThan(
      depth(black, "matte", "excluded").L[0],
    );
    // Away from the mirror direction a mirror sends nothing: one figure and no range.
    const [least, most] = depth(black, "glossy", "excluded").L;
    expect(most).toBe(least);
    expect(depthsOf(black).ruling.rule).toBe("gloss-deepens");
    expect(SURFACE_LIGHT_SEEN.satin[0]).toBe(0.05);
  });

  test("an instrument that lets the gloss in reads all finishes alike", () => {
    const included = (["glossy", "satin", "matte"] as const).map(
      (finish) => depth(glossy(0.01), finish, "included").L,
    );
    expect(new Set(included.flat()).size).toBe(1);
    expect(depth(glossy(0.01), "matte", "excluded").L).toEqual(included[0]);
  });

  test("is the same from any geometry of the same film", () => {
    const L = (["45/0", "d/8 included", "d/8 excluded"] as const).map(
      (geometry) =>
        depth(reading(measuredReflectance(0.02, geometry, OIL), geometry), "glossy", "excluded")
          .L[0],
    );
    for (const one of L) expect(one).toBeCloseTo(L[0] ?? NaN, 10);
  });

  test("matters little to a pale colour", () => {
    expect(depthsOf(glossy(0.9)).ruling.rule).toBe("gloss-hardly-deepens");
  });

  test("takes an oil film's surface where none is stated, and can't do with none", () => {
    const bare: Measurement = { spectrum: flatSpectrum(GRID, 0.01), geometry: "d/8 excluded" };
    expect(depth(bare, "matte", "excluded").values[0][0]).toBeCloseTo(0.05, 10);
    expect(glossDepth({ ...bare, surface: { k1: 0, k2: 0 } })).toMatchObject({
      rule: "geometry-needs-surface",
    });
  });

  test("says so when a black is not told from its surface", () => {
    expect(glossDepth(reading(OIL.k1, "d/8 included"))).toMatchObject({
      rule: "masstone-not-told-from-surface",
      values: { wavelengths: GRID.count },
    });
    expect("depths" in glossDepth(reading(OIL.k1 + 1e-4, "d/8 included"))).toBe(true);
  });
});

describe("readingInGeometry", () => {
  test("gives the darker value behind a gloss-included reading", () => {
    const found = readingInGeometry(
      reading(measuredReflectance(0.3, "d/8 included", OIL), "d/8 included"),
      "d/8 excluded",
      OIL,
    );
    if (isStatement(found)) throw new Error("Unexpected absence");
    for (const value of found.values)
      expect(value).toBeCloseTo(measuredReflectance(0.3, "d/8 excluded", OIL), 12);
  });

  test("leaves a reading in its own geometry as it is, and asks for a surface otherwise", () => {
    const own = reading(0.3);
    expect(readingInGeometry(own, "d/8 excluded", { k1: 0, k2: 0 })).toBe(own.spectrum);
    expect(readingInGeometry(own, "45/0", { k1: 0, k2: 0 })).toMatchObject({
      rule: "geometry-needs-surface",
      values: { from: "d/8 excluded", to: "45/0" },
    });
    expect(readingInGeometry(reading(0.03, "d/8 included"), "45/0", OIL)).toMatchObject({
      rule: "masstone-not-told-from-surface",
    });
  });

  test("counts what did not pass the surface, gloss included alone", () => {
    expect(internalReflectances(reading(0.03, "d/8 included"), OIL)).toEqual({
      values: GRID_ZERO,
      hidden: GRID.count,
    });
    expect(internalReflectances(reading(0, "d/8 excluded"), OIL)).toEqual({
      values: GRID_ZERO,
      hidden: 0,
    });
  });
});

const GRID_ZERO = Array.from({ length: GRID.count }, () => 0);
