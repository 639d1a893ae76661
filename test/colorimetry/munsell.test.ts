import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { xyzToLab } from "../../lib/colorimetry/lab.ts";
import { labOfMunsell } from "../../lib/colorimetry/munsell-inversion.ts";
import { parseMunsell } from "../../lib/colorimetry/munsell-notation.ts";
import { luminanceOfValue } from "../../lib/colorimetry/munsell-value.ts";
import { munsellOfLab, type Munsell } from "../../lib/colorimetry/munsell.ts";
import type { Lab } from "../../lib/colorimetry/viewing.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { MUNSELL_PAIRS } from "./munsell-pairs.ts";

/** Lab under C from x, y and Y [0-1]. */
const labOf = (x: number, y: number, Y: number): Lab =>
  xyzToLab({ X: (100 * x * Y) / y, Y: 100 * Y, Z: (100 * (1 - x - y) * Y) / y }, "C/2");

function known(lab: Lab, uncertainty?: Lab): Munsell {
  const found = munsellOfLab(lab, uncertainty);
  if (isStatement(found)) throw new Error(found.rule);
  return found;
}

function hueApart(one: number | null, other: number | null): number {
  if (one === null || other === null) return NaN;
  return Math.min(Math.abs(one - other), 100 - Math.abs(one - other));
}

/** Newhall, Nickerson & Judd (1943), Table I: x, y, Y of grid colours under C, 2 degree, as printed to four decimals. */
const RENOTATION = [
  ["5R 4/14", 0.5734, 0.3057, 0.117008],
  ["5R 5/2", 0.3392, 0.3192, 0.192718],
  ["10R 3/2", 0.3728, 0.3314, 0.063912],
  ["5YR 6/8", 0.4592, 0.39, 0.293012],
  ["10YR 2/2", 0.3872, 0.3688, 0.030481],
  ["5YR 3/4", 0.4376, 0.3715, 0.063912],
  ["5Y 8/12", 0.4562, 0.4788, 0.576196],
  ["5Y 9/2", 0.3378, 0.3504, 0.766956],
  ["5GY 6/8", 0.3772, 0.488, 0.293012],
  ["2.5G 6/6", 0.2892, 0.3963, 0.293012],
  ["5BG 4/6", 0.2182, 0.324, 0.117008],
  ["10BG 6/4", 0.2578, 0.3078, 0.293012],
  ["5B 4/8", 0.1759, 0.2345, 0.117008],
  ["5PB 2/2", 0.2638, 0.2624, 0.030481],
  ["5PB 3/12", 0.1557, 0.1356, 0.063912],
  ["5P 4/8", 0.2855, 0.215, 0.117008],
  ["10P 6/8", 0.3259, 0.2584, 0.293012],
  ["5RP 2/2", 0.3383, 0.2829, 0.030481],
  ["5R 2/2", 0.3692, 0.3111, 0.030481],
] as const;

describe("grid colours (newhall-1943, Table I)", () => {
  // x and y printed to .0001 are worth up to .02 of chroma and .15 of a hue step at low chroma and value.
  test.each(RENOTATION)("%s from x %s y %s Y %s", (text, x, y, Y) => {
    const expected = parseMunsell(text);
    const found = known(labOf(x, y, Y));
    expect(Math.abs(found.value - (expected?.value ?? NaN))).toBeLessThanOrEqual(0.001);
    expect(Math.abs(found.chroma - (expected?.chroma ?? NaN))).toBeLessThanOrEqual(0.02);
    expect(hueApart(found.hueNumber, expected?.hueNumber ?? null)).toBeLessThanOrEqual(0.15);
    expect(found.text.replace(/\.0\b/g, "")).toBe(text);
  });
});

describe("grid colours of an independent table (Debian r-cran-munsell 0.5.0, raw/real.dat: x, y under C)", () => {
  // Its Y is relative to magnesium oxide; V goes through D1535 instead.
  test.each([
    ["2.5R 1/2", 0.3768, 0.2816],
    ["5YR 2/4", 0.4674, 0.3738],
    ["5Y 3/4", 0.4191, 0.4283],
    ["5GY 4/6", 0.3718, 0.4852],
    ["10GY 5/6", 0.3108, 0.4301],
    ["5G 7/4", 0.2902, 0.3548],
    ["7.5BG 3/4", 0.2272, 0.3041],
    ["10B 2/2", 0.2558, 0.2725],
    ["5PB 4/8", 0.2103, 0.205],
    ["10PB 1/6", 0.229, 0.147],
    ["5P 6/6", 0.295, 0.2585],
    ["7.5RP 8/4", 0.336, 0.3092],
    ["10YR 5/6", 0.4428, 0.4128],
    ["2.5Y 7/10", 0.4606, 0.4516],
    ["5R 6/10", 0.448, 0.325],
    ["2.5B 8/4", 0.2668, 0.3067],
  ])("%s", (text, x, y) => {
    const expected = parseMunsell(text);
    const found = known(labOf(x, y, luminanceOfValue(expected?.value ?? NaN) / 100));
    expect(Math.abs(found.chroma - (expected?.chroma ?? NaN))).toBeLessThanOrEqual(0.02);
    expect(hueApart(found.hueNumber, expected?.hueNumber ?? null)).toBeLessThanOrEqual(0.15);
  });
});

describe("surface colours of an independent implementation that interpolates in x, y", () => {
  test("fifty of them", () => {
    expect(MUNSELL_PAIRS).toHaveLength(50);
  });

  test.each(MUNSELL_PAIRS)(
    "x %s y %s Y %s: hue %s, value %s, chroma %s",
    (x, y, Y, hueNumber, value, chroma) => {
      const found = known(labOf(x, y, Y));
      expect(Math.abs(found.value - value)).toBeLessThanOrEqual(0.001);
      expect(Math.abs(found.chroma - chroma)).toBeLessThanOrEqual(0.35);
      expect(hueApart(found.hueNumber, hueNumber)).toBeLessThanOrEqual(0.3);
    },
  );
});

