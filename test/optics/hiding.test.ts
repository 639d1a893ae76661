import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tristimulus } from "../../lib/colorimetry/tristimulus.ts";
import { flatSpectrum, wavelengthsNm } from "../../lib/quantities/spectrum.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import {
  CHART_GROUNDS,
  filmCoefficients,
  filmOnGrid,
  flatGround,
  type FilmCoefficients,
  type FilmDrawdown,
} from "../../lib/optics/films/film-coefficients.ts";
import { smoothSurface } from "../../lib/optics/surface/fresnel.ts";
import { GLAZE_FILMS_UM, glazeStrip } from "../../lib/optics/films/glaze.ts";
import {
  contrastRatio,
  coverageCm2PerMl,
  filmContrastRatio,
  filmSpectrum,
  hidingFilmUm,
} from "../../lib/optics/films/hiding.ts";
import {
  absoluteCoefficients,
  extendedPaint,
  mixedCoefficients,
} from "../../lib/optics/mixtures/mixed-coefficients.ts";
import type { Measurement } from "../../lib/optics/fit/measurement.ts";
import {
  BLUE,
  bounced,
  fitOf,
  GRID,
  LAMP,
  LEAD,
  NO_NOISE,
  OCHRE,
  syntheticSet,
  TITANIUM,
  YELLOW,
  type SyntheticPigment,
} from "./synthetic-drawdowns.ts";
import { integratedMasstone, integratedReflectance } from "./two-flux.ts";

const OIL = smoothSurface(1.5);
const [BLACK, WHITE] = [0.02, 0.88];
const GROUNDS = {
  black: flatGround(GRID, CHART_GROUNDS.black),
  white: flatGround(GRID, CHART_GROUNDS.white),
};

/** Synthetic K and S are relative: this much of them per micrometre. */
const PER_UM = 0.1;

/** A film made by integration and bounces: internal ground and its reading, film reading. */
function film(paint: SyntheticPigment, filmUm: number, ground: number): FilmDrawdown {
  const values = wavelengthsNm(GRID).map((nm) =>
    bounced(
      integratedReflectance(PER_UM * paint.K(nm), PER_UM * paint.S(nm), filmUm, ground),
      "d/8 excluded",
      OIL,
    ),
  );
  const bare = bounced(ground, "d/8 excluded", OIL);
  return {
    filmUm,
    film: { spectrum: { grid: GRID, values }, geometry: "d/8 excluded" },
    ground: flatGround(GRID, bare),
  };
}

function masstoneOf(paint: SyntheticPigment): Measurement {
  return {
    spectrum: {
      grid: GRID,
      values: wavelengthsNm(GRID).map((nm) =>
        bounced(integratedMasstone(paint.K(nm), paint.S(nm)), "d/8 excluded", OIL),
      ),
    },
    geometry: "d/8 excluded",
  };
}

function known(
  found: ReturnType<typeof filmCoefficients | typeof absoluteCoefficients>,
): FilmCoefficients {
  if (isStatement(found)) throw new Error(`Unexpected absence ${found.rule}`);
  return found;
}

/** The true paint, by its formulae. */
function paintOf(paint: SyntheticPigment): FilmCoefficients {
  const nms = wavelengthsNm(GRID);
  return {
    grid: GRID,
    K: nms.map((nm) => PER_UM * paint.K(nm)),
    S: nms.map((nm) => PER_UM * paint.S(nm)),
    surface: OIL,
    atLeast: [],
    scaleUncertainty: 0,
  };
}

function expectCoefficients(found: FilmCoefficients, paint: SyntheticPigment): void {
  for (const [i, nm] of wavelengthsNm(GRID).entries()) {
    if (found.atLeast.includes(i)) continue;
    expect((found.S[i] ?? NaN) / (PER_UM * paint.S(nm)), `S at ${nm}`).toBeCloseTo(1, 1);
    expect((found.K[i] ?? NaN) / (PER_UM * paint.K(nm)), `K at ${nm}`).toBeCloseTo(1, 1);
  }
}

