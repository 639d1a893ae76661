import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  CHART_GROUNDS,
  filmCoefficients,
  flatGround,
} from "../../lib/optics/films/film-coefficients.ts";
import { filmSpectrum } from "../../lib/optics/films/hiding.ts";
import type { Measurement } from "../../lib/optics/fit/measurement.ts";
import { OIL_SURFACE } from "../../lib/optics/surface/surface.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { GRID } from "./synthetic-drawdowns.ts";
import { filmReflectance } from "../../lib/optics/films/film.ts";
import {
  CONTRAST_RATIO_FROM_Y,
  OPACITY_CLASSES,
  opacityRuling,
  scatteringPowerLimit,
  type OpaqueFilm,
} from "../../lib/optics/films/opacity.ts";
import {
  leastScatteringPower,
  scatteringPowerOfFilms,
  scatteringPowerSeen,
  seenWeights,
} from "../../lib/optics/films/scattering-power.ts";

const LIGHT: OpaqueFilm = {
  filmUm: 75,
  luminance: 0.8,
  contrastRatio: 0.95,
  scatteringPower: undefined,
};
const DARK: OpaqueFilm = {
  filmUm: 75,
  luminance: 0.02,
  contrastRatio: 1,
  scatteringPower: [2, 2.5],
};

// Derived: without absorption a film throws back S X / (1 + S X): .90, .85 and .75 are of S X = 9, 17/3 and 3.
test.each([
  ["opaque", "from", 0.9],
  ["semi-opaque", "from", 0.85],
  ["semi-transparent", "from", 0.75],
  ["transparent", "below", 0.75],
] as const)("a dark film that is %s scatters %s what would throw back %s", (word, end, share) => {
  expect(scatteringPowerLimit(word)[end]).toBeCloseTo(share / (1 - share), 9);
});

describe("of a light film, by contrast ratio", () => {
  test.each([
    [1, "opaque"],
    [0.98, "opaque"],
    [0.9799, "semi-opaque"],
    [0.9, "semi-opaque"],
    [0.8999, "semi-transparent"],
    [0.6, "semi-transparent"],
    [0.5999, "transparent"],
    [0, "transparent"],
  ])("%s: %s", (contrastRatio, word) => {
    expect(opacityRuling({ ...LIGHT, contrastRatio })).toMatchObject({
      class: word,
      reason: { rule: "opacity-by-contrast-ratio", values: { class: word, contrastRatio } },
    });
  });
  test("says nothing without one", () =>
    expect(opacityRuling({ ...LIGHT, contrastRatio: undefined })).toEqual({
      class: undefined,
      spans: [],
      reason: undefined,
    }));
  // Derived: from the ratio less its uncertainty to the ratio and its uncertainty.
  test.each([
    [0.975, 0, ["semi-opaque"]],
    [0.975, 0.004, ["semi-opaque"]],
    [0.975, 0.006, ["semi-opaque", "opaque"]],
    [0.985, 0.006, ["semi-opaque", "opaque"]],
    [0.985, 0.004, ["opaque"]],
    [0.61, 0.02, ["transparent", "semi-transparent"]],
  ] as const)("%s known to %s may be %o", (contrastRatio, contrastUncertainty, spans) => {
    const ruling = opacityRuling({ ...LIGHT, contrastRatio, contrastUncertainty });
    expect(ruling).toMatchObject({ spans, reason: { values: { spans } } });
  });
  test.each([-0.001, NaN, Infinity])("refuses an uncertainty of %s", (contrastUncertainty) =>
    expect(() => opacityRuling({ ...LIGHT, contrastUncertainty })).toThrow(
      /uncertainty of the contrast ratio/,
    ),
  );
});

