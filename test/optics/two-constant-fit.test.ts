import { describe, expect, test } from "vitest";
import { flatSpectrum } from "../../lib/quantities/spectrum.ts";
import type { ColourFit } from "../../lib/optics/fit/colour-fit.ts";
import { statedNoise } from "../../lib/colorimetry/reading-noise.ts";
import { DRAWDOWN_NOISE } from "../../lib/optics/fit/reading-noise.ts";
import type { Measurement, SurfaceConstants } from "../../lib/optics/fit/measurement.ts";
import { SCATTERING_BOUND, scatteringRuling } from "../../lib/optics/fit/scattering-statement.ts";
import { bounced, fitOf, GRID } from "./synthetic-drawdowns.ts";
import { integratedMasstone } from "./two-flux.ts";

const SURFACE: SurfaceConstants = { k1: 0.04, k2: 0.55 };
const WHITE = 0.88;

interface Flat {
  readonly masstone: number;
  readonly tints: readonly { readonly massRatio: number; readonly R: number }[];
}

/** A fit of drawdowns that read alike at every wavelength. */
/** Standard uncertainty of a reading here [1]. */
const READING = 0.002;

function flatFit({ masstone, tints }: Flat, uncertainty = READING): ColourFit {
  const reading = (R: number): Measurement => ({
    spectrum: flatSpectrum(GRID, R),
    geometry: "d/8 excluded",
    surface: SURFACE,
    noise: statedNoise(uncertainty),
  });
  const fit = fitOf({
    masstone: reading(masstone),
    whites: [{ slug: "white", masstone: reading(WHITE) }],
    tints: tints.map(({ massRatio, R }, i) => ({
      id: String(i),
      white: "white",
      massRatio,
      ratioKind: "paint",
      reading: reading(R),
    })),
  });
  return fit;
}

const coefficients = (fit: ColourFit): { K: number; S: number } => ({
  K: fit.whites[0]?.K[15] ?? NaN,
  S: fit.whites[0]?.S[15] ?? NaN,
});

describe("the fit of drawdowns that contradict each other a little", () => {
  const flat: Flat = {
    masstone: 0.15,
    tints: [
      { massRatio: 0.5, R: 0.36 },
      { massRatio: 0.1, R: 0.62 },
      { massRatio: 0.02, R: 0.79 },
    ],
  };
  const fit = flatFit(flat);
  const { K, S } = coefficients(fit);
  const whiteRatio = fit.whites[0]?.whiteRatio[15] ?? NaN;

  /** Reading by integration and bounces, to hold the minimum against. */
  const read = (massRatio: number, k: number, s: number): number =>
    bounced(
      massRatio === Infinity
        ? integratedMasstone(k, s)
        : integratedMasstone(whiteRatio + massRatio * k, 1 + massRatio * s),
      "d/8 excluded",
      SURFACE,
    );
  const drawdowns = [{ massRatio: Infinity, R: flat.masstone }, ...flat.tints];
  const weights = drawdowns.map(({ massRatio, R }) => {
    const byRatio =
      massRatio === Infinity
        ? 0
        : (read(massRatio * 1.001, K, S) - read(massRatio * 0.999, K, S)) / 0.002;
    return 1 / Math.hypot(READING, DRAWDOWN_NOISE.relative * R, DRAWDOWN_NOISE.massRatio * byRatio);
  });
  const cost = (k: number, s: number): number =>
    drawdowns.reduce(
      (sum, { massRatio, R }, i) => sum + ((R - read(massRatio, k, s)) * (weights[i] ?? NaN)) ** 2,
      0,
    );

  test("is the least of the weighted squares: no step in K or S betters it", () => {
    const least = cost(K, S);
    expect(least).toBeGreaterThan(0.05);
    for (const step of [0.01, 0.03]) {
      for (const [k, s] of [
        [1 + step, 1],
        [1 - step, 1],
        [1, 1 + step],
        [1, 1 - step],
        [1 + step, 1 + step],
        [1 - step, 1 - step],
      ] as const) {
        expect(cost(K * k, S * s), `K x ${k}, S x ${s}`).toBeGreaterThan(least - 2e-3);
      }
    }
  });

  test("has a chi-square of that least, for each let-down to spare", () => {
    expect(fit.chiSquare).toBeCloseTo(cost(K, S) / 2, 2);
  });
});

