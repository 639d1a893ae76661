import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { labToLch, labToXyz, xyzToLab } from "../../lib/colorimetry/lab.ts";
import { VIEWINGS, WHITE_POINTS, type LabViewing } from "../../lib/colorimetry/viewing.ts";
import { checkTable, type Check } from "../support/checks.ts";

describe("white points (CIE 15:2018, as printed)", () => {
  test.each([
    ["A/2", 109.85, 35.58],
    ["C/2", 98.07, 118.22],
    ["D50/2", 96.42, 82.51],
    ["D65/2", 95.04, 108.88],
    ["A/10", 111.14, 35.2],
    ["C/10", 97.29, 116.14],
    ["D50/10", 96.72, 81.43],
    ["D65/10", 94.81, 107.32],
  ] as const)("%s is %s 100 %s", (viewing, X, Z) => {
    expect(WHITE_POINTS[viewing satisfies LabViewing]).toEqual({ X, Y: 100, Z });
  });
});

const LAB = { basis: "derived", source: "cie-15-2018", locator: "CIE 1976 L*a*b*" } as const;
const under = (X: number, Y: number, Z: number) => ({ X, Y, Z });

checkTable<{ X: number; Y: number; Z: number }>("L*", (xyz) => xyzToLab(xyz, "D65/2").L, [
  { ...LAB, input: under(95.04, 100, 108.88), expected: 100, tolerance: 1e-12, note: "white" },
  { ...LAB, input: under(0, 0, 0), expected: 0, tolerance: 1e-12, note: "116 * 4/29 - 16" },
  { ...LAB, input: under(10, 12.5, 10), expected: 42, tolerance: 1e-12, note: "116 * 0.5 - 16" },
  {
    ...LAB,
    input: under(0, 0.5, 0),
    expected: 0.5 * 9.032962962963,
    tolerance: 1e-9,
    note: "below Y/Yn .008856: (29/3)^3 Y/Yn",
  },
] satisfies Check<{ X: number; Y: number; Z: number }, number>[]);

checkTable<{ X: number; Y: number; Z: number }>(
  "a* and b* together",
  (xyz) => xyzToLab(xyz, "D65/2").a + 1000 * xyzToLab(xyz, "D65/2").b,
  [
    {
      ...LAB,
      input: under(95.04, 12.5, 108.88 / 64),
      expected: 250 + 1000 * 50,
      tolerance: 1e-8,
      note: "500 (1 - 0.5) and 200 (0.5 - 0.25)",
    },
    {
      ...LAB,
      input: under(95.04 / 8, 100, 108.88),
      expected: -250,
      tolerance: 1e-8,
      note: "500 (0.5 - 1) and 200 (1 - 1)",
    },
  ] satisfies Check<{ X: number; Y: number; Z: number }, number>[],
);

describe("labToLch", () => {
  test.each([
    [3, 4, 5, 53.130102],
    [-3, 4, 5, 126.869898],
    [-3, -4, 5, 233.130102],
    [3, -4, 5, 306.869898],
    [1, 0, 1, 0],
    [-1, 0, 1, 180],
    [1, -1e-17, 1, 0],
    [0, 0, 0, 0],
  ])("a* %s b* %s has chroma %s at %s degrees", (a, b, C, h) => {
    const lch = labToLch({ L: 50, a, b });
    expect(lch.C).toBeCloseTo(C, 9);
    expect(lch.h).toBeCloseTo(h, 5);
    expect(lch.h).toBeLessThan(360);
  });
});

test("XYZ and Lab round-trip under every viewing, black included", () => {
  const channel = fc.double({ min: 0, max: 120, noNaN: true });
  fc.assert(
    fc.property(channel, channel, channel, fc.constantFrom(...VIEWINGS), (X, Y, Z, viewing) => {
      const back = labToXyz(xyzToLab({ X, Y, Z }, viewing), viewing);
      expect(back.X).toBeCloseTo(X, 9);
      expect(back.Y).toBeCloseTo(Y, 9);
      expect(back.Z).toBeCloseTo(Z, 9);
    }),
    { seed: 1, numRuns: 200 },
  );
});

describe("outside the domain", () => {
  test.each([NaN, Infinity])("%s is named", (bad) => {
    expect(() => xyzToLab({ X: 1, Y: bad, Z: 1 }, "C/2")).toThrow(
      new RangeError(`The tristimulus value is ${bad}; right would be a finite number`),
    );
    expect(() => labToXyz({ L: 1, a: bad, b: 1 }, "C/2")).toThrow(
      new RangeError(`The L*, a* or b* is ${bad}; right would be a finite number`),
    );
    expect(() => labToLch({ L: 1, a: 0, b: bad })).toThrow(RangeError);
  });
});
