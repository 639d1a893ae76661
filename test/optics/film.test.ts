import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { filmReflectance, scatteringPower, twoGroundRatio } from "../../lib/optics/films/film.ts";
import { absorptionScatteringRatio, masstoneReflectance } from "../../lib/optics/kubelka-munk.ts";
import { checkTable, type Check } from "../support/checks.ts";
import { integratedReflectance } from "./two-flux.ts";

type Film = readonly [K: number, S: number, X: number, ground: number];
const FILM = {
  basis: "derived",
  source: "kubelka-1948",
  locator: "hyperbolic solution",
  tolerance: 5e-7,
  note: "closed form and numeric integration of dR/dX agree to 1e-6",
} as const;
const row = (input: Film, expected: number): Check<Film, number> => ({ ...FILM, input, expected });

const FILMS: Check<Film, number>[] = [
  row([0, 1, 1, 0], 0.5),
  row([0, 1, 1, 0.8], 0.833333),
  row([0, 1, 1, 1], 1),
  row([0.1, 1, 1, 0], 0.461034),
  row([0.1, 1, 1, 0.8], 0.712347),
  row([0.1, 1, 1, 1], 0.828919),
  row([0.1, 5, 1, 0], 0.779304),
  row([0.1, 5, 1, 0.8], 0.816556),
  row([0.1, 5, 1, 1], 0.858755),
  row([1, 1, 1, 0], 0.260147),
  row([1, 1, 1, 0.8], 0.287514),
  row([1, 1, 1, 1], 0.296761),
  row([0.02, 10, 0.5, 0], 0.827384),
  row([0.02, 10, 0.5, 0.8], 0.890057),
  row([0.02, 10, 0.5, 1], 0.980827),
  row([20, 1, 0.2, 0], 0.023818),
  row([20, 1, 0.2, 0.8], 0.024003),
  row([20, 1, 0.2, 1], 0.02405),
];

checkTable<Film>("filmReflectance", ([K, S, X, Rg]) => filmReflectance(K, S, X, Rg), FILMS);
checkTable<Film>(
  "integratedReflectance",
  ([K, S, X, Rg]) => integratedReflectance(K, S, X, Rg),
  FILMS,
);

const coefficient = fc.double({ min: 0, max: 50, noNaN: true });
const fraction = fc.double({ min: 0, max: 1, noNaN: true });
const thickness = fc.double({ min: 0, max: 20, noNaN: true });
const RUNS = { seed: 1, numRuns: 200 };

describe("filmReflectance", () => {
  test("agrees with the integration of its differential equation", () => {
    const mild = fc.double({ min: 0, max: 5, noNaN: true });
    fc.assert(
      fc.property(
        mild,
        mild,
        fc.double({ min: 0, max: 3, noNaN: true }),
        fraction,
        (K, S, X, Rg) => {
          expect(
            Math.abs(filmReflectance(K, S, X, Rg) - integratedReflectance(K, S, X, Rg)),
          ).toBeLessThan(1e-6);
        },
      ),
      RUNS,
    );
  });

  test("stays a reflectance", () => {
    fc.assert(
      fc.property(coefficient, coefficient, thickness, fraction, (K, S, X, Rg) => {
        const R = filmReflectance(K, S, X, Rg);
        expect(R).toBeGreaterThanOrEqual(-1e-15);
        expect(R).toBeLessThanOrEqual(1 + 1e-12);
      }),
      RUNS,
    );
  });

  test("two films one on the other are one film of both thicknesses", () => {
    fc.assert(
      fc.property(
        coefficient,
        coefficient,
        thickness,
        thickness,
        fraction,
        (K, S, one, other, Rg) => {
          const lower = Math.min(Math.max(filmReflectance(K, S, one, Rg), 0), 1);
          expect(
            Math.abs(filmReflectance(K, S, other, lower) - filmReflectance(K, S, one + other, Rg)),
          ).toBeLessThan(1e-9);
        },
      ),
      RUNS,
    );
  });

  test("depends on K X and S X alone", () => {
    fc.assert(
      fc.property(
        coefficient,
        coefficient,
        fraction,
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (K, S, Rg, unit) => {
          expect(
            Math.abs(
              filmReflectance(K * unit, S * unit, 1 / unit, Rg) - filmReflectance(K, S, 1, Rg),
            ),
          ).toBeLessThan(1e-9);
        },
      ),
      RUNS,
    );
  });

  test("tends to the masstone as X grows, over any ground", () => {
    for (const [K, S] of [
      [0.1, 1],
      [1, 1],
      [20, 1],
      [3, 0.01],
    ] as const) {
      for (const Rg of [0, 0.5, 1])
        expect(filmReflectance(K, S, 1e4, Rg)).toBeCloseTo(masstoneReflectance(K / S), 12);
    }
  });

  test.each([0, 0.3, 1])("leaves the bare ground %s at X = 0 and at K = S = 0", (Rg) => {
    expect(filmReflectance(2, 3, 0, Rg)).toBeCloseTo(Rg, 15);
    expect(filmReflectance(0, 0, 5, Rg)).toBe(Rg);
  });

  test("K -> 0 is the film that absorbs nothing", () => {
    expect(filmReflectance(1e-12, 1, 3, 0.2)).toBeCloseTo((0.8 * 3 + 0.2) / (0.8 * 3 + 1), 9);
  });

  test("S = 0 is a clear colour: Rg exp(-2 K X)", () => {
    expect(filmReflectance(0.7, 0, 1.5, 0.9)).toBeCloseTo(0.9 * Math.exp(-2.1), 14);
    expect(filmReflectance(50, 0, 20, 0.9)).toBe(0);
  });

  test("does not jump where the series gives way to exponentials", () => {
    const at = (depth: number): number =>
      filmReflectance(0.5, 0, depth / 0.5, 0.8) / (0.8 * Math.exp(-2 * depth));
    expect(at(0.0999999)).toBeCloseTo(1, 9);
    expect(at(0.1000001)).toBeCloseTo(1, 12);
  });

  test.each([
    [-1, 1, 1, 0, "absorption coefficient K"],
    [NaN, 1, 1, 0, "absorption coefficient K"],
    [Infinity, 1, 1, 0, "absorption coefficient K"],
    [1, -1, 1, 0, "scattering coefficient S"],
    [1, NaN, 1, 0, "scattering coefficient S"],
    [1, 1, -1, 0, "film thickness"],
    [1, 1, NaN, 0, "film thickness"],
    [1, 1, Infinity, 0, "film thickness"],
    [1, 1, 1, -0.01, "ground reflectance"],
    [1, 1, 1, 1.01, "ground reflectance"],
    [1, 1, 1, NaN, "ground reflectance"],
  ])("refuses K %s, S %s, X %s, Rg %s", (K, S, X, Rg, subject) => {
    expect(() => filmReflectance(K, S, X, Rg)).toThrow(`The ${subject} is `);
  });
});

