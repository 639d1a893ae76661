import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deltaE00 } from "../../lib/colorimetry/difference.ts";
import type { Lab } from "../../lib/colorimetry/viewing.ts";
import { spectrumLab } from "../../lib/colorimetry/spectrum-lab.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { plainReadings } from "../../lib/optics/tints/tint-model.ts";
import {
  interpolatedAtLightness,
  predictedAtLightness,
  type TintAtLightness,
} from "../../lib/optics/tints/equal-lightness.ts";
import {
  ladderModel,
  ladderSteps,
  predictedTint,
  type LadderModel,
} from "../../lib/optics/tints/ladder.ts";
import { predictionUncertainty, type Doubts } from "../../lib/optics/fit/prediction-uncertainty.ts";
import { workshopExperience } from "../../lib/optics/fit/workshop-experience.ts";
import { checkTable } from "../support/checks.ts";
import {
  fitOf,
  LAMP,
  LEAD,
  OCHRE,
  QUIET_BENCH,
  READING_NOISE,
  syntheticSet,
  TITANIUM,
  YELLOW,
  type Bench,
  type SyntheticPigment,
} from "./synthetic-drawdowns.ts";

const BENCH: Bench = { ...QUIET_BENCH, seed: 6 };

function ladderOf(
  colour: SyntheticPigment,
  massRatios: readonly number[],
  bench: Bench = BENCH,
  white = TITANIUM,
): LadderModel {
  const fit = fitOf(syntheticSet(colour, [{ slug: "white", white, massRatios }], bench));
  return ladderModel(fit, "white");
}

/** Lab of the same colour truly drawn down at a ratio. */
function drawn(colour: SyntheticPigment, massRatio: number, white = TITANIUM): Lab {
  const step = ladderOf(colour, [massRatio], BENCH, white).used[0];
  if (step === undefined) throw new Error("Unexpected ladder without its step");
  return step.lab;
}

function reached(
  tint: ReturnType<typeof predictedAtLightness | typeof interpolatedAtLightness>,
): TintAtLightness {
  if (isStatement(tint)) throw new Error(`Unexpected absence ${tint.rule}`);
  return tint;
}

const ESTIMATE = {
  basis: "derived",
  source: "reconstructed-oil-paints",
  tolerance: 1e-3,
  note: "arithmetic of the rule by hand: 1 - exp(-1) is .63212",
} as const;
checkTable<number>(
  "68 % of a prediction",
  (d) => predictionUncertainty(d, { hasFilms: true }).p68,
  [
    { ...ESTIMATE, locator: "law of the distance", input: 0, expected: 0.8 },
    { ...ESTIMATE, locator: "law of the distance", input: 1.5, expected: 1.7435 },
    { ...ESTIMATE, locator: "law of the distance", input: 100, expected: 2.5773 },
  ],
);
checkTable<number>(
  "90 % of a prediction",
  (d) => predictionUncertainty(d, { hasFilms: true }).p90,
  [
    { ...ESTIMATE, locator: "law of the distance", input: 0, expected: 1.316 },
    { ...ESTIMATE, locator: "law of the distance", input: 1.5, expected: 2.8681 },
    { ...ESTIMATE, locator: "law of the distance", input: 100, expected: 4.2396 },
  ],
);
test("an own miss is a floor far from a drawdown, a film for a masstone and a mixture widen", () => {
  expect(predictionUncertainty(100, { ownMiss: 12 }).p68).toBeCloseTo(6, 6);
  expect(predictionUncertainty(0, { ownMiss: 12 }).p68).toBeCloseTo(0.8, 6);
  const wide = (doubts: Doubts): number => predictionUncertainty(100, doubts).p68;
  expect(wide({ hasFilms: true, masstoneContrast: 0.5 })).toBeCloseTo(Math.hypot(0.8, 4.9), 6);
  expect(wide({ hasFilms: true, isMixture: true })).toBeCloseTo(Math.hypot(0.8, 2.45 * 1.3), 6);
  expect(wide({})).toBeCloseTo(Math.hypot(0.8, 3.92), 6);
  expect(wide({ isMixture: true })).toBeCloseTo(Math.hypot(0.8, 2.45 * 3.5), 6);
});
describe("what left-out let-downs of a workshop show", () => {
  test("is the usual law where there are none: normal errors, 68 and 90 in 100 inside 1 and 1.7", () => {
    const { p68, p90 } = workshopExperience([]);
    expect(p68).toBeCloseTo(1, 2);
    expect(p90).toBeCloseTo(1.7, 2);
  });
  test("is their own spread where there are many, and between the two where there are few", () => {
    const small = (count: number): number[] =>
      Array.from({ length: count }, (_, i) => (0.1 * (i + 0.5)) / count);
    expect(workshopExperience(small(1000)).p68).toBeCloseTo(0.07, 2);
    expect(workshopExperience(small(1000)).p90).toBeCloseTo(0.09, 2);
    const few = workshopExperience(small(6)).p68;
    expect(few).toBeGreaterThan(0.1);
    expect(few).toBeLessThan(1);
  });
  test("scales what is printed", () => {
    const experience = { p68: 0.5, p90: 2, count: 40 };
    expect(predictionUncertainty(0, { hasFilms: true, experience })).toEqual({
      p68: 0.4,
      p90: 1.6,
    });
  });
});
test.each([-1, NaN, Infinity])("predictionUncertainty(%s) is refused", (d) => {
  expect(() => predictionUncertainty(d)).toThrow(`The distance to the nearest let-down is ${d}`);
});