describe("filmCoefficients", () => {
  test.each<[string, SyntheticPigment, number]>([
    ["titanium", TITANIUM, 40],
    ["lead", LEAD, 60],
    ["ochre", OCHRE, 8],
    ["yellow", YELLOW, 8],
  ])("%s: from a film over black and its masstone", (_, paint, filmUm) => {
    const found = known(filmCoefficients([film(paint, filmUm, BLACK)], masstoneOf(paint), OIL));
    expect(found.atLeast.length).toBeLessThan(20);
    expectCoefficients(found, paint);
  });

  test.each<[string, SyntheticPigment, number]>([
    ["ochre", OCHRE, 6],
    ["blue", BLUE, 6],
    ["yellow", YELLOW, 6],
    ["titanium", TITANIUM, 10],
  ])("%s: from a film over black and white, without its masstone", (_, paint, filmUm) => {
    expectCoefficients(
      known(
        filmCoefficients([film(paint, filmUm, WHITE), film(paint, filmUm, BLACK)], undefined, OIL),
      ),
      paint,
    );
  });

  test("a film that hides gives the least that would: K and S too small, and said so", () => {
    const found = known(filmCoefficients([film(LAMP, 60, WHITE)], masstoneOf(LAMP), OIL));
    expect(found.atLeast).toHaveLength(GRID.count);
    for (const [i, nm] of wavelengthsNm(GRID).entries()) {
      expect(found.K[i]).toBeLessThan(PER_UM * LAMP.K(nm));
      expect(found.K[i]).toBeGreaterThan(0);
    }
  });

  test("asks for what it needs", () => {
    expect(filmCoefficients([], undefined, OIL)).toMatchObject({
      rule: "film-needs-masstone-or-two-grounds",
      values: { films: 0 },
    });
    expect(filmCoefficients([film(OCHRE, 6, BLACK)], undefined, OIL)).toMatchObject({
      rule: "film-needs-masstone-or-two-grounds",
      values: { films: 1 },
    });
    expect(filmCoefficients([film(LAMP, 60, 0.0148)], masstoneOf(LAMP), OIL)).toMatchObject({
      rule: "film-tells-nothing",
    });
    const other = {
      ...film(OCHRE, 6, BLACK),
      ground: flatGround({ ...GRID, stepNm: 5, count: 61 }, 0.01),
    };
    expect(() => filmCoefficients([other], masstoneOf(OCHRE), OIL)).toThrow("of several grids");
    for (const filmUm of [0, -1, NaN, Infinity]) {
      expect(() =>
        filmCoefficients([{ ...film(OCHRE, 6, BLACK), filmUm }], masstoneOf(OCHRE), OIL),
      ).toThrow(`The film thickness is ${filmUm}`);
    }
  });
});

describe("contrast ratio", () => {
  test("is Y over black by Y over white", () => {
    expect(contrastRatio(flatSpectrum(GRID, 0.49), flatSpectrum(GRID, 0.5))).toBeCloseTo(0.98, 12);
    expect(() => contrastRatio(flatSpectrum(GRID, 0.5), flatSpectrum(GRID, 0))).toThrow(
      "The Y over white is 0",
    );
  });

  test("of a film is that of the integrated one, gloss included", () => {
    const Y = (ground: number): number =>
      tristimulus(
        {
          grid: GRID,
          values: wavelengthsNm(GRID).map((nm) =>
            bounced(
              integratedReflectance(PER_UM * LEAD.K(nm), PER_UM * LEAD.S(nm), 60, ground),
              "d/8 included",
              OIL,
            ),
          ),
        },
        "D65/10",
      ).Y;
    const grounds = {
      black: flatGround(GRID, bounced(BLACK, "d/8 excluded", OIL)),
      white: flatGround(GRID, bounced(WHITE, "d/8 excluded", OIL)),
    };
    expect(filmContrastRatio(paintOf(LEAD), 60, grounds)).toBeCloseTo(Y(BLACK) / Y(WHITE), 5);
  });

  test("rises with the film, from the bare grounds to 1", () => {
    const ratios = [0, 5, 10, 20, 50, 100, 500, 2000].map((filmUm) =>
      filmContrastRatio(paintOf(LEAD), filmUm, GROUNDS),
    );
    expect(ratios).toEqual(ratios.toSorted((a, b) => a - b));
    expect(ratios.at(-1)).toBeCloseTo(1, 3);
  });
});

