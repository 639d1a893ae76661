import { describe, expect, test } from "vitest";
import { otherWhite, relativeScattering } from "../../lib/lots/other-white.ts";
import { letDownAbsorption, type PaintCoefficients } from "../../lib/lots/paint-coefficients.ts";

/** Two invented paints, per part of a white whose scattering is 1. */
const RED: PaintCoefficients = { K: [8, 4, 0.2, 0.05], S: [0.5, 0.5, 0.5, 0.5] };
const BLACK: PaintCoefficients = { K: [6, 7, 8, 9], S: [0.2, 0.2, 0.2, 0.2] };
const OTHER = [0.01, 0.006, 0.004, 0.003];
const RATIO = 1 / 10;

/**
 * A let-down in a white that scatters a quarter as much is one at four times the ratio in a white of
 * scattering 1: K + S of the paint weigh four times as much beside it.
 */
const inOther = (paint: PaintCoefficients, scattering: number, off = 1) => ({
  paint,
  letDown: letDownAbsorption(paint, OTHER, RATIO / (scattering * off)),
  massRatio: RATIO,
});

describe("a white beside another", () => {
  test.each([0.25, 1, 1.6])("that scatters %s times as much is found to do so", (scattering) => {
    for (const paint of [RED, BLACK])
      expect(relativeScattering(inOther(paint, scattering), OTHER)).toBeCloseTo(scattering, 9);
  });

  test("as a paint has its own K/S, and scatters as it does by mass", () => {
    const found = otherWhite(OTHER, [inOther(RED, 0.25), inOther(BLACK, 0.25)]);
    expect(found?.scattering).toBeCloseTo(0.25, 9);
    found?.paint.K.forEach((K, i) =>
      expect(K / (found.paint.S[i] ?? NaN)).toBeCloseTo(OTHER[i] ?? NaN, 12),
    );
  });

  test("is known to 15 % by one paint, by two as well as they agree, and never better than 5 %", () => {
    const spread = (...paints: readonly ReturnType<typeof inOther>[]): number | undefined =>
      otherWhite(OTHER, paints)?.spread;
    expect(spread(inOther(RED, 0.25))).toBe(0.15);
    expect(spread(inOther(RED, 0.25), inOther(BLACK, 0.25))).toBe(0.05);
    // ln 1.1 and ln 0.9 about their mean, over one degree of freedom: |ln(1.1/0.9)| / sqrt 2.
    expect(spread(inOther(RED, 0.25, 1.1), inOther(BLACK, 0.25, 0.9))).toBeCloseTo(
      Math.log(1.1 / 0.9) / Math.SQRT2,
      9,
    );
  });

  test("is not known by a let-down that absorbs no more than it, nor by none", () => {
    expect(otherWhite(OTHER, [{ paint: RED, letDown: OTHER, massRatio: RATIO }])).toBeUndefined();
    expect(otherWhite(OTHER, [])).toBeUndefined();
    expect(() => relativeScattering({ ...inOther(RED, 1), massRatio: NaN }, OTHER)).toThrow(
      "mass ratio",
    );
  });
});
