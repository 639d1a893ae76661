import { describe, expect, test } from "vitest";
import { adaptedXyz } from "../../lib/colorimetry/adaptation.ts";
import { deltaEab } from "../../lib/colorimetry/difference.ts";
import {
  adaptationKind,
  ADAPTATION_SHARES,
  labUnder,
  type AdaptationKind,
} from "../../lib/colorimetry/lab-under.ts";
import { xyzToLab } from "../../lib/colorimetry/lab.ts";
import { tristimulus } from "../../lib/colorimetry/tristimulus.ts";
import { WHITE_POINTS, type LabViewing, type Viewing } from "../../lib/colorimetry/viewing.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { edge, gridOf, peak, sampled } from "./spectra.ts";

describe("adaptedXyz (CAT16, D = 1)", () => {
  // By colorjs.io 0.7.1, an independent library, with the white points of CIE 15:2018.
  test.each([
    ["A/10", "D65/10", [40, 30, 5], [33.3025, 29.883, 16.6057]],
    ["A/10", "D65/10", [10, 15, 12], [9.6529, 15.1043, 34.9373]],
    ["D65/2", "C/2", [20, 25, 40], [20.8812, 24.9816, 43.385]],
    ["D50/2", "D65/2", [30, 20, 5], [29.1051, 19.9623, 6.7982]],
  ] as const)("%s to %s: %j becomes %j", (from, to, [X, Y, Z], expected) => {
    const found = adaptedXyz({ X, Y, Z }, from, to);
    for (const [i, value] of [found.X, found.Y, found.Z].entries())
      expect(Math.abs(value - (expected[i] ?? NaN))).toBeLessThanOrEqual(6e-5);
  });

  test("white becomes white, and there and back is where it began", () => {
    const white = adaptedXyz(WHITE_POINTS["A/10"], "A/10", "D65/10");
    expect(white.X).toBeCloseTo(94.81, 9);
    expect(white.Z).toBeCloseTo(107.32, 9);
    const back = adaptedXyz(adaptedXyz({ X: 10, Y: 15, Z: 12 }, "A/10", "C/2"), "C/2", "A/10");
    expect([back.X, back.Y, back.Z]).toEqual(
      [10, 15, 12].map((value) => expect.closeTo(value, 9) as number),
    );
  });

  test("NaN is refused", () => {
    expect(() => adaptedXyz({ X: NaN, Y: 1, Z: 1 }, "C/2", "D65/2")).toThrow(
      "The tristimulus value is NaN",
    );
  });
});

describe("labUnder", () => {
  test("its own viewing is exact", () => {
    const lab = { L: 40, a: 10, b: -20 };
    expect(labUnder(lab, "D65/10", "D65/10")).toEqual({ lab, approximate: false, uncertainty: 0 });
  });

  test("a neutral stays a neutral, approximate all the same", () => {
    const under = labUnder({ L: 40, a: 0, b: 0 }, "D65/10", "C/2");
    expect(under).toMatchObject({ approximate: true, uncertainty: 0.1 });
    if (!isStatement(under)) expect(deltaEab(under.lab, { L: 40, a: 0, b: 0 })).toBeLessThan(1e-9);
  });

  test.each([
    ["A/10", "D65/10"],
    ["A/2", "C/2"],
    ["D65/10", "A/10"],
  ] as const)("%s to %s needs a spectrum", (from, to) => {
    expect(labUnder({ L: 40, a: 10, b: 10 }, from, to)).toEqual({
      rule: "lamplight-needs-a-spectrum",
      values: { from, to },
    });
  });

  test("a Lab that no surface has is said to be impossible; the rounding of a black is not", () => {
    // b* 90 at L* 10: f(Z/Zn) = 26/116 - 0.45 < 0, far below 4/29
    expect(labUnder({ L: 10, a: 0, b: 90 }, "D65/10", "D65/2")).toMatchObject({
      rule: "impossible-colour",
    });
    expect(isStatement(labUnder({ L: 0.2, a: 0.1, b: 0.2 }, "D65/10", "D65/2"))).toBe(false);
  });

  test("NaN is refused", () => {
    expect(() => labUnder({ L: 40, a: NaN, b: 0 }, "D65/10", "C/2")).toThrow(
      "The L*, a* or b* is NaN",
    );
  });
});

describe("what adapting costs, against the spectrum itself", () => {
  const curves = [
    ...[460, 500, 530, 560, 590, 620].flatMap((centre) =>
      [8, 12, 20].map((width) => edge(centre, width, 0.04, 0.85)),
    ),
    ...[430, 460, 500, 530].flatMap((centre) =>
      [20, 30, 45].map((width) => peak(centre, width, 0.04, 0.6)),
    ),
  ];

  function misses(from: Viewing, to: Viewing): number[] {
    return curves
      .map((curve) => {
        const spectrum = sampled(curve, gridOf(380, 730, 10));
        const [known, meant] = [from, to].map((viewing) =>
          xyzToLab(tristimulus(spectrum, viewing), viewing),
        );
        const under = known === undefined ? undefined : labUnder(known, from, to);
        if (under === undefined || isStatement(under) || meant === undefined)
          throw new Error("Unexpected ruling");
        return deltaEab(under.lab, meant) / under.uncertainty;
      })
      .toSorted((one, other) => one - other);
  }

  test.each([
    ["D65/2", "C/2"],
    ["C/2", "D65/2"],
    ["D50/2", "C/2"],
    ["D50/2", "D65/2"],
    ["D65/10", "C/2"],
    ["D65/10", "D65/2"],
    ["D50/2", "D65/10"],
  ] as const)(
    "%s to %s: two thirds lie within the stated uncertainty and none beyond three times it",
    (from, to) => {
      const ratios = misses(from, to);
      expect(ratios[Math.floor(ratios.length * 0.66)]).toBeLessThanOrEqual(1.05);
      expect(ratios.at(-1)).toBeLessThanOrEqual(3);
      // Neither is the uncertainty padded: half of the misses are more than a quarter of it.
      expect(ratios[Math.floor(ratios.length / 2)]).toBeGreaterThan(0.25);
    },
  );

  test.each([
    ["C/2", "D65/2", "like daylights"],
    ["D50/2", "D65/2", "warmer daylight"],
    ["D65/10", "D65/2", "other observer"],
    ["D65/10", "C/2", "other observer"],
    ["D50/10", "D50/2", "other observer"],
    ["D50/10", "C/2", "other observer, warmer daylight"],
    ["A/2", "A/10", undefined],
  ] satisfies [LabViewing, LabViewing, AdaptationKind | undefined][])(
    "%s to %s is %s",
    (from, to, kind) => {
      expect(adaptationKind(from, to)).toBe(kind);
    },
  );

  test("shares rise with what changes", () => {
    const shares = Object.values(ADAPTATION_SHARES);
    expect(shares).toEqual(shares.toSorted((one, other) => one - other));
  });
});