test.each([-1, NaN, Infinity])("an own miss of %s is refused", (ownMiss) => {
  expect(() => predictionUncertainty(1, { ownMiss })).toThrow(
    `The leave-one-out error is ${ownMiss}; right would be 0 <= Delta-E00 < Infinity`,
  );
});

describe("a predicted let-down", () => {
  test("is the one that is drawn down, between and a little beyond", () => {
    for (const [colour, white] of [
      [LAMP, TITANIUM],
      [LAMP, LEAD],
      [OCHRE, TITANIUM],
      [YELLOW, LEAD],
    ] as const) {
      const ladder = ladderOf(colour, [0.2, 0.02], BENCH, white);
      for (const massRatio of [1, 0.1, 0.05, 0.011]) {
        expect(
          deltaE00(predictedTint(ladder, massRatio).lab, drawn(colour, massRatio, white)),
        ).toBeLessThan(0.2);
      }
    }
  });

  test("falls within the claimed 68 % nearly always, for drawdowns with noise", () => {
    const misses = [1, 2, 3, 4, 5, 6].flatMap((seed) => {
      const ladder = ladderOf(OCHRE, [0.5, 0.05], { ...BENCH, noise: READING_NOISE, seed });
      return [1, 0.2, 0.1, 0.03].map((massRatio) => {
        const tint = predictedTint(ladder, massRatio);
        return deltaE00(tint.lab, drawn(OCHRE, massRatio)) / tint.uncertainty.p68;
      });
    });
    expect(misses.filter((miss) => miss < 1).length / misses.length).toBeGreaterThan(0.9);
  });

  test("is claimed the less closely the farther it is from the nearest measured one", () => {
    const ladder = ladderOf(LAMP, [0.2, 0.02]);
    const around = (
      from: number,
      factor: number,
    ): {
      uncertainty: { p68: number; p90: number };
      nearest: { massRatio: number; deltaE00: number };
    }[] => [0, 1, 2, 3].map((i) => predictedTint(ladder, from * factor ** i));
    for (const steps of [around(0.2, 0.75), around(0.2, 1.5), around(0.02, 0.75)]) {
      for (const [i, step] of steps.entries()) {
        const before = steps[i - 1];
        if (before === undefined) continue;
        expect(step.nearest.deltaE00).toBeGreaterThan(before.nearest.deltaE00);
        expect(step.uncertainty.p68).toBeGreaterThan(before.uncertainty.p68);
        expect(step.uncertainty.p90).toBeGreaterThan(before.uncertainty.p90);
      }
    }
  });

  test("meets a measured drawdown exactly, though the plain model misses it", () => {
    const ladder = ladderOf(OCHRE, [0.5, 0.1, 0.02], {
      ...BENCH,
      noise: { absolute: 0.004, relative: 0.02, massRatio: 0.1 },
    });
    for (const step of ladder.used) {
      const tint = predictedTint(ladder, step.massRatio);
      expect(deltaE00(tint.lab, step.lab)).toBeLessThan(1e-6);
      expect(tint.nearest.massRatio).toBe(step.massRatio);
      expect(tint.uncertainty.p68).toBeCloseTo(0.8 * ladder.fit.experience.p68, 6);
    }
    const plain = ladder.used.map((step) =>
      deltaE00(
        spectrumLab({
          grid: ladder.fit.grid,
          values: plainReadings(ladder.model, step.massRatio),
        }),
        step.lab,
      ),
    );
    expect(Math.max(...plain)).toBeGreaterThan(0.3);
  });

  test("tends to the masstone and to the white", () => {
    const ladder = ladderOf(OCHRE, [0.5, 0.1, 0.02], { ...BENCH, noise: READING_NOISE });
    expect(deltaE00(predictedTint(ladder, 1e7).lab, ladder.fit.masstone.lab)).toBeLessThan(0.01);
    expect(deltaE00(predictedTint(ladder, 1e-9).lab, ladder.white.lab)).toBeLessThan(0.01);
  });

  test("darkens as the colour grows, and stays a reflectance", () => {
    const ladder = ladderOf(LAMP, [0.2, 0.02], { ...BENCH, noise: READING_NOISE });
    const ratio = fc.double({ min: -4, max: 3, noNaN: true });
    fc.assert(
      fc.property(ratio, fc.double({ min: 0.05, max: 1, noNaN: true }), (log, more) => {
        const [pale, dark] = [
          predictedTint(ladder, 10 ** log),
          predictedTint(ladder, 10 ** (log + more)),
        ];
        expect(dark.lab.L).toBeLessThan(pale.lab.L);
        for (const value of pale.spectrum.values) expect(value >= 0 && value <= 1.2).toBe(true);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  test("is refused for no ratio, and for no such white", () => {
    const ladder = ladderOf(OCHRE, [0.1]);
    for (const ratio of [0, -1, NaN, Infinity])
      expect(() => predictedTint(ladder, ratio)).toThrow(`The mass ratio is ${ratio}`);
    expect(() => ladderModel(ladder.fit, "zinc")).toThrow(
      "The white is zinc; right would be one of white",
    );
  });
});

describe("ladderSteps", () => {
  const ladder = ladderOf(LAMP, [0.21, 0.05, 0.01], { ...BENCH, noise: READING_NOISE });
  const steps = ladderSteps(ladder);

  test("holds every measured step as it was read, and no prediction beside it", () => {
    expect(
      steps.filter(({ standing }) => standing === "measured").map(({ massRatio }) => massRatio),
    ).toEqual([0.21, 0.05, 0.01]);
    for (const step of ladder.white.steps)
      expect(steps.find((one) => one.massRatio === step.massRatio)?.spectrum.values).toBe(
        step.measured,
      );
    expect(
      steps.filter(({ standing }) => standing === "predicted").map(({ massRatio }) => massRatio),
    ).toEqual([10, 5, 2, 1, 0.5, 0.1, 0.02, 0.005]);
  });

  test("ends a factor of two past the palest, which is marked as beyond", () => {
    expect(steps.at(-1)).toMatchObject({ standing: "predicted", massRatio: 0.005, beyond: true });
    expect(steps.filter((step) => step.standing === "predicted" && step.beyond)).toHaveLength(1);
  });

  test("is in order, strongest first, and darkest first", () => {
    const ratios = steps.map(({ massRatio }) => massRatio);
    expect(ratios).toEqual(ratios.toSorted((a, b) => b - a));
    const lightness = steps.map(({ lab }) => lab.L);
    expect(lightness).toEqual(lightness.toSorted((a, b) => a - b));
  });

  test("is less certain the further from a measured let-down", () => {
    const predicted = steps
      .flatMap((step) => (step.standing === "predicted" ? [step] : []))
      .toSorted((a, b) => a.nearest.deltaE00 - b.nearest.deltaE00);
    const p68 = predicted.map(({ uncertainty }) => uncertainty.p68);
    expect(p68).toEqual(p68.toSorted((a, b) => a - b));
    expect(Math.min(...p68)).toBeGreaterThan(0.8 * ladder.fit.experience.p68);
  });
});

describe("equal lightness", () => {
  const ladder = ladderOf(LAMP, [0.2, 0.05, 0.005]);

  test.each([70, 50, 30])("L* %s is where such a let-down is drawn", (L) => {
    const tint = reached(predictedAtLightness(ladder, L));
    const real = drawn(LAMP, tint.massRatio);
    expect(real.L).toBeCloseTo(L, 0);
    expect(tint.a).toBeCloseTo(real.a, 1);
    expect(tint.b).toBeCloseTo(real.b, 1);
    expect(predictedTint(ladder, tint.massRatio).lab.L).toBeCloseTo(L, 2);
  });

  test("is absent past the masstone and past a little beyond the palest, from both sides", () => {
    const darkest = ladder.fit.masstone.lab.L;
    const palest = predictedTint(ladder, 0.005 / 2).lab.L;
    expect(reached(predictedAtLightness(ladder, palest - 0.01)).beyond).toBe(true);
    expect(predictedAtLightness(ladder, palest + 0.01)).toMatchObject({
      rule: "ladder-does-not-reach",
      values: { L: palest + 0.01, palest, darkest },
    });
    expect(reached(predictedAtLightness(ladder, darkest + 0.2)).massRatio).toBeGreaterThan(5);
    expect(predictedAtLightness(ladder, darkest - 0.01)).toMatchObject({
      rule: "ladder-does-not-reach",
    });
  });

  test("is at the measured step when one falls there", () => {
    const step = ladder.used[1];
    expect(reached(predictedAtLightness(ladder, step?.lab.L ?? NaN))).toMatchObject({
      massRatio: step?.massRatio,
      nearest: { massRatio: 0.05 },
    });
  });

  test.each([0, 100, NaN, -1])("refuses L* %s", (L) => {
    expect(() => predictedAtLightness(ladder, L)).toThrow(`The lightness L* is ${L}`);
    expect(() => interpolatedAtLightness([], L)).toThrow(`The lightness L* is ${L}`);
  });
});

describe("equal lightness without a fit", () => {
  const points = [
    { massRatio: 0.1, lab: { L: 40, a: -1, b: -4 } },
    { massRatio: 0.01, lab: { L: 60, a: 0, b: -2 } },
    { massRatio: 0.001, lab: { L: 85.1, a: 0, b: 0 } },
  ];

  test("is straight between measured neighbours", () => {
    expect(interpolatedAtLightness(points, 50)).toMatchObject({
      L: 50,
      a: -0.5,
      b: -3,
      basis: "interpolated",
      beyond: false,
    });
    expect(reached(interpolatedAtLightness(points, 50)).massRatio).toBeCloseTo(
      Math.sqrt(0.001),
      12,
    );
    expect(interpolatedAtLightness(points, 40)).toMatchObject({
      a: -1,
      b: -4,
      massRatio: expect.closeTo(0.1, 12) as number,
      nearest: { deltaE00: 0 },
    });
  });

  test("is the same in whatever order the let-downs are recorded", () => {
    const [one, two, three] = points;
    for (const order of [points.toReversed(), [two, one, three], [two, three, one]])
      expect(
        interpolatedAtLightness(
          order.filter((each) => each !== undefined),
          50,
        ),
      ).toEqual(interpolatedAtLightness(points, 50));
  });

  test("goes no further than the measured steps, and bridges no wide gap", () => {
    expect(interpolatedAtLightness(points, 39.9)).toEqual({
      rule: "ladder-does-not-reach",
      values: { L: 39.9, palest: 85.1, darkest: 40 },
    });
    expect(interpolatedAtLightness([], 50)).toEqual({
      rule: "ladder-does-not-reach",
      values: { L: 50 },
    });
    expect(interpolatedAtLightness(points, 70)).toMatchObject({
      rule: "neighbours-too-far-apart",
      values: { L: 70, limit: 25 },
    });
    const nearer = [...points.slice(0, 2), { massRatio: 0.001, lab: { L: 85, a: 0, b: 0 } }];
    expect(interpolatedAtLightness(nearer, 70)).toMatchObject({ basis: "interpolated" });
  });

  test("of a single step is that step", () => {
    expect(interpolatedAtLightness(points.slice(0, 1), 40)).toMatchObject({
      a: -1,
      b: -4,
      massRatio: expect.closeTo(0.1, 12) as number,
    });
  });
});
