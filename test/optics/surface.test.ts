import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  diffuseSurfaceReflectance,
  indexOfSurface,
  smoothSurface,
  surfaceReflectance,
} from "../../lib/optics/surface/fresnel.ts";
import { absorptionScatteringRatio } from "../../lib/optics/kubelka-munk.ts";
import type { Geometry } from "../../lib/optics/fit/measurement.ts";
import {
  internalReflectance,
  measuredReflectance,
  NO_SURFACE,
  surfaceForm,
} from "../../lib/optics/surface/surface.ts";
import { checkTable } from "../support/checks.ts";

const GEOMETRIES_READ: readonly Geometry[] = ["45/0", "d/8 included", "d/8 excluded"];

const FRESNEL = {
  basis: "derived",
  source: "fresnel",
  locator: "((n - 1)/(n + 1))^2",
  tolerance: 5e-7,
  note: "quadrature and closed form agree",
} as const;

checkTable<number>("k1", (n) => smoothSurface(n).k1, [
  { ...FRESNEL, input: 1.45, expected: 0.033736 },
  { ...FRESNEL, input: 1.48, expected: 0.037461 },
  { ...FRESNEL, input: 1.5, expected: 0.04 },
  { ...FRESNEL, input: 1.52, expected: 0.04258 },
]);

const WALSH = {
  basis: "derived",
  source: "walsh-1926",
  locator: "diffuse light from inside",
  tolerance: 5e-7,
  note: "quadrature and closed form agree",
} as const;
checkTable<number>("k2", (n) => smoothSurface(n).k2, [
  { ...WALSH, input: 1.45, expected: 0.564503 },
  { ...WALSH, input: 1.48, expected: 0.584016 },
  { ...WALSH, input: 1.5, expected: 0.596346 },
  { ...WALSH, input: 1.52, expected: 0.608166 },
]);

const GAIN = { basis: "derived", source: "saunderson-1942", tolerance: 5e-6 } as const;
checkTable<readonly [45 | 8, number]>(
  "gain of a smooth surface",
  ([angle, n]) => surfaceForm(angle === 45 ? "45/0" : "d/8 excluded", smoothSurface(n)).gain,
  [
    { ...GAIN, input: [45, 1.48], expected: 0.41858, locator: "(1 - F45)(1 - F0)/n^2" },
    { ...GAIN, input: [45, 1.5], expected: 0.40523, locator: "(1 - F45)(1 - F0)/n^2" },
    { ...GAIN, input: [45, 1.52], expected: 0.39241, locator: "(1 - F45)(1 - F0)/n^2" },
    { ...GAIN, input: [8, 1.48], expected: 0.4004, locator: "(1 - k1)(1 - k2)" },
  ],
);

const INCLUDED = {
  basis: "derived",
  source: "saunderson-1942",
  locator: "Rm = k1 + (1 - k1)(1 - k2) R/(1 - k2 R), k1 .04, k2 .596",
  tolerance: 5e-7,
} as const;
const PRINTED = { k1: 0.04, k2: 0.596 };
checkTable<number>(
  "measuredReflectance, gloss included",
  (R) => measuredReflectance(R, "d/8 included", PRINTED),
  [
    { ...INCLUDED, input: 0, expected: 0.04 },
    { ...INCLUDED, input: 0.01, expected: 0.043902 },
    { ...INCLUDED, input: 0.1, expected: 0.081242 },
    { ...INCLUDED, input: 0.5, expected: 0.316239 },
    { ...INCLUDED, input: 0.9, expected: 0.792925 },
    { ...INCLUDED, input: 1, expected: 1 },
  ],
);

/** Error of K/S [1] when a 45/0 reading is corrected by the d/8 form, n 1.48. */
function misuse(Rm: number): number {
  const oil = smoothSurface(1.48);
  const right = absorptionScatteringRatio(internalReflectance(Rm, "45/0", oil));
  return absorptionScatteringRatio(internalReflectance(Rm, "d/8 excluded", oil)) / right - 1;
}
const MISUSE = {
  basis: "derived",
  source: "saunderson-1942",
  locator: "d/8 form on a 45/0 reading",
  tolerance: 0.005,
} as const;
checkTable<number>("K/S off by the wrong form", misuse, [
  { ...MISUSE, input: 0.003, expected: -0.04 },
  { ...MISUSE, input: 0.3, expected: -0.09 },
  { ...MISUSE, input: 0.85, expected: -0.47 },
]);