describe("the forms of a notation", () => {
  const grey = (chroma: number, value = 6.3): Lab =>
    labOfMunsell({ hueNumber: chroma === 0 ? null : 75, value, chroma });

  test.each([
    [0, "N 6.3/", null],
    [0.049, "N 6.3/", null],
    [0.051, "N 6.3/(PB 0.1)", "5PB"],
    [0.2, "N 6.3/(PB 0.2)", "5PB"],
    [0.299, "N 6.3/(PB 0.3)", "5PB"],
    [0.301, "5PB 6.3/0.3", "5PB"],
    [1.2, "5PB 6.3/1.2", "5PB"],
  ])("chroma %s prints %s", (chroma, text, hue) => {
    const found = known(grey(chroma));
    expect(found.text).toBe(text);
    expect(found.hue).toBe(hue);
    expect(found.hueNumber === null).toBe(hue === null);
  });

  test("black and the perfect diffuser", () => {
    expect(known({ L: 0, a: 0, b: 0 })).toMatchObject({
      text: "N 0.0/",
      hue: null,
      value: 0,
      chroma: 0,
    });
    expect(known({ L: 100, a: 0, b: 0 })).toMatchObject({ text: "N 10.0/", hue: null });
    expect(known({ L: 100 + 1e-9, a: 0, b: 0 }).text).toBe("N 10.0/");
  });

  test("a black of L* 3 claims no hue, one of V 0.5 may", () => {
    expect(known({ L: 3, a: 1, b: -4 })).toMatchObject({ hue: null, text: "N 0.3/" });
    expect(known(grey(1, 0.499)).hue).toBeNull();
    expect(known(grey(1, 0.501)).hue).not.toBeNull();
  });

  test("a chroma below twice its noise claims no hue, and a noisy hue no decimal", () => {
    const lab = labOfMunsell({ hueNumber: 73.4, value: 3, chroma: 0.8 });
    expect(known(lab).text).toBe("3.4PB 3.0/0.8");
    expect(known(lab, { L: 0.1, a: 0.4, b: 0.4 }).text).toBe("3PB 3.0/0.8");
    expect(known(lab, { L: 0.1, a: 3, b: 3 })).toMatchObject({ hue: null, text: "N 3.0/" });
  });

  test.each([
    [8.99, false],
    [9.01, true],
  ])("V %s: between the palest colours of the renotation and white, %s", (value, between) => {
    expect(known(grey(1, value)).betweenNineAndWhite).toBe(between);
  });
});

describe("where there is no notation", () => {
  test("above the perfect diffuser", () => {
    expect(munsellOfLab({ L: 100.1, a: 0, b: 0 })).toMatchObject({
      rule: "lighter-than-munsell-white",
    });
  });

  test("far beyond any pigment, where the package's inversion gives up", () => {
    expect(munsellOfLab({ L: 2, a: 96, b: -90 })).toEqual({
      rule: "beyond-munsell-renotation",
      values: { L: 2, a: 96, b: -90 },
      source: "munsell-npm",
    });
  });

  test.each([
    [{ L: NaN, a: 0, b: 0 }, "The L*, a* or b* is NaN"],
    [{ L: 50, a: Infinity, b: 0 }, "The L*, a* or b* is Infinity"],
    [{ L: -0.1, a: 0, b: 0 }, "The L* is -0.1; right would be L* >= 0"],
  ])("%j is refused", (lab, message) => {
    expect(() => munsellOfLab(lab)).toThrow(message);
  });

  test.each([-0.1, NaN, Infinity])("an uncertainty of %s is refused", (part) => {
    expect(() => munsellOfLab({ L: 50, a: 0, b: 0 }, { L: 0, a: part, b: 0 })).toThrow(
      `The uncertainty of L*, a* or b* is ${part}`,
    );
  });

  test.each([
    [{ hueNumber: 5, value: 10.1, chroma: 1 }, "The Munsell value is 10.1"],
    [{ hueNumber: 5, value: NaN, chroma: 1 }, "The Munsell value is NaN"],
    [{ hueNumber: 5, value: 5, chroma: -1 }, "The Munsell chroma is -1"],
    [{ hueNumber: 5, value: 5, chroma: NaN }, "The Munsell chroma is NaN"],
    [{ hueNumber: 0, value: 5, chroma: 1 }, "The Munsell hue number is 0"],
    [{ hueNumber: 100.1, value: 5, chroma: 1 }, "The Munsell hue number is 100.1"],
    [{ hueNumber: null, value: 5, chroma: 1 }, "The Munsell chroma of a neutral is 1"],
  ])("labOfMunsell refuses %j", (colour, message) => {
    expect(() => labOfMunsell(colour)).toThrow(message);
  });
});

test("a chip's Lab gives the chip back, over the renotation", () => {
  const hue = fc.integer({ min: 1, max: 40 }).map((n) => n * 2.5);
  fc.assert(
    fc.property(
      hue,
      fc.double({ min: 1, max: 9, noNaN: true }),
      fc.double({ min: 0.5, max: 8, noNaN: true }),
      (hueNumber, value, chroma) => {
        const back = known(labOfMunsell({ hueNumber, value, chroma }));
        expect(Math.abs(back.value - value)).toBeLessThan(1e-6);
        expect(Math.abs(back.chroma - chroma)).toBeLessThan(1e-3);
        expect(hueApart(back.hueNumber, hueNumber)).toBeLessThan(1e-2);
      },
    ),
    { seed: 1, numRuns: 200 },
  );
});
