import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { batchBetween, type SpannedRecipe } from "../../lib/formulation/batch-between.ts";
import { batch } from "../../lib/formulation/batch.ts";
import { ends } from "../../lib/quantities/interval.ts";

const RECIPE: SpannedRecipe = {
  pigments: [
    { massFraction: 0.75, pricePerKg: 20 },
    { massFraction: 0.25, pricePerKg: 60 },
  ],
  pigmentDensityGPerCm3: 2.5,
  oilIndexGPer100g: [40, 60],
  oil: { densityGPerCm3: 0.8, pricePerKg: 10 },
  additions: [{ percent: 2, densityGPerCm3: 1 }],
  holdBack: [0.1, 0.2],
  loss: [0.05, 0.1],
};

describe("200 g of pigment with an estimated oil index of 40 to 60, worked by hand", () => {
  const made = batchBetween(RECIPE, { pigmentG: 200 }, 40);
  test("weighs 150 g and 50 g, with 80 to 120 g of oil and 1.6 to 2.4 g of drier", () =>
    expect(made).toMatchObject({ pigments: [150, 50], oilG: [80, 120], additions: [[1.6, 2.4]] }));
  test("holds back a tenth of the least to a fifth of the most", () => {
    expect(made.oilHeldBackG).toEqual([8, 24]);
    expect(made.oilAtFirstG).toEqual([64, 108]);
  });
  test("makes 80 + 100 + 1.6 to 80 + 150 + 2.4 ml, and fills four or five tubes of 40 ml", () => {
    const [least, most] = ends(made.paintMl ?? NaN);
    expect(least).toBeCloseTo(181.6, 9);
    expect(most).toBeCloseTo(232.4, 9);
    expect(ends(made.yieldMl ?? NaN)[0]).toBeCloseTo(181.6 * 0.9, 9);
    expect(ends(made.yieldMl ?? NaN)[1]).toBeCloseTo(232.4 * 0.95, 9);
    expect(made.tubes).toEqual([4, 5]);
  });
  test("costs 3 + 3 + .80 to 1.20, the drier's price not known", () =>
    expect(ends(made.cost ?? NaN).map((cost) => Number(cost.toFixed(9)))).toEqual([6.8, 7.2]));
});

test("where a density is not known nothing is said by volume, and all is weighed as before", () => {
  const undense: SpannedRecipe = { ...RECIPE, oil: { pricePerKg: 10 } };
  const { paintMl, lossMl, yieldMl, tubes, ...weighed } = batchBetween(
    RECIPE,
    { pigmentG: 200 },
    40,
  );
  expect([paintMl, lossMl, yieldMl, tubes]).not.toContain(undefined);
  expect(batchBetween(undense, { pigmentG: 200 }, 40)).toEqual(weighed);
});

test("by tubes enough is weighed for the most that may be lost", () => {
  const made = batchBetween({ ...RECIPE, oilIndexGPer100g: 50 }, { tubes: 7 }, 40);
  expect(ends(made.tubes ?? NaN)[0]).toBe(7);
});

test("of single figures it is the batch itself, at any size", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 1e5, noNaN: true }),
      fc.double({ min: 10, max: 300, noNaN: true }),
      (pigmentG, oilIndexGPer100g) => {
        const between = batchBetween({ ...RECIPE, oilIndexGPer100g }, { pigmentG }, 40);
        const one = batch(
          {
            pigments: RECIPE.pigments.map(({ massFraction }, i) => ({
              name: String(i),
              massFraction,
              densityGPerCm3: 2.5,
            })),
            oilIndexGPer100g,
            oil: { name: "oil", densityGPerCm3: 0.8 },
            additions: [{ name: "drier", percent: 2, of: "oil", densityGPerCm3: 1 }],
            holdBack: RECIPE.holdBack,
            loss: RECIPE.loss,
            tubeMl: 40,
          },
          { pigmentG },
        );
        expect(between).toMatchObject({
          oilG: one.oilG,
          paintG: one.paintG,
          paintMl: one.volumes?.paintMl,
          yieldMl: one.volumes?.yieldMl,
        });
      },
    ),
    { seed: 1, numRuns: 200 },
  );
});

test.each([
  [0, 40],
  [NaN, 40],
  [-1, 40],
  [Infinity, 40],
  [100, 0],
  [100, NaN],
])("refuses %f g of pigment in tubes of %f ml", (pigmentG, tubeMl) => {
  expect(() => batchBetween(RECIPE, { pigmentG }, tubeMl)).toThrow(
    /^The (?:mass of pigment|volume of a tube) /,
  );
});