describe("scatteringPower", () => {
  test("is (1/b) arcoth((1 - a R0)/(b R0)) over black", () => {
    // K/S = .1: a = 1.1, b = sqrt(.21); the film [.1, 1, 1] over black reads .461034 (kubelka-1948).
    const b = Math.sqrt(0.21);
    const x = (1 - 1.1 * 0.461034) / (b * 0.461034);
    const byHand = Math.log((x + 1) / (x - 1)) / (2 * b);
    expect(byHand).toBeCloseTo(1, 4);
    expect(scatteringPower(0.461034, masstoneReflectance(0.1), 0)).toBeCloseTo(byHand, 10);
  });

  test("takes S X back out of an integrated film, over either ground", () => {
    const S = fc.double({ min: 0.2, max: 3, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 2, noNaN: true }),
        S,
        fc.constantFrom(0, 0.05, 1),
        (ratio, SX, Rg) => {
          const R = integratedReflectance(ratio * SX, SX, 1, Rg);
          const Rinf = masstoneReflectance(ratio);
          fc.pre(Math.abs(R - Rinf) > 1e-3 && Math.abs(R - Rg) > 1e-3);
          expect(scatteringPower(R, Rinf, Rg) / SX).toBeCloseTo(1, 3);
        },
      ),
      RUNS,
    );
  });

  test("of a film that absorbs nothing is R/(1 - R) over black", () => {
    expect(scatteringPower(0.5, 1, 0)).toBe(1);
  });

  test.each([
    [0.7, 0.7, 0],
    [0.71, 0.7, 0],
    [0, 0.7, 0],
    [-0.1, 0.7, 0],
    [NaN, 0.7, 0],
  ])("refuses R %s, masstone %s, ground %s", (R, Rinf, Rg) => {
    expect(() => scatteringPower(R, Rinf, Rg)).toThrow(
      /The film reflectance is .*; right would be between ground 0 and masstone 0.7/,
    );
  });
});

describe("twoGroundRatio", () => {
  test("takes K/S back out of an integrated film over black and white", () => {
    const S = fc.double({ min: 0.1, max: 2, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 2, noNaN: true }), S, (ratio, SX) => {
        const over = (Rg: number): number => integratedReflectance(ratio * SX, SX, 1, Rg);
        fc.pre(over(0.85) - over(0.04) > 0.01);
        expect((twoGroundRatio(over(0.04), over(0.85), 0.04, 0.85) ?? NaN) / ratio).toBeCloseTo(
          1,
          3,
        );
        expect(absorptionScatteringRatio(masstoneReflectance(ratio))).toBeCloseTo(ratio, 9);
      }),
      RUNS,
    );
  });

  test("is undefined for readings that no film gives", () => {
    // A film that absorbs nothing and reads R0 = .5 over black lets .5 through: over white .8 it reads .5 + .25 (.8/(1 - .4)).
    expect(twoGroundRatio(0.5, 0.9, 0, 0.8)).toBeUndefined();
    expect(twoGroundRatio(0.5, 0.5 + 0.25 * (0.8 / (1 - 0.5 * 0.8)), 0, 0.8)).toBeCloseTo(0, 12);
  });

  test("refuses what is no reading and no pair of grounds", () => {
    for (const R of [NaN, -0.01, 1.01])
      expect(() => twoGroundRatio(R, 0.9, 0, 0.8)).toThrow(`The film reflectance is ${R}`);
    for (const black of [0.8, 0.9, NaN, -0.1])
      expect(() => twoGroundRatio(0.5, 0.7, black, 0.8)).toThrow(
        `The reflectance of the black ground is ${black}`,
      );
  });
});