describe("the film that hides", () => {
  test("reaches the contrast ratio asked for, and a thinner one does not", () => {
    for (const paint of [TITANIUM, LEAD, OCHRE, LAMP, BLUE]) {
      const filmUm = hidingFilmUm(paintOf(paint), GROUNDS);
      if (typeof filmUm !== "number") throw new Error(`Unexpected absence ${filmUm.rule}`);
      expect(filmContrastRatio(paintOf(paint), filmUm, GROUNDS)).toBeCloseTo(0.98, 5);
      expect(filmContrastRatio(paintOf(paint), filmUm * 0.98, GROUNDS)).toBeLessThan(0.98);
    }
  });

  test("is as many times thicker as a paint is thinned", () => {
    const half = mixedCoefficients([
      { paint: paintOf(LEAD), parts: 1 },
      { paint: { ...paintOf(LEAD), K: GRID_ZERO, S: GRID_ZERO }, parts: 1 },
    ]);
    expect(
      Number(hidingFilmUm(half, GROUNDS)) / Number(hidingFilmUm(paintOf(LEAD), GROUNDS)),
    ).toBeCloseTo(2, 4);
  });

  test("is absent where nothing hides, and for no contrast ratio", () => {
    const clear = { ...paintOf(LEAD), K: GRID_ZERO, S: GRID_ZERO };
    expect(hidingFilmUm(clear, GROUNDS)).toMatchObject({
      rule: "does-not-hide",
      values: { filmUm: 5000, target: 0.98 },
    });
    for (const target of [0, 1, NaN, 1.1])
      expect(() => hidingFilmUm(paintOf(LEAD), GROUNDS, target)).toThrow(
        `The contrast ratio is ${target}`,
      );
  });

  test.each([
    [100, 100],
    [75, 1e4 / 75],
    [50, 200],
  ])("of %s um covers %s cm2 a millilitre", (filmUm, area) => {
    expect(coverageCm2PerMl(filmUm)).toBeCloseTo(area, 12);
  });

  test.each([0, -1, NaN, Infinity])("covers nothing at %s um", (filmUm) => {
    expect(() => coverageCm2PerMl(filmUm)).toThrow(`The film thickness is ${filmUm}`);
  });
});

const GRID_ZERO = Array.from({ length: GRID.count }, () => 0);

describe("glazeStrip", () => {
  const white = flatGround(GRID, 0.8);

  test("goes from the ground to the masstone, every film darker than the last", () => {
    const strip = glazeStrip(paintOf(BLUE), white, [0, ...GLAZE_FILMS_UM, 2000]);
    const lightness = strip.map(({ lab }) => lab.L);
    expect(lightness).toEqual(lightness.toSorted((a, b) => b - a));
    for (const value of strip[0]?.spectrum.values ?? []) expect(value).toBeCloseTo(0.8, 10);
    for (const [i, value] of (strip.at(-1)?.spectrum.values ?? []).entries())
      expect(value).toBeCloseTo(masstoneOf(BLUE).spectrum.values[i] ?? NaN, 5);
    expect([GLAZE_FILMS_UM[0], GLAZE_FILMS_UM.at(-1)]).toEqual([5, 200]);
    // Preferred numbers, 1-2-5: each film is two or two and a half times the one before.
    for (const [i, filmUm] of GLAZE_FILMS_UM.slice(1).entries())
      expect([2, 2.5]).toContain(filmUm / (GLAZE_FILMS_UM[i] ?? NaN));
  });

  test("stays a reflectance over any ground, in any geometry", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.85, noNaN: true }),
        fc.constantFrom("45/0" as const, "d/8 included" as const, "d/8 excluded" as const),
        fc.double({ min: 0, max: 500, noNaN: true }),
        (ground, geometry, filmUm) => {
          for (const value of filmSpectrum(
            paintOf(YELLOW),
            filmUm,
            flatGround(GRID, ground),
            geometry,
          ).values)
            expect(value >= 0 && value <= 1.01).toBe(true);
        },
      ),
      { seed: 1, numRuns: 50 },
    );
  });
});

