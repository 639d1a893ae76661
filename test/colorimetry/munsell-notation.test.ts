import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hueFamily, hueText, parseMunsell } from "../../lib/colorimetry/munsell-notation.ts";

// Hundred-step circle of ASTM D1535: 5R is 5, 10R 10, 5YR 15 ... 10RP 100.
describe("parseMunsell", () => {
  test.each([
    ["5PB 3/1", { hueNumber: 75, value: 3, chroma: 1 }],
    ["10YR 5/6", { hueNumber: 20, value: 5, chroma: 6 }],
    ["2.5R 3.5/10.5", { hueNumber: 2.5, value: 3.5, chroma: 10.5 }],
    ["10RP 4/2", { hueNumber: 100, value: 4, chroma: 2 }],
    ["0R 4/2", { hueNumber: 100, value: 4, chroma: 2 }],
    ["N 2/", { hueNumber: null, value: 2, chroma: 0 }],
    ["N 1.2/", { hueNumber: null, value: 1.2, chroma: 0 }],
    ["N2", { hueNumber: null, value: 2, chroma: 0 }],
    ["N 0/", { hueNumber: null, value: 0, chroma: 0 }],
    ["N 10/", { hueNumber: null, value: 10, chroma: 0 }],
    ["5G 4/0", { hueNumber: null, value: 4, chroma: 0 }],
    ["N 6.3/(PB 0.2)", { hueNumber: 75, value: 6.3, chroma: 0.2 }],
    ["N 6.3/(2.5Y 0.2)", { hueNumber: 22.5, value: 6.3, chroma: 0.2 }],
    ["  5pb 3/1 ", { hueNumber: 75, value: 3, chroma: 1 }],
  ])("%s", (text, expected) => {
    expect(parseMunsell(text)).toEqual(expected);
  });

  test.each([
    "",
    "black",
    "5PB",
    "5PB 3",
    "5PB 3/",
    "3/1",
    "5XX 3/1",
    "10.1R 3/1",
    "5PB 10.1/1",
    "N 10.5/",
    "N/",
    "5PB 3/51",
    "-5PB 3/1",
    "5PB -3/1",
    "5PB 3/1 x",
    "NaNR 3/1",
    "5PB 1e3/1",
  ])("%j is no notation", (text) => {
    expect(parseMunsell(text)).toBeUndefined();
  });
});

describe("hueText", () => {
  test.each([
    [75, 1, "5PB"],
    [47.19, 1, "7.2G"],
    [47.19, 0, "7G"],
    [100, 1, "10RP"],
    [10, 1, "10R"],
    [10.04, 1, "10R"],
    [10.05, 1, "0.1YR"],
    [0.04, 1, "10RP"],
    [99.96, 1, "10RP"],
    [0.4, 0, "10RP"],
    [73.043, 2, "3.04PB"],
  ])("%s to %s decimals is %s", (hueNumber, decimals, expected) => {
    expect(hueText(hueNumber, decimals)).toBe(expected);
  });

  test.each([
    [0.01, "R"],
    [10, "R"],
    [10.01, "YR"],
    [70, "B"],
    [70.01, "PB"],
    [80, "PB"],
    [100, "RP"],
  ])("%s belongs to %s", (hueNumber, family) => {
    expect(hueFamily(hueNumber)).toBe(family);
  });
});

test("what is printed is read back to the decimal printed", () => {
  const hue = fc.double({ min: 0.01, max: 100, noNaN: true });
  fc.assert(
    fc.property(hue, fc.integer({ min: 0, max: 10 }), (hueNumber, value) => {
      const back = parseMunsell(`${hueText(hueNumber, 1)} ${value}/4`);
      const apart = Math.abs((back?.hueNumber ?? NaN) - hueNumber);
      expect(Math.min(apart, 100 - apart)).toBeLessThanOrEqual(0.05 + 1e-9);
    }),
    { seed: 1, numRuns: 200 },
  );
});