/** ISO 6504-3, memory: the contrast ratio is for films of Y above 25; ASTM D2805 sets a like limit near 15. */
describe("of a dark film no class comes from the contrast ratio", () => {
  test("up to Y 25, from both sides", () => {
    expect(opacityRuling({ ...DARK, luminance: CONTRAST_RATIO_FROM_Y }).reason?.rule).toBe(
      "opacity-by-scattering",
    );
    expect(opacityRuling({ ...DARK, luminance: 0.2501 }).reason?.rule).toBe(
      "opacity-by-contrast-ratio",
    );
    expect(CONTRAST_RATIO_FROM_Y).toBe(0.25);
  });
  test.each([
    [[9, 12], "opaque", ["opaque"]],
    // By scattering alone also semi-opaque, which no film is that hides its ground.
    [[8, 9.9], "opaque", ["opaque"]],
    [[5.7, 8.9], "opaque", ["opaque"]],
    [[3, 5.6], "semi-transparent", ["semi-transparent"]],
    [[2.9, 2.99], "transparent", ["transparent"]],
    [[1, 8], "transparent", ["transparent", "semi-transparent", "semi-opaque"]],
  ] as const)("S X %o: %s", (scatteringPower, word, spans) => {
    expect(opacityRuling({ ...DARK, scatteringPower })).toMatchObject({
      class: word,
      spans,
      reason: { rule: "opacity-by-scattering", values: { spans } },
    });
  });
  test.each([
    [[6.5, 11], 0.979, ["semi-opaque"]],
    [[6.5, 11], 0.89, ["semi-transparent"]],
    [[4.4, 6.7], 0.95, ["semi-transparent", "semi-opaque"]],
    [[4.4, 6.7], 1, ["semi-transparent", "semi-opaque"]],
    [[2.2, 3.2], 0.95, ["transparent", "semi-transparent"]],
  ] as const)("S X %o, contrast ratio %s, may be %o", (scatteringPower, contrastRatio, spans) =>
    expect(opacityRuling({ ...DARK, scatteringPower, contrastRatio }).spans).toEqual(spans),
  );
  /** Derived: what a dark film absorbs only raises its contrast ratio, so that the ratio bounds the class from above. */
  test.each([
    [[9, 12], 0.979, "semi-opaque"],
    [[9, 12], 0.89, "semi-transparent"],
    [[5.7, 8.9], 0.979, "semi-opaque"],
    [[5.7, 8.9], 0.76, "semi-transparent"],
    [[3, 5.6], 0.59, "transparent"],
    [[3, 5.6], 1, "semi-transparent"],
    [[2, 2.5], 1, "transparent"],
  ] as const)("S X %o, contrast ratio %s: %s", (scatteringPower, contrastRatio, word) =>
    expect(opacityRuling({ ...DARK, scatteringPower, contrastRatio }).class).toBe(word),
  );
  /** Derived: of a film that hid its ground a thinner one has that ratio at least, so that the ratio bounds no class from above. */
  test.each([
    [[4.8, 16.4], 0.977, "semi-opaque", ["semi-transparent", "semi-opaque", "opaque"]],
    [[4.8, 16.4], 0.981, "opaque", ["semi-transparent", "opaque"]],
    [[9, 12], 0.89, "opaque", ["opaque"]],
  ] as const)("S X %o, contrast ratio at least %s: %s", (scatteringPower, ratio, word, spans) =>
    expect(
      opacityRuling({ ...DARK, scatteringPower, contrastRatio: ratio, bound: "at least" }),
    ).toMatchObject({ class: word, spans }),
  );
  test("says what scattering alone would give where the ground moved the class", () => {
    const byGround = (contrastRatio: number): unknown =>
      opacityRuling({ ...DARK, scatteringPower: [5.7, 8.9], contrastRatio }).reason?.values;
    expect(byGround(1)).toMatchObject({
      class: "opaque",
      byScattering: "semi-opaque",
      contrastRatio: 1,
    });
    expect(byGround(0.979)).not.toHaveProperty("byScattering");
  });
  test("where nothing tells how much it scatters it has none, and that is said", () =>
    expect(opacityRuling({ ...DARK, scatteringPower: undefined })).toMatchObject({
      class: undefined,
      reason: { rule: "too-dark-for-contrast-ratio", source: "iso-6504-3" },
    }));
  /** Kubelka (1948): a film without absorption over black throws back S X / (1 + S X). */
  test("the limits are films that would themselves throw back .90, .85 and .75", () => {
    const shares = OPACITY_CLASSES.map(({ scatteringPowerMin }) =>
      filmReflectance(0, 1, scatteringPowerMin, 0),
    );
    expect(shares.map((share) => Math.round(share * 1000) / 1000)).toEqual([0.9, 0.85, 0.75, 0]);
  });
  test("the limits fall and end at 0, so that every film has one class", () => {
    for (const limit of ["contrastRatioMin", "scatteringPowerMin"] as const) {
      const limits = OPACITY_CLASSES.map((row) => row[limit]);
      expect(limits).toEqual(limits.toSorted((one, other) => other - one));
      expect(limits.at(-1)).toBe(0);
    }
  });
});

test("holds for films near 75 um alone, from both sides", () => {
  for (const filmUm of [60.1, 89.9])
    expect(opacityRuling({ ...LIGHT, filmUm }).class).toBe("semi-opaque");
  for (const filmUm of [59.9, 90.1])
    expect(opacityRuling({ ...LIGHT, filmUm })).toEqual({
      class: undefined,
      spans: [],
      reason: {
        rule: "film-not-comparable",
        values: { filmUm, wantedUm: 75 },
        source: "optics-practice",
      },
    });
});