describe("absolute K and S of a let-down colour", () => {
  const set = syntheticSet(OCHRE, [{ slug: "lead", white: LEAD, massRatios: [0.5, 0.1] }], {
    geometry: "d/8 excluded",
    surface: OIL,
    statesSurface: true,
    noise: NO_NOISE,
    seed: 1,
  });
  const fit = fitOf(set);

  test("are the colour's own, by the white's", () => {
    const found = known(
      absoluteCoefficients(fit, "lead", paintOf(LEAD), OCHRE.density / LEAD.density),
    );
    // Weighed by density and mixed by volume: K per volume of ochre comes back.
    for (const [i, nm] of wavelengthsNm(GRID).entries()) {
      if ((fit.whites[0]?.KUncertainty[i] ?? NaN) > 0.1) continue;
      expect((found.K[i] ?? NaN) / (PER_UM * OCHRE.K(nm))).toBeCloseTo(1, 1);
      expect((found.S[i] ?? NaN) / (PER_UM * OCHRE.S(nm))).toBeCloseTo(1, 1);
    }
  });

  test("of a film on other wavelengths are those of the paint there, and none beyond its ends", () => {
    const smooth = { ...paintOf(OCHRE), atLeast: [4] };
    const between = { startNm: 405, stepNm: 10, count: 30 };
    const found = filmOnGrid(smooth, between);
    for (const [i, nm] of wavelengthsNm(between).entries())
      expect((found?.S[i] ?? NaN) / (PER_UM * OCHRE.S(nm))).toBeCloseTo(1, 2);
    // 440 nm is read; 435 and 445 lie next to it, and count with what is above them.
    expect(found?.atLeast).toEqual([3]);
    expect(filmOnGrid(smooth, GRID)).toBe(smooth);
    expect(filmOnGrid(smooth, { ...GRID, startNm: 390 })).toBeUndefined();
  });

  test("need the white, its grid and a density", () => {
    expect(absoluteCoefficients(fit, "zinc", paintOf(LEAD), 1)).toEqual({
      rule: "no-such-white",
      values: { white: "zinc" },
    });
    expect(() =>
      absoluteCoefficients(fit, "lead", { ...paintOf(LEAD), grid: { ...GRID, count: 30 } }, 1),
    ).toThrow("of several grids");
    for (const density of [0, NaN, Infinity])
      expect(() => absoluteCoefficients(fit, "lead", paintOf(LEAD), density)).toThrow(
        "The ratio of densities",
      );
  });
});

describe("mixtures by volume", () => {
  test("of a paint with itself change nothing", () => {
    const mixed = mixedCoefficients([
      { paint: paintOf(OCHRE), parts: 3 },
      { paint: paintOf(OCHRE), parts: 0.7 },
    ]);
    for (const [i, K] of mixed.K.entries()) expect(K).toBeCloseTo(paintOf(OCHRE).K[i] ?? NaN, 12);
  });

  test("refuse no parts, negative parts and unlike grids", () => {
    expect(() => mixedCoefficients([])).toThrow("The sum of parts by volume is 0");
    expect(() =>
      mixedCoefficients([
        { paint: paintOf(OCHRE), parts: 2 },
        { paint: paintOf(LEAD), parts: -1 },
      ]),
    ).toThrow("The part by volume is -1");
    for (const parts of [0, Infinity, NaN])
      expect(() => mixedCoefficients([{ paint: paintOf(OCHRE), parts }])).toThrow(
        `The sum of parts by volume is ${parts}`,
      );
    expect(() =>
      mixedCoefficients([
        { paint: paintOf(OCHRE), parts: 1 },
        { paint: { ...paintOf(LEAD), grid: { ...GRID, count: 30 } }, parts: 1 },
      ]),
    ).toThrow("The count of wavelengths");
  });
});

describe("an extender medium", () => {
  /*
   * Chalk in oil scatters per volume of particle 25 times less than lead white; at 45 and 40 % of the
   * paint by volume, 22 times less a volume of paint (optics reference, by Lorenz-Mie; an estimate).
   */
  const chalk: FilmCoefficients = { ...paintOf(LEAD), S: paintOf(LEAD).S.map((S) => S / 22) };

  test("lightens a lamp-black paint by less than 5 L*, ten volumes to one, gloss included (common practice, no source)", () => {
    const { steps, ruling } = extendedPaint(paintOf(LAMP), chalk);
    expect(steps.map(({ volumes }) => volumes)).toEqual([0, 1, 2, 5, 10]);
    expect(ruling.rule).toBe("extender-hardly-lightens");
    expect(ruling.values["change"]).toBeGreaterThan(0);
    expect(ruling.values["change"]).toBeLessThan(5);
  });

  test("is no match for a white: ten volumes of lead white do lighten it", () => {
    expect(extendedPaint(paintOf(LAMP), paintOf(LEAD)).ruling.rule).toBe("extender-lightens");
  });
});
