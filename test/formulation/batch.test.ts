import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { batchCost } from "../../lib/formulation/batch-cost.ts";
import { BATCH_LOSSES, batchLoss } from "../../lib/formulation/batch-loss.ts";
import { batch, type BatchRecipe } from "../../lib/formulation/batch.ts";
import { oilHeldBack, requireFractionRange } from "../../lib/formulation/oil-held-back.ts";
import { paintVolumeMl } from "../../lib/formulation/paint-volume.ts";

const recipe: BatchRecipe = {
  pigments: [
    { name: "black", massFraction: 0.75, densityGPerCm3: 3, pricePerKg: 20 },
    { name: "blue", massFraction: 0.25, densityGPerCm3: 2.5, pricePerKg: 60 },
  ],
  oilIndexGPer100g: 40,
  oil: { name: "linseed", densityGPerCm3: 0.8, pricePerKg: 10 },
  additions: [
    { name: "drier", percent: 2, of: "oil", densityGPerCm3: 1 },
    { name: "chalk", percent: 10, of: "pigment", densityGPerCm3: 2.5, pricePerKg: 2 },
  ],
  holdBack: [0.1, 0.2],
  loss: [0.02, 0.06],
  tubeMl: 37,
};

describe("200 g of pigment, worked by hand", () => {
  const made = batch(recipe, { pigmentG: 200 });
  test("weighs 150 g and 50 g of pigment and 80 g of oil", () => {
    expect(made.pigments).toEqual([
      { name: "black", massG: 150 },
      { name: "blue", massG: 50 },
    ]);
    expect(made.oilG).toBe(80);
  });
  test("holds back 8 to 16 g of the oil", () => {
    expect(made.oilHeldBackG).toEqual([8, 16]);
    expect(made.oilAtFirstG).toEqual([64, 72]);
  });
  test("adds 1.6 g of drier on the oil, 20 g of chalk on the pigment", () =>
    expect(made.additions).toEqual([
      { name: "drier", massG: 1.6 },
      { name: "chalk", massG: 20 },
    ]));
  test("makes 301.6 g and 50 + 20 + 100 + 1.6 + 8 = 179.6 ml", () => {
    expect(made.paintG).toBeCloseTo(301.6, 9);
    expect(made.volumes?.paintMl).toBeCloseTo(179.6, 9);
  });
  test("loses 2 to 6 % and fills four tubes of 37 ml", () => {
    expect(made.volumes?.lossMl[0]).toBeCloseTo(3.592, 9);
    expect(made.volumes?.yieldMl[0]).toBeCloseTo(168.824, 9);
    expect(made.volumes?.yieldMl[1]).toBeCloseTo(176.008, 9);
    expect(made.volumes?.tubes).toEqual([4, 4]);
  });
  test("costs 3 + 3 + .80 + .04, the drier's price not known", () => {
    expect(made.cost).toBeCloseTo(6.84, 9);
    expect(made.unpriced).toEqual(["drier"]);
  });
});

describe("any size", () => {
  const size = fc.oneof(
    fc.double({ min: 1, max: 1e5, noNaN: true }).map((pigmentG) => ({ pigmentG })),
    fc.double({ min: 1, max: 1e5, noNaN: true }).map((paintMl) => ({ paintMl })),
    fc.double({ min: 1, max: 1e5, noNaN: true }).map((paintG) => ({ paintG })),
    fc.integer({ min: 1, max: 2000 }).map((tubes) => ({ tubes })),
  );
  test("gives the volume of what was weighed, by another way", () => {
    fc.assert(
      fc.property(size, (wanted) => {
        const made = batch(recipe, wanted);
        const densities = [3, 2.5, 0.8, 1, 2.5];
        const weighed = [
          ...made.pigments.map(({ massG }) => massG),
          made.oilG,
          ...made.additions.map(({ massG }) => massG),
        ];
        const volume = paintVolumeMl(
          weighed.map((massG, i) => ({
            massG,
            densityGPerCm3: densities[i] ?? NaN,
            volatile: false,
          })),
        );
        expect(volume / (made.volumes?.paintMl ?? NaN)).toBeCloseTo(1, 9);
        expect(weighed.reduce((total, one) => total + one, 0) / made.paintG).toBeCloseTo(1, 9);
      }),
      { seed: 1, numRuns: 200 },
    );
  });
  test("by tubes: fills them all at the larger loss, and no more", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 2000 }),
        (tubes) => batch(recipe, { tubes }).volumes?.tubes[0] === tubes,
      ),
      { seed: 1, numRuns: 200 },
    );
  });
  test("by paint: makes that much before losses", () =>
    expect(batch(recipe, { paintMl: 500 }).volumes?.paintMl).toBeCloseTo(500, 9));
});

describe("without a density", () => {
  const undense: BatchRecipe = { ...recipe, oil: { name: "linseed", pricePerKg: 10 } };
  test("all is weighed by pigment or by paint, and nothing is said by volume", () => {
    const whole = batch(recipe, { pigmentG: 200 });
    const { volumes, ...weighed } = whole;
    expect(volumes).toBeDefined();
    expect(batch(undense, { pigmentG: 200 })).toEqual(weighed);
    expect(batch(undense, { paintG: 301.6 }).pigmentG).toBeCloseTo(200, 9);
  });
  test.each([{ paintMl: 100 }, { tubes: 3 }])("%o is refused", (size) =>
    expect(() => batch(undense, size)).toThrow(/density .* for a batch by volume/),
  );
});

