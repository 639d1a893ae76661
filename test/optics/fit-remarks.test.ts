import { describe, expect, test } from "vitest";
import { fitQualityRuling, surfaceRuling } from "../../lib/optics/fit/fit-remarks.ts";
import { NO_SURFACE, OIL_SURFACE } from "../../lib/optics/surface/surface.ts";

describe("surfaceRuling", () => {
  test.each([
    ["surface-stated", { surface: { k1: 0.035, k2: 0.5 }, by: "stated" }, 0.035, 0.5],
    ["surface-stated", { surface: NO_SURFACE, by: "stated" }, 0, 0],
    ["surface-by-default", { surface: OIL_SURFACE, by: "default" }, 0.04, 0.596346],
    ["no-surface-by-default", { surface: NO_SURFACE, by: "default" }, 0, 0],
    ["surface-by-leave-one-out", { surface: OIL_SURFACE, by: "leave-one-out" }, 0.04, 0.596346],
    ["no-surface-by-leave-one-out", { surface: NO_SURFACE, by: "leave-one-out" }, 0, 0],
  ] as const)("%s gives the constants that were used", (rule, choice, k1, k2) => {
    const ruling = surfaceRuling(choice);
    expect(ruling.rule).toBe(rule);
    expect(ruling.values.k1).toBeCloseTo(k1, 6);
    expect(ruling.values.k2).toBeCloseTo(k2, 6);
  });
});

describe("fitQualityRuling", () => {
  test("holds the weighted residual against its limit, from both sides", () => {
    expect(fitQualityRuling(2, 3).rule).toBe("fit-within-noise");
    expect(fitQualityRuling(2 + 1e-9, 3).rule).toBe("fit-misses-more-than-noise");
  });

  test("says nothing of a fit that passes through its let-downs whatever they are", () => {
    expect(fitQualityRuling(0, 0).rule).toBe("fit-has-none-to-spare");
    expect(fitQualityRuling(0, 1).rule).toBe("fit-within-noise");
  });

  test("refuses what is no residual and no count", () => {
    for (const bad of [-1e-9, NaN, Infinity])
      expect(() => fitQualityRuling(bad, 1)).toThrow(`The weighted residual is ${bad}`);
    for (const bad of [-1, NaN])
      expect(() => fitQualityRuling(1, bad)).toThrow(`The let-downs to spare is ${bad}`);
  });
});
