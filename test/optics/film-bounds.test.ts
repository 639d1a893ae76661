import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  boundedContrast,
  boundedHidingFilm,
  contrastLimits,
} from "../../lib/optics/films/film-bounds.ts";
import { CHART_GROUNDS, flatGround } from "../../lib/optics/films/film-coefficients.ts";
import { filmContrastRatio } from "../../lib/optics/films/hiding.ts";
import { opacityRuling } from "../../lib/optics/films/opacity.ts";
import { OIL_SURFACE } from "../../lib/optics/surface/surface.ts";
import { GRID } from "./synthetic-drawdowns.ts";

const GROUNDS = {
  black: flatGround(GRID, CHART_GROUNDS.black),
  white: flatGround(GRID, CHART_GROUNDS.white),
};

/** A paint of one K and S below 550 nm and another above [1/um]. */
function paint([K, S]: readonly [number, number], [K2, S2]: readonly [number, number]) {
  const split = (one: number, other: number): number[] =>
    Array.from({ length: GRID.count }, (_, i) => (i < GRID.count / 2 ? one : other));
  return {
    grid: GRID,
    surface: OIL_SURFACE,
    K: split(K, K2),
    S: split(S, S2),
    atLeast: [],
    scaleUncertainty: 0.05,
  };
}

const coefficient = fc.double({ min: -4, max: 0, noNaN: true }).map((power) => 10 ** power);
const pair = fc.tuple(coefficient, coefficient);

/** basis: derived; films integrated by Kubelka and Munk's equations, of any paint. */
describe("limits from a film read at another thickness", () => {
  test("hold the paint's own contrast ratio, thinner or thicker", () => {
    fc.assert(
      fc.property(
        pair,
        pair,
        fc.double({ min: 10, max: 300, noNaN: true }),
        fc.double({ min: 10, max: 300, noNaN: true }),
        (one, other, readUm, filmUm) => {
          const made = paint(one, other);
          const contrastRatio = filmContrastRatio(made, readUm, GROUNDS);
          const own = filmContrastRatio(made, filmUm, GROUNDS);
          const { least, most } = contrastLimits(filmUm, [{ filmUm: readUm, contrastRatio }]);
          expect(own).toBeGreaterThanOrEqual(least - 0.002);
          expect(own).toBeLessThanOrEqual(most + 0.002);
        },
      ),
      { seed: 75, numRuns: 500 },
    );
  });

  test("say nothing without films, and refuse what is no film", () => {
    expect(contrastLimits(75, [])).toEqual({ least: 0, most: 1 });
    expect(() => contrastLimits(0, [])).toThrow(RangeError);
  });

  test("a film that noise has read whiter over black than over white rules out no more than all below 1", () =>
    expect(contrastLimits(75, [{ filmUm: 50, contrastRatio: 1.004 }])).toEqual({
      least: 1,
      most: 1,
    }));
});

describe("a contrast ratio at 75 um", () => {
  const at = (contrastRatio: number) => ({ filmUm: 75, contrastRatio });
  const classOf = (contrastRatio: number, read: { filmUm: number; contrastRatio: number }) => {
    const { value, bound } = boundedContrast(at(contrastRatio), 0.01, [read], false);
    return opacityRuling({
      filmUm: 75,
      luminance: 0.6,
      contrastRatio: value,
      bound,
      scatteringPower: undefined,
    });
  };

  test("of a paint that reads 1.00 at 100 um is opaque, whatever was worked out", () => {
    // By hand: (1 - .995)^(75/100) = .0188.
    expect(classOf(0.93, { filmUm: 100, contrastRatio: 0.995 })).toMatchObject({
      class: "opaque",
      reason: { values: { bound: "at least", contrastRatio: expect.closeTo(0.9812, 4) as number } },
    });
    expect(classOf(0.93, { filmUm: 100, contrastRatio: 1 }).class).toBe("opaque");
  });

  test("is no more than a thicker film reads, and no less than a thinner one", () => {
    expect(classOf(0.92, { filmUm: 100, contrastRatio: 0.76 })).toMatchObject({
      class: "semi-transparent",
      reason: { values: { bound: "at most", contrastRatio: 0.76 } },
    });
    expect(classOf(0.8, { filmUm: 50, contrastRatio: 0.95 })).toMatchObject({
      class: "semi-opaque",
      reason: { values: { bound: "at least", contrastRatio: 0.95 } },
    });
  });

  test("is a figure where films leave it possible, or move it by less than its ±", () => {
    expect(boundedContrast(at(0.8), 0.01, [{ filmUm: 100, contrastRatio: 0.85 }], false)).toEqual({
      value: 0.8,
    });
    expect(boundedContrast(at(0.8), 0.01, [{ filmUm: 100, contrastRatio: 0.795 }], false)).toEqual({
      value: 0.795,
    });
    expect(boundedContrast(at(0.8), 0.01, [{ filmUm: 75, contrastRatio: 0.7 }], false)).toEqual({
      value: 0.7,
    });
  });

  test("is a bound where the films hid, unless nothing is left above it", () => {
    expect(boundedContrast(at(0.97), 0.01, [], true)).toEqual({ value: 0.97, bound: "at least" });
    expect(boundedContrast(at(0.999), 0.01, [], true)).toEqual({ value: 0.999 });
    // From .995 on a ratio of two decimals reads 1.00.
    expect(boundedContrast(at(0.995), 0.01, [], true)).toEqual({ value: 0.995 });
    expect(boundedContrast(at(0.9949), 0.01, [], true)).toEqual({
      value: 0.9949,
      bound: "at least",
    });
  });

  test("lies between films that contradict one another by noise", () => {
    const films = [
      { filmUm: 50, contrastRatio: 0.9 },
      { filmUm: 100, contrastRatio: 0.88 },
    ];
    expect(boundedContrast(at(0.95), 0.01, films, false).value).toBeCloseTo(0.89, 9);
  });
});

describe("the film that hides", () => {
  const films = [
    { filmUm: 30, contrastRatio: 0.9 },
    { filmUm: 49, contrastRatio: 0.995 },
  ];
  test.each([
    [60, false, { value: 49, bound: "at most" }],
    [Infinity, false, { value: 49, bound: "at most" }],
    [20, false, { value: 30, bound: "at least" }],
    [40, false, { value: 40 }],
    [40, true, { value: 40, bound: "at most" }],
    [50, false, { value: 49 }],
  ] as const)("worked out as %s, films hid %s", (hidingUm, hid, wanted) => {
    expect(boundedHidingFilm(hidingUm, 0.05, films, hid, 0.98)).toEqual(wanted);
  });

  test("is no thicker for a film that lets its ground through by no more than its noise", () => {
    const dark = [{ filmUm: 12, contrastRatio: 0.975, noise: 0.01 }];
    expect(boundedHidingFilm(10, 0.05, dark, false, 0.98)).toEqual({ value: 10 });
    expect(contrastLimits(10, dark).most).toBeCloseTo(0.985, 9);
  });

  /** By hand: of two films of one thickness that read apart the one that hid tells that the other's ground showed by noise. */
  test("is bounded from below by no film as thick as one that hid", () => {
    const apart = [
      { filmUm: 75, contrastRatio: 0.985 },
      { filmUm: 75, contrastRatio: 0.9 },
    ];
    expect(boundedHidingFilm(60, 0.05, apart, false, 0.98)).toEqual({ value: 60 });
  });

  test("that no film reaches is not made up", () => {
    expect(boundedHidingFilm(Infinity, 0.05, [], false, 0.98)).toEqual({ value: Infinity });
  });
});