describe("the uncertainty of K and S", () => {
  const base: Flat = { masstone: 0.15, tints: [{ massRatio: 0.1, R: 0.6 }] };
  const sigma = (R: number): number => Math.hypot(READING, DRAWDOWN_NOISE.relative * R);

  test.each([
    [0.15, 0.6],
    [0.02, 0.4],
    [0.4, 0.7],
  ])(
    "is what errors of reading and weighing make of masstone %s and let-down %s",
    (masstone, R) => {
      const fit = flatFit({ masstone, tints: [{ massRatio: 0.1, R }] });
      const { K, S } = coefficients(fit);
      const moved = [
        flatFit({ masstone: masstone + sigma(masstone) / 10, tints: [{ massRatio: 0.1, R }] }),
        flatFit({ masstone, tints: [{ massRatio: 0.1, R: R + sigma(R) / 10 }] }),
        flatFit({
          masstone,
          tints: [{ massRatio: 0.1 * Math.exp(DRAWDOWN_NOISE.massRatio / 10), R }],
        }),
      ].map(coefficients);
      const byHand = (pick: "K" | "S", value: number): number =>
        10 * Math.hypot(...moved.map((one) => Math.log(one[pick] / value)));
      expect((fit.whites[0]?.KUncertainty[15] ?? NaN) / byHand("K", K)).toBeCloseTo(1, 1);
      expect((fit.whites[0]?.SUncertainty[15] ?? NaN) / byHand("S", S)).toBeCloseTo(1, 1);
    },
  );

  test("is at least the weighing error, and less with more let-downs", () => {
    const one = flatFit(base, 1e-6).whites[0]?.KUncertainty[15] ?? NaN;
    const { K, S } = coefficients(flatFit(base));
    const theta = ((flatFit(base).whites[0]?.whiteRatio[15] ?? NaN) + 0.02 * K) / (1 + 0.02 * S);
    const two = flatFit(
      {
        ...base,
        tints: [
          ...base.tints,
          { massRatio: 0.02, R: bounced(integratedMasstone(theta, 1), "d/8 excluded", SURFACE) },
        ],
      },
      1e-6,
    );
    expect(one).toBeGreaterThan(DRAWDOWN_NOISE.massRatio * 0.99);
    expect(two.whites[0]?.KUncertainty[15]).toBeLessThan(one * 0.9);
  });
});

describe("scatteringRuling", () => {
  const masstone = (R: number): Measurement => ({
    spectrum: flatSpectrum(GRID, R),
    geometry: "d/8 excluded",
  });
  const solution = (relative: number, chiSquare = 1) => ({
    masstone: new Float64Array(1),
    chiSquare,
    whites: [
      {
        extinction: new Float64Array(1),
        varianceK: new Float64Array(1),
        varianceS: Float64Array.of(relative ** 2),
      },
    ],
  });

  test.each([
    // masstone Y, relative uncertainty of S; each limit from both sides
    [0.0501, 0.1, "scattering-known"],
    [0.0499, 0.1, "scattering-is-bound"],
    [0.3, 0.249, "scattering-known"],
    [0.3, 0.251, "scattering-is-bound"],
  ])("Y %s, S +- %s: %s", (Y, relative, rule) => {
    expect(scatteringRuling(masstone(Y), solution(relative)).rule).toBe(rule);
    expect(SCATTERING_BOUND).toEqual({ masstoneYMin: 0.05, relativeUncertaintyMax: 0.25 });
  });

  test("counts a poor fit against it, and a lucky one not for it", () => {
    expect(scatteringRuling(masstone(0.3), solution(0.2, 4)).rule).toBe("scattering-is-bound");
    expect(scatteringRuling(masstone(0.3), solution(0.3, 0.1)).rule).toBe("scattering-is-bound");
  });
});
