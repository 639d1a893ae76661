import { describe, expect, test } from "vitest";
import { batchPlan, inSteps } from "../../lib/lots/batch-plan.ts";
import { addedDays, daysBetween } from "../../lib/lots/calendar.ts";
import { judged, worstVerdict } from "../../lib/lots/judgement.ts";
import { learntFillMl, learntLoss } from "../../lib/lots/learnt-yield.ts";
import { dryingSoFar, exposureSoFar } from "../../lib/lots/trial-series.ts";

describe("a figure against its tolerance", () => {
  test.each([
    [0.1, 0.2, "pass"],
    [0.5, 0.2, "pass"],
    [0.8, 0.2, "pass"],
    [0.81, 0.2, "near"],
    [1.2, 0.2, "near"],
    [1.21, 0.2, "fail"],
    [1, 0, "pass"],
    [1.001, 0, "fail"],
  ] as const)("%s with %s either way against 1 at most: %s", (value, uncertainty, verdict) =>
    expect(judged("letDown", value, [0, 1], uncertainty).verdict).toBe(verdict),
  );

  test("strength has two limits", () => {
    expect(judged("strength", 94, [95, 105], 0.5).verdict).toBe("fail");
    expect(judged("strength", 95.2, [95, 105], 0.5).verdict).toBe("near");
    expect(judged("strength", 105.6, [95, 105], 0.5).verdict).toBe("fail");
    expect(() => judged("strength", NaN, [95, 105], 0)).toThrow("can't be held");
  });

  test("the worst of several counts, and of none there is none", () => {
    expect(worstVerdict(["pass", "near", "pass"])).toBe("near");
    expect(worstVerdict(["near", "fail"])).toBe("fail");
    expect(worstVerdict([])).toBeUndefined();
  });
});

describe("what lots teach", () => {
  test("loss is the least and the most of them: 980 of 1000 g and 470 of 500 g are 2 and 6 %", () => {
    const [least, most] = learntLoss([
      { weighedG: 1000, yieldG: 980 },
      { weighedG: 500, yieldG: 470 },
    ]) ?? [NaN, NaN];
    expect(least).toBeCloseTo(0.02, 12);
    expect(most).toBeCloseTo(0.06, 12);
    expect(learntLoss([])).toBeUndefined();
    expect(() => learntLoss([{ weighedG: 10, yieldG: 11 }])).toThrow("yield of a lot");
  });

  test("a tube of 37 ml that takes 57 g of 1.5 g/ml holds 38 ml", () =>
    expect(learntFillMl([{ ml: 37, massG: 57, densityGPerCm3: 1.5 }], 37)).toBe(38));
});

describe("a batch plan", () => {
  const recipe = {
    pigments: [{ name: "red", massFraction: 1, densityGPerCm3: 5 }],
    oilIndexGPer100g: 25,
    oil: { name: "oil", densityGPerCm3: 0.93 },
    additions: [],
    holdBack: [0.1, 0.2],
    loss: [0.05, 0.1],
  } as const;

  test("40 tubes of 37 ml: 1480 ml over .9 at 0.4688 ml to a gram of pigment, to half grams, oil parted", () => {
    const plan = batchPlan(recipe, { tubes: 40, ml: 37 }, 37, 0.5);
    // 1/5 + 0.25/0.93 = 0.46882 ml; 1480 / 0.9 / 0.46882 = 3507.6 g; a quarter of it oil, 15 % held back.
    expect(plan.pigments[0]?.massG).toBeCloseTo(3507.5, 6);
    expect(plan.oilG).toBe(877);
    expect(plan.oilHeldBackG).toBe(131.5);
    expect(plan.oilAtFirstG + plan.oilHeldBackG).toBe(plan.oilG);
    expect(plan.yieldMl?.[0]).toBeCloseTo(1480, 6);
  });

  test("masses are whole steps of the balance, and never none of what there is some of", () => {
    expect(inSteps(0.004, 0.01)).toBe(0.01);
    expect(inSteps(12.346, 0.01)).toBe(12.35);
    expect(inSteps(0, 0.1)).toBe(0);
    expect(() => batchPlan(recipe, { pigmentG: 500 }, 37, 0)).toThrow("step of the balance");
  });
});

describe("trials in time", () => {
  test("days are counted over the end of February, in a leap year too", () => {
    expect(daysBetween("2023-02-28", "2023-03-01")).toBe(1);
    expect(daysBetween("2024-02-28", "2024-03-01")).toBe(2);
    expect(addedDays("2024-12-31", 1)).toBe("2025-01-01");
    expect(() => daysBetween("soon", "2024-01-01")).toThrow("date");
  });

  test("an exposure goes by its greatest change so far, and is read again after as long as it has run", () => {
    const soFar = exposureSoFar("2026-01-01", [
      { date: "2026-01-31", deltaEab: 1.2 },
      { date: "2026-04-01", deltaEab: 5.1 },
      { date: "2026-06-30", deltaEab: 4.9 },
    ]);
    expect(soFar.curve.map(({ day }) => day)).toEqual([0, 30, 90, 180]);
    // ASTM D4303 as the permanence room has it: above 4 and up to 8 is II.
    expect([soFar.category, soFar.limit]).toEqual(["II", 8]);
    expect(soFar.nextDate).toBe(addedDays("2026-01-01", 360));
    expect(exposureSoFar("2026-01-01", []).nextDate).toBe("2026-01-31");
    expect(exposureSoFar("2026-01-01", [], "2026-09-01").nextDate).toBeUndefined();
  });

  test("a drying trial brackets the day between two touches", () => {
    const soFar = dryingSoFar("2026-03-01", [
      { date: "2026-03-04", touch: "tacky" },
      { date: "2026-03-06", touch: "touch dry" },
      { date: "2026-03-20", touch: "through dry" },
    ]);
    expect(soFar.touchDryDays).toEqual([3, 5]);
    expect(soFar.throughDryDays).toEqual([5, 19]);
    expect(soFar.nextDate).toBeUndefined();
    expect(dryingSoFar("2026-03-01", [{ date: "2026-03-04", touch: "tacky" }]).nextDate).toBe(
      "2026-03-05",
    );
  });
});