describe("the hemispherical mean", () => {
  test.each([1.1, 1.45, 1.5, 1.52, 2])("is what quadrature of Fresnel gives at n = %s", (n) => {
    // 2 Integral F sin i cos i di from outside, and from inside with total reflection beyond the critical angle.
    const steps = 20_000;
    let outside = 0;
    let inside = 0;
    for (let i = 0; i < steps; i++) {
      const sine = Math.sqrt((i + 0.5) / steps); // equal steps of sin^2, whose weight is uniform
      outside += surfaceReflectance(n, (Math.asin(sine) * 180) / Math.PI) / steps;
      inside +=
        (n * sine >= 1 ? 1 : surfaceReflectance(n, (Math.asin(n * sine) * 180) / Math.PI)) / steps;
    }
    expect(diffuseSurfaceReflectance(n)).toBeCloseTo(outside, 4);
    expect(smoothSurface(n).k2).toBeCloseTo(inside, 4);
  });

  test("is nothing without a surface", () => {
    expect(smoothSurface(1)).toEqual({ k1: 0, k2: 0, index: 1 });
  });
});

describe("surface of a reading", () => {
  test("round-trips in every geometry", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom(...GEOMETRIES_READ),
        fc.double({ min: 1, max: 1.7, noNaN: true }),
        (R, geometry, n) => {
          const surface = smoothSurface(n);
          expect(
            Math.abs(
              internalReflectance(measuredReflectance(R, geometry, surface), geometry, surface) - R,
            ),
          ).toBeLessThan(1e-12);
        },
      ),
      { seed: 1, numRuns: 200 },
    );
  });

  test.each(GEOMETRIES_READ)("k1 = k2 = 0 leaves a %s reading as it is", (geometry) => {
    expect(measuredReflectance(0.37, geometry, NO_SURFACE)).toBeCloseTo(0.37, 15);
    expect(internalReflectance(0.37, geometry, { k1: 0, k2: 0 })).toBeCloseTo(0.37, 15);
  });

  test("a black not above k1, gloss included, has nothing left inside", () => {
    expect(internalReflectance(0.04, "d/8 included", PRINTED)).toBe(0);
    expect(internalReflectance(0.0399, "d/8 included", PRINTED)).toBeLessThan(0);
    expect(internalReflectance(0.0401, "d/8 included", PRINTED)).toBeGreaterThan(0);
  });

  test("the index follows from k1, unless it is given", () => {
    expect(indexOfSurface({ k1: 0.04, k2: 0.5 })).toBeCloseTo(1.5, 12);
    expect(indexOfSurface({ k1: 0.04, k2: 0.5, index: 1.48 })).toBe(1.48);
  });

  test("refuses what is no surface and no reading", () => {
    for (const k of [-0.01, 1, NaN]) {
      for (const geometry of ["45/0", "d/8 excluded"] as const)
        expect(() => surfaceForm(geometry, { k1: k, k2: 0 })).toThrow(
          `The surface constant k1 is ${k}; right would be 0 <= k1 < 1`,
        );
      expect(() => surfaceForm("45/0", { k1: 0, k2: k })).toThrow(
        `The surface constant k2 is ${k}; right would be 0 <= k2 < 1`,
      );
      expect(() => indexOfSurface({ k1: k, k2: 0 })).toThrow("The surface constant k1");
    }
    for (const R of [-0.01, 1.01, NaN])
      expect(() => measuredReflectance(R, "45/0", NO_SURFACE)).toThrow("The internal reflectance");
    for (const Rm of [-0.0051, NaN, Infinity])
      expect(() => internalReflectance(Rm, "45/0", NO_SURFACE)).toThrow("The reflectance factor");
    for (const n of [0.99, NaN, Infinity]) {
      expect(() => surfaceReflectance(n, 0)).toThrow("The refractive index");
      expect(() => diffuseSurfaceReflectance(n)).toThrow("The refractive index");
    }
    for (const angle of [-1, 91, NaN])
      expect(() => surfaceReflectance(1.5, angle)).toThrow("The angle of incidence");
  });
});
