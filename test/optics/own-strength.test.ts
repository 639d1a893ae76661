import { describe, expect, test } from "vitest";
import { NO_SURFACE, surfaceForm } from "../../lib/optics/surface/surface.ts";
import {
  plainReadings,
  tintModel,
  tintReadings,
  type PlainModel,
} from "../../lib/optics/tints/tint-model.ts";

/** A colour of K/S 4.05 in a white of .005, at one wavelength: R-infinity .1 and .9048, by hand from (1 - R)^2 / 2R. */
const PLAIN: PlainModel = {
  form: surfaceForm("d/8 excluded", NO_SURFACE),
  masstone: [0.1],
  whiteRatio: [0.005],
  extinction: [20],
};
const ofStrength = (strength: number, massRatio: number): number[] =>
  plainReadings({ ...PLAIN, extinction: [20 * strength] }, massRatio);

/** Let-downs of which each shows a strength of its own beside the plain model's. */
const modelOf = (strengths: readonly (readonly [massRatio: number, strength: number])[]) =>
  tintModel(
    PLAIN,
    strengths.map(([massRatio, strength]) => ({
      massRatio,
      measured: ofStrength(strength, massRatio),
    })),
  );
const read = (model: ReturnType<typeof modelOf>, massRatio: number): number =>
  tintReadings(model, massRatio)[0] ?? NaN;

// basis: derived. Strength goes by ln of the ratio: half-way between 1:20 and 1:10 it is the geometric mean of both.
describe.each([
  ["near each other, 1:20 and 1:10", 0.05],
  ["far apart, 1:500 and 1:10", 0.002],
])("let-downs %s", (_, pale) => {
  const model = modelOf([
    [pale, 0.9],
    [0.1, 1.2],
  ]);

  test("are each met with its own strength", () => {
    expect(read(model, pale)).toBeCloseTo(ofStrength(0.9, pale)[0] ?? NaN, 12);
    expect(read(model, 0.1)).toBeCloseTo(ofStrength(1.2, 0.1)[0] ?? NaN, 12);
  });

  test("share their strength half-way between them", () => {
    const between = Math.sqrt(pale * 0.1);
    expect(read(model, between)).toBeCloseTo(
      ofStrength(Math.sqrt(0.9 * 1.2), between)[0] ?? NaN,
      12,
    );
  });
});

// basis: derived. Half of the drift goes on: as far beyond as the two are apart, strength is the last times the square root of their quotient.
test("half of a drift goes on beyond the last let-down", () => {
  const model = modelOf([
    [0.05, 0.9],
    [0.1, 1.2],
  ]);
  expect(read(model, 0.2)).toBeCloseTo(ofStrength(1.2 * Math.sqrt(1.2 / 0.9), 0.2)[0] ?? NaN, 12);
});
