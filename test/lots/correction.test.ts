import { describe, expect, test } from "vitest";
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import {
  correctionWith,
  corrections,
  MOST_SHARE,
  uncorrected,
  type OffLot,
} from "../../lib/lots/correction.ts";
import { labOfAbsorption } from "../../lib/lots/let-down-absorption.ts";
import {
  letDownAbsorption,
  masstoneAbsorption,
  mixedPaint,
  paintCoefficients,
  whiteCoefficients,
  type PaintCoefficients,
} from "../../lib/lots/paint-coefficients.ts";
import { wavelengthsNm } from "../../lib/quantities/spectrum.ts";

const GRID = { startNm: 400, stepNm: 10, count: 31 };
const BENCH = { grid: GRID, geometry: "d/8 excluded", surface: { k1: 0.04, k2: 0.6 } } as const;
const over = (of: (nm: number) => number): number[] => wavelengthsNm(GRID).map(of);
const RATIO = 1 / 20;
const WHITE = over(() => 0.004);
/** A red, an ochre beside it, and an extender, invented: K and S per part. */
const RED: PaintCoefficients = {
  K: over((nm) => 8 / (1 + Math.exp((nm - 580) / 14)) + 0.03),
  S: over(() => 0.5),
};
const OCHRE: PaintCoefficients = {
  K: over((nm) => 2.5 / (1 + Math.exp((nm - 530) / 22)) + 0.08),
  S: over(() => 0.45),
};
const EXTENDER: PaintCoefficients = { K: over(() => 0.0006), S: over(() => 0.02) };

/** A lot of some paint, read exactly. */
function lotOf(paint: PaintCoefficients, uncertainty = 0): OffLot {
  return {
    paint,
    masstone: masstoneAbsorption(paint),
    letDown: letDownAbsorption(paint, WHITE, RATIO),
    standard: {
      masstone: masstoneAbsorption(RED),
      letDown: letDownAbsorption(RED, WHITE, RATIO),
    },
    white: WHITE,
    massRatio: RATIO,
    bench: BENCH,
    uncertainty,
  };
}

describe("K and S of a paint from masstone and let-down", () => {
  test("are those that the readings were made of", () => {
    const { K, S } = paintCoefficients(
      masstoneAbsorption(OCHRE),
      letDownAbsorption(OCHRE, WHITE, RATIO),
      WHITE,
      RATIO,
    );
    K.forEach((value, i) => expect(value).toBeCloseTo(OCHRE.K[i] ?? NaN, 9));
    S.forEach((value, i) => expect(value).toBeCloseTo(OCHRE.S[i] ?? NaN, 9));
  });

  test("a ratio that is none is refused", () =>
    expect(() => paintCoefficients(WHITE, WHITE, WHITE, NaN)).toThrow("mass ratio"));
});