describe("a recipe out of its domain", () => {
  test.each<[string, Partial<BatchRecipe>, RegExp]>([
    [
      "fractions that do not sum",
      { pigments: [{ name: "a", massFraction: 0.9, densityGPerCm3: 2 }] },
      /sum of mass fraction is 0\.9/,
    ],
    ["oil index 0", { oilIndexGPer100g: 0 }, /oil index/],
    ["oil index NaN", { oilIndexGPer100g: NaN }, /oil index/],
    ["density 0", { oil: { name: "o", densityGPerCm3: 0 } }, /density/],
    ["loss of all", { loss: [0.5, 1] }, /loss/],
    ["loss the wrong way round", { loss: [0.2, 0.1] }, /loss/],
    ["negative hold-back", { holdBack: [-0.1, 0.1] }, /held back/],
    ["tubes of nothing", { tubeMl: 0 }, /volume of a tube/],
    ["a price below 0", { oil: { name: "o", densityGPerCm3: 0.93, pricePerKg: -1 } }, /price/],
    [
      "0 % of an addition",
      { additions: [{ name: "d", percent: 0, of: "oil", densityGPerCm3: 1 }] },
      /percent added/,
    ],
  ])("%s is refused", (_, change, message) =>
    expect(() => batch({ ...recipe, ...change }, { pigmentG: 100 })).toThrow(message),
  );
  test.each([{ pigmentG: 0 }, { paintMl: NaN }, { tubes: -1 }])("a size of %o is refused", (size) =>
    expect(() => batch(recipe, size)).toThrow(RangeError),
  );
});

describe("oilHeldBack", () => {
  test.each([
    // oil index, rub-out; at most what lies beyond the rub-out
    [40, undefined, [0.1, 0.2], "paste-loosens-under-the-muller"],
    [40, 20, [0.1, 0.2], "paste-loosens-under-the-muller"],
    [40, 32, [0.1, 0.2], "paste-loosens-under-the-muller"],
    [40, 34, [0.1, 0.15], "paste-loosens-down-to-rub-out"],
    [40, 38, [0.05, 0.05], "paste-loosens-down-to-rub-out"],
    [40, 40, [0, 0], "rub-out-takes-all-the-oil"],
    [40, 50, [0, 0], "rub-out-takes-all-the-oil"],
  ] as const)("oil index %s, rub-out %s: %o by %s", (oilIndex, rubOut, [lower, upper], rule) => {
    const { fraction, reason } = oilHeldBack(oilIndex, rubOut);
    expect(fraction[0]).toBeCloseTo(lower, 12);
    expect(fraction[1]).toBeCloseTo(upper, 12);
    expect(reason.rule).toBe(rule);
  });
  test.each([
    [0, 20],
    [NaN, 20],
    [40, 0],
    [40, NaN],
  ])("refuses %s, %s", (oilIndex, rubOut) =>
    expect(() => oilHeldBack(oilIndex, rubOut)).toThrow(RangeError),
  );
  test("lists the rub-out it went by", () => {
    expect(oilHeldBack(40, 34).reason.values).toMatchObject({ oilAbsorptionGPer100g: 34 });
    expect(oilHeldBack(40).reason.values).not.toHaveProperty("oilAbsorptionGPer100g");
  });
  test("one share in place of a range is a range", () =>
    expect(() => requireFractionRange("loss", [0.05, 0.05])).not.toThrow());
  test("a share of 1 would leave nothing to begin with", () => {
    expect(() => requireFractionRange("held back", [0, 1])).toThrow(
      new RangeError("The held back is 1; right would be held back < 1"),
    );
    expect(() => requireFractionRange("held back", [0, NaN])).toThrow(RangeError);
  });
});

describe("batchLoss", () => {
  /** What stays on slab and knife, and on the rollers of a mill: common practice, no source. */
  test("a slab keeps 2 to 6 % of a batch, a mill 3 to 8 %", () => {
    expect(batchLoss("mulled").fraction).toEqual([0.02, 0.06]);
    expect(batchLoss("milled").fraction).toEqual([0.03, 0.08]);
  });
  test.each([
    ["mulled", "loss-on-slab"],
    ["milled", "loss-on-mill"],
  ] as const)("%s: its row, by %s", (dispersion, rule) => {
    expect(batchLoss(dispersion)).toMatchObject({
      fraction: BATCH_LOSSES.find((row) => row.dispersion === dispersion)?.fraction,
      reason: { rule, standing: "estimated" },
    });
  });
  test("not recorded: spans both", () =>
    expect(batchLoss(undefined)).toMatchObject({
      fraction: [0.02, 0.08],
      reason: { rule: "loss-on-slab-or-mill" },
    }));
});

describe("batchCost", () => {
  test("is absent where nothing is priced", () =>
    expect(batchCost([{ name: "a", massG: 10 }])).toEqual({ unpriced: ["a"] }));
  test("may be nothing for what is free", () =>
    expect(batchCost([{ name: "a", massG: 10, pricePerKg: 0 }])).toEqual({
      cost: 0,
      unpriced: [],
    }));
  test.each([-1, NaN, Infinity])("refuses a price of %s", (pricePerKg) =>
    expect(() => batchCost([{ name: "a", massG: 10, pricePerKg }])).toThrow(/The price/),
  );
});
