import { describe, expect, test } from "vitest";
import {
  MUNSELL_INTERPOLATION,
  munsellInterpolation,
  munsellNoise,
  munsellUncertainty,
} from "../../lib/colorimetry/munsell-uncertainty.ts";
import { munsellOfLab, type Munsell } from "../../lib/colorimetry/munsell.ts";
import { hueChromaOfLab, labOfMunsell } from "../../lib/colorimetry/munsell-inversion.ts";

describe("interpolation by value band", () => {
  test("bands join without a gap", () => {
    const rows = MUNSELL_INTERPOLATION;
    expect(rows.map((row) => row.valueTo).slice(0, -1)).toEqual(
      rows.map((row) => row.valueFrom).slice(1),
    );
  });

  // npm munsell against an independent x, y interpolation on 876 surface colours, 95 %; a limit takes the larger.
  test.each([
    [1, 0.26, 0.74],
    [2, 0.26, 0.74],
    [2.01, 0.12, 0.36],
    [4, 0.12, 0.36],
    [4.01, 0.1, 0.18],
    [6, 0.1, 0.18],
    [6.01, 0.04, 0.15],
    [9, 0.04, 0.15],
  ])("V %s: chroma %s, hue %s", (value, chroma95, hueNumber95) => {
    expect(munsellInterpolation(value)).toMatchObject({ chroma95, hueNumber95 });
  });

  test.each([0.99, NaN])("V %s was not compared", (value) => {
    expect(munsellInterpolation(value)).toBeUndefined();
    const noise = { value: 0.1, chroma: 0.2, hueNumber: 0.3 };
    expect(munsellUncertainty(value, noise)).toEqual(noise);
  });

  test("noise and half of the 95 % add in quadrature", () => {
    // V 3: hypot(0.08, 0.06) = 0.1 and hypot(0.24, 0.18) = 0.3, by hand
    const { value, chroma, hueNumber } = munsellUncertainty(3, {
      value: 0.02,
      chroma: 0.08,
      hueNumber: 0.24,
    });
    expect([value, chroma, hueNumber]).toEqual([
      0.02,
      expect.closeTo(0.1, 12),
      expect.closeTo(0.3, 12),
    ]);
  });
});

describe("noise of a notation", () => {
  test("value follows from L*: dV = dL / 10 or so in the middle of the scale", () => {
    const { uncertainty } = munsellOfLab(labOfMunsell({ hueNumber: 25, value: 5, chroma: 6 }), {
      L: 1,
      a: 0,
      b: 0,
    }) as Munsell;
    expect(uncertainty.value).toBeGreaterThan(0.09);
    expect(uncertainty.value).toBeLessThan(0.11);
  });

  test("the same noise is worth less hue at a higher chroma", () => {
    const hueOf = (chroma: number): number =>
      (
        munsellOfLab(labOfMunsell({ hueNumber: 25, value: 7, chroma }), {
          L: 0,
          a: 0.5,
          b: 0.5,
        }) as Munsell
      ).uncertainty.hueNumber;
    expect(hueOf(2)).toBeGreaterThan(2 * hueOf(8));
  });

  test("no hue is less sure than half the circle", () => {
    // Hardly any chroma, between blue and green: noise towards red turns it 45 steps, noise towards yellow 33.
    const lab = { L: 5, a: -0.001, b: -0.001 };
    const at = hueChromaOfLab(lab);
    expect(at).toBeDefined();
    if (at !== undefined) expect(munsellNoise(lab, { L: 0, a: 5, b: 5 }, at).hueNumber).toBe(50);
  });
});