describe("a correction", () => {
  // Too strong by 15 parts of extender to 100 g that were left out.
  const strong = lotOf(mixedPaint(RED, EXTENDER, -0.15));

  test("with the extender that a lot lacks finds its dose: 15 % more red in it, so 0.15/1.15 of extender", () => {
    const found = correctionWith(strong, {
      slug: "chalk",
      name: "Chalk",
      kind: "extender",
      paint: EXTENDER,
    });
    // (1 - f) (1.15 red - 0.15 extender) + f extender = red  at  f = 0.15 / 1.15.
    expect(found?.gramsPer100g).toBeCloseTo(15, 2);
    expect(found?.predicted.letDownDeltaE00).toBeLessThan(1e-3);
    expect(found?.predicted.strengthPercent).toBeCloseTo(100, 2);
  });

  test.each([
    ["extender", EXTENDER],
    ["ochre", OCHRE],
    ["white", whiteCoefficients(WHITE)],
  ] as const)(
    "with %s is no worse than the best of 2,500 doses tried one by one",
    (name, paint) => {
      const lot = lotOf(mixedPaint(mixedPaint(RED, EXTENDER, -0.15), OCHRE, -0.05));
      const target = [lot.standard.masstone, lot.standard.letDown].map((ratio) =>
        labOfAbsorption(ratio, BENCH),
      );
      const missAt = (share: number): number => {
        const K = lot.paint.K.map((k, i) => (1 - share) * k + share * (paint.K[i] ?? NaN));
        const S = lot.paint.S.map((s, i) => (1 - share) * s + share * (paint.S[i] ?? NaN));
        const shown = [
          K.map((k, i) => k / (S[i] ?? NaN)),
          K.map((k, i) => (RATIO * k + (WHITE[i] ?? NaN)) / (RATIO * (S[i] ?? NaN) + 1)),
        ].map((ratio) => labOfAbsorption(ratio, BENCH));
        return Math.hypot(...shown.map((lab, i) => deltaE00(target[i] ?? lab, lab)));
      };
      let best = { share: 0, miss: missAt(0) };
      for (let i = 1; i <= 2500; i++) {
        const share = (i / 2500) * MOST_SHARE;
        const miss = missAt(share);
        if (miss < best.miss) best = { share, miss };
      }
      const found = correctionWith(lot, { slug: name, name, kind: "colour", paint });
      if (best.share === 0) expect(found).toBeUndefined();
      else {
        expect(found?.gramsPer100g).toBeCloseTo((100 * best.share) / (1 - best.share), 0);
        expect(
          Math.hypot(
            found?.predicted.masstoneDeltaE00 ?? NaN,
            found?.predicted.letDownDeltaE00 ?? NaN,
          ),
        ).toBeLessThanOrEqual(best.miss + 1e-6);
      }
    },
  );

  test("takes no more of another lot than there is", () => {
    const weak = lotOf(mixedPaint(RED, EXTENDER, 0.3));
    const found = correctionWith(weak, {
      slug: "re-2",
      name: "RE-2",
      kind: "lot",
      paint: RED,
      mostShare: 0.2,
    });
    // 20 g in 100 g of the mixture are 25 g to 100 g of the lot.
    expect(found?.gramsPer100g).toBeCloseTo(25, 1);
  });

  test("with another lot of the colour goes further than with another paint: a weak lot into three of a good one", () => {
    const weak = lotOf(mixedPaint(RED, EXTENDER, 0.3));
    const good = { slug: "re-2", name: "RE-2", paint: RED };
    const [asLot, asColour] = (["lot", "colour"] as const).map((kind) =>
      correctionWith(weak, { ...good, kind }),
    );
    // The good lot is the standard itself: the more of it the nearer, as far as each may go.
    expect(asLot?.gramsPer100g).toBeCloseTo((100 * 0.75) / 0.25, 1);
    expect(asColour?.gramsPer100g).toBeCloseTo((100 * 0.25) / 0.75, 1);
    expect(asLot?.predicted.letDownDeltaE00).toBeLessThan(
      asColour?.predicted.letDownDeltaE00 ?? NaN,
    );
  });

  test("of a lot that is as the standard is none", () =>
    expect(
      correctionWith(lotOf(RED), { slug: "o", name: "Ochre", kind: "colour", paint: OCHRE }),
    ).toBeUndefined());

  test("has a range that holds its figure, wider for a reading that is less sure", () => {
    const candidate = { slug: "c", name: "Chalk", kind: "extender", paint: EXTENDER } as const;
    const widths = [0.001, 0.01].map((uncertainty) => {
      const found = correctionWith({ ...strong, uncertainty }, candidate);
      const [low, high] = found?.range.letDownDeltaE00 ?? [NaN, NaN];
      expect(low).toBeLessThanOrEqual(found?.predicted.letDownDeltaE00 ?? NaN);
      expect(high).toBeGreaterThanOrEqual(found?.predicted.letDownDeltaE00 ?? NaN);
      return high - low;
    });
    expect(widths[1]).toBeGreaterThan(widths[0] ?? NaN);
  });

  test("of several candidates come the nearest first, and only such as halve the difference", () => {
    const candidates = [
      { slug: "ochre", name: "Ochre", kind: "colour", paint: OCHRE },
      { slug: "chalk", name: "Chalk", kind: "extender", paint: EXTENDER },
    ] as const;
    expect(corrections(strong, candidates, 3).map(({ candidate }) => candidate.slug)[0]).toBe(
      "chalk",
    );
    expect(corrections(strong, candidates, 1)).toHaveLength(1);
    const chalks = ["a", "b", "c"].map((slug) => ({ ...candidates[1], slug }));
    expect(corrections(strong, chalks, 3)).toHaveLength(2);
  });
});

test("what is passed over without a close look is nothing that would halve what is off", () => {
  let state = 20261129;
  const next = (): number => (state = (state * 16807) % 2147483647) / 2147483647;
  const paint = (): PaintCoefficients => {
    const [strength, edge, width, scatter] = [
      10 ** (3 * next() - 2),
      420 + 240 * next(),
      10 + 40 * next(),
      10 ** (2 * next() - 2),
    ];
    return {
      K: over((nm) => strength / (1 + Math.exp((nm - edge) / width)) + 0.002),
      S: over(() => scatter),
    };
  };
  let halved = 0;
  for (let i = 0; i < 12; i++) {
    const candidates = Array.from({ length: 10 }, (_, nth) => ({
      slug: `paint-${nth}`,
      name: `Paint ${nth}`,
      kind: (["white", "extender", "colour", "lot"] as const)[nth % 4] ?? "colour",
      paint: paint(),
    }));
    const [left] = candidates;
    const lot = lotOf(mixedPaint(RED, left?.paint ?? OCHRE, -0.1 * next()));
    const { masstoneDeltaE00: alone, letDownDeltaE00: inWhite } = uncorrected(lot);
    const all = candidates
      .map((candidate) => correctionWith(lot, candidate)?.predicted)
      .filter((found) => found !== undefined)
      .map(({ masstoneDeltaE00, letDownDeltaE00 }) => Math.hypot(masstoneDeltaE00, letDownDeltaE00))
      .filter((miss) => miss <= Math.hypot(alone, inWhite) / 2);
    halved += all.length;
    const least = corrections(lot, candidates, 1).map(({ predicted }) =>
      Math.hypot(predicted.masstoneDeltaE00, predicted.letDownDeltaE00),
    );
    expect(least).toEqual(all.length === 0 ? [] : [Math.min(...all)]);
    const each = candidates.filter((one) => corrections(lot, [one], 1).length > 0);
    expect(each).toHaveLength(all.length);
  }
  expect(halved).toBeGreaterThan(12);
});