test.each([
  [{ contrastRatio: -0.01 }, /contrast ratio/],
  [{ contrastRatio: 1.06 }, /contrast ratio/],
  [{ contrastRatio: NaN }, /contrast ratio/],
  [{ filmUm: 0 }, /film thickness/],
  [{ filmUm: NaN }, /film thickness/],
  [{ luminance: -0.1 }, /luminous reflectance/],
  [{ luminance: NaN }, /luminous reflectance/],
  [{ scatteringPower: [0, 1] as const }, /scattering power/],
  [{ scatteringPower: [1, NaN] as const }, /scattering power/],
])("refuses %o", (wrong, message) => {
  expect(() => opacityRuling({ ...DARK, ...wrong })).toThrow(message);
});

describe("S X as it is seen", () => {
  const grid = { startNm: 400, stepNm: 10, count: 31 };
  test("weights sum to 1 and leave out what the paint does not throw back", () => {
    const blue = Array.from({ length: 31 }, (_, i) => (i < 10 ? 0.3 : 0));
    const weights = seenWeights(grid, blue);
    expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(weights.slice(10).every((weight) => weight === 0)).toBe(true);
  });
  /** CIE 15:2018, y10 and D65, memory: .9918 and 104.0 at 550 nm, .0895 and 117.0 at 450 nm. */
  test("weights go by the light and the eye", () => {
    const weights = seenWeights(grid, Array<number>(31).fill(0.5));
    expect((weights[15] ?? 0) / (weights[5] ?? 1)).toBeCloseTo((0.9918 * 104) / (0.0895 * 117), 0);
  });
  test("of a constant S is S X", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 2, noNaN: true }), (S) => {
        const flat = Array.from({ length: 31 }, () => S);
        expect(scatteringPowerSeen(flat, seenWeights(grid, flat), 75)).toBeCloseTo(75 * S, 9);
      }),
      { seed: 1 },
    );
  });
  test("is not told by films that hid the chart at most of the light seen", () => {
    const flat = Array.from({ length: 31 }, () => 0.1);
    const paint = { grid, K: flat, S: flat, surface: { k1: 0, k2: 0 }, scaleUncertainty: 0 };
    const all = Array.from({ length: 31 }, (_, i) => i);
    const weights = seenWeights(grid, flat);
    expect(scatteringPowerOfFilms({ ...paint, atLeast: all }, weights, 75)).toBeUndefined();
    const told = scatteringPowerOfFilms({ ...paint, atLeast: [] }, weights, 75);
    expect(told?.[0]).toBeLessThan(7.5);
    expect(told?.[1]).toBeGreaterThan(7.5);
  });

  /** Derived, from films integrated by Kubelka and Munk's equations: an orange, dark below 550 nm and bright above. */
  test("of films that hid the chart has a least figure, which no paint falls short of", () => {
    const halves = (one: number, other: number): number[] =>
      Array.from({ length: GRID.count }, (_, i) => (i < GRID.count / 2 ? one : other));
    const told = (S: number, filmUm: number): { truth: number; least: number } => {
      const made = {
        ...{ grid: GRID, surface: OIL_SURFACE, atLeast: [], scaleUncertainty: 0 },
        ...{ K: halves(S, S / 500), S: halves(S, S) },
      };
      const drawn = (um: number, ground: Measurement): Measurement => ({
        spectrum: filmSpectrum(made, um, ground, "d/8 excluded"),
        geometry: "d/8 excluded",
      });
      const films = [CHART_GROUNDS.black, CHART_GROUNDS.white].map((Y) => {
        const ground = flatGround(GRID, Y);
        return { film: drawn(filmUm, ground), filmUm, ground };
      });
      const masstone = drawn(1e5, flatGround(GRID, CHART_GROUNDS.white));
      const paint = filmCoefficients(films, masstone, OIL_SURFACE);
      if (isStatement(paint)) throw new Error(paint.rule);
      const weights = seenWeights(GRID, masstone.spectrum.values);
      return { truth: S * 75, least: leastScatteringPower(paint, weights, 75) };
    };
    fc.assert(
      fc.property(
        fc.double({ min: -3, max: 0, noNaN: true }),
        fc.double({ min: 20, max: 300, noNaN: true }),
        (power, filmUm) => {
          const { truth, least } = told(10 ** power, filmUm);
          expect(least).toBeLessThanOrEqual(truth);
        },
      ),
      { seed: 9, numRuns: 200 },
    );
    // What hides its chart throughout the light that is seen is told to scatter, though not how much.
    const { truth, least } = told(0.2, 100);
    expect(truth).toBe(15);
    expect(least).toBeGreaterThan(3);
  });
});
