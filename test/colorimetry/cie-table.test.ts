import { describe, expect, test } from "vitest";
import { cieTable } from "../../lib/colorimetry/cie-table.ts";
import { naturalSpline } from "../../lib/colorimetry/cubic-spline.ts";
import { VIEWINGS, WHITE_POINTS, type Viewing, type Xyz } from "../../lib/colorimetry/viewing.ts";
import { checkTable, type Check } from "../support/checks.ts";

type Channel = keyof Xyz;

/** White of a plain sum over a grid, Y = 100. */
function plainWhite(viewing: Viewing, startNm: number, endNm: number, stepNm: number): Xyz {
  const table = cieTable(viewing);
  const sum = { X: 0, Y: 0, Z: 0 };
  for (let nm = startNm; nm <= endNm; nm += stepNm) {
    const at = table.at(nm);
    for (const channel of ["X", "Y", "Z"] as const) sum[channel] += at[channel];
  }
  return { X: (100 * sum.X) / sum.Y, Y: 100, Z: (100 * sum.Z) / sum.Y };
}

/** Printed 5 nm figures between the carried rows: illuminant times observer. */
const PRINTED = { basis: "published", source: "cie-15-2004", locator: "tables at 5 nm" } as const;
const BETWEEN = [
  [435, "D65/2", 95.7736, [0.3285, 0.01684, 1.62296]],
  [505, "D65/2", 108.578, [0.0024, 0.4073, 0.2123]],
  [555, "D65/2", 102.023, [0.5120501, 1, 0.005749999]],
  [605, "D65/2", 89.8026, [1.0456, 0.5668, 0.0006]],
  [455, "D50/2", 88.93, [0.3187, 0.048, 1.7441]],
  [455, "C/2", 123.6, [0.3187, 0.048, 1.7441]],
  [435, "C/2", 117.75, [0.3285, 0.01684, 1.62296]],
  [645, "C/2", 87.99, [0.3608, 0.1382, 0.00001]],
  [505, "D65/10", 108.578, [0.015444, 0.53136, 0.159249]],
  [605, "D65/10", 89.8026, [1.0891, 0.593878, 0]],
  [455, "A/10", 35.4068, [0.342957, 0.106256, 1.9007]],
  [645, "A/10", 161.516, [0.34369, 0.140211, 0]],
] as const;

checkTable<{ nm: number; viewing: Viewing; channel: Channel }>(
  "cieTable between its rows",
  ({ nm, viewing, channel }) => cieTable(viewing).at(nm)[channel],
  BETWEEN.flatMap(([nm, viewing, power, functions]) =>
    (["X", "Y", "Z"] as const).map(
      (channel, i): Check<{ nm: number; viewing: Viewing; channel: Channel }, number> => {
        const expected = power * (functions[i] ?? NaN);
        // A spline through 10 nm rows misses the printed 5 nm row by up to 0.0046 of a function 1.8 high.
        return { ...PRINTED, input: { nm, viewing, channel }, expected, tolerance: 0.005 * power };
      },
    ),
  ),
);

const STEPS = {
  basis: "derived",
  source: "cie-15-2004",
  locator: "perfect diffuser summed from the printed tables",
} as const;
checkTable<{ viewing: Viewing; span: readonly [number, number, number]; channel: Channel }>(
  "white of a plain sum, by step and span",
  ({ viewing, span, channel }) => plainWhite(viewing, ...span)[channel],
  [
    {
      ...STEPS,
      input: { viewing: "D65/2", span: [380, 780, 10], channel: "X" },
      expected: 95.0174,
      tolerance: 0.001,
    },
    {
      ...STEPS,
      input: { viewing: "D65/2", span: [380, 780, 10], channel: "Z" },
      expected: 108.8128,
      tolerance: 0.05,
    },
    {
      ...STEPS,
      input: { viewing: "D65/2", span: [400, 700, 10], channel: "X" },
      expected: 94.9401,
      tolerance: 0.001,
    },
    {
      ...STEPS,
      input: { viewing: "D65/2", span: [400, 700, 10], channel: "Z" },
      expected: 108.7091,
      tolerance: 0.05,
    },
    {
      ...STEPS,
      input: { viewing: "D65/2", span: [400, 700, 20], channel: "X" },
      expected: 95.5638,
      tolerance: 0.001,
    },
    {
      ...STEPS,
      input: { viewing: "D65/2", span: [400, 700, 20], channel: "Z" },
      expected: 109.6685,
      tolerance: 0.05,
    },
    {
      ...STEPS,
      input: { viewing: "C/2", span: [400, 700, 10], channel: "X" },
      expected: 97.9742,
      tolerance: 0.001,
    },
    {
      ...STEPS,
      input: { viewing: "C/2", span: [400, 700, 10], channel: "Z" },
      expected: 118.0246,
      tolerance: 0.05,
    },
  ],
);

describe("white of the carried tables at 5 nm, unscaled", () => {
  test.each(VIEWINGS)("%s is the CIE white to .03 in X and .3 in Z", (viewing) => {
    const white = plainWhite(viewing, 380, cieTable(viewing).endNm, 5);
    expect(Math.abs(white.X - WHITE_POINTS[viewing].X)).toBeLessThanOrEqual(0.03);
    expect(Math.abs(white.Z - WHITE_POINTS[viewing].Z)).toBeLessThanOrEqual(0.3);
  });
});

describe("ends of the tables", () => {
  test("C ends at 770 nm, the others at 780", () => {
    expect(VIEWINGS.map((viewing) => cieTable(viewing).endNm)).toEqual([770, 780, 780, 780, 780]);
    expect(cieTable("C/2").at(770).Y).toBeGreaterThan(0);
  });

  test.each([379.9, 770.1, NaN])("C refuses %s nm", (nm) => {
    expect(() => cieTable("C/2").at(nm)).toThrow(
      new RangeError(`The wavelength is ${nm}; right would be 380 <= wavelength <= 770 nm`),
    );
  });
});

describe("naturalSpline", () => {
  test("passes through its points, and reproduces a straight line between and at the ends", () => {
    const line = naturalSpline(400, 10, [1, 3, 5, 7]);
    expect([400, 404, 415, 430, 390, 440].map((nm) => line(nm))).toEqual(
      [1, 1.8, 4, 7, 1, 7].map((y) => expect.closeTo(y, 12) as number),
    );
  });

  // Three points 0, 1, 0 a unit apart: 4 M1 = 6 (0 - 2 + 0), M1 = -3, and at 0.5: 0.5 + (0.125 - 0.5) (-3) / 6 = 0.6875 (by hand).
  test("bends as worked by hand", () => {
    expect(naturalSpline(0, 1, [0, 1, 0])(0.5)).toBeCloseTo(0.6875, 12);
  });

  test("refuses one point and a step that is not positive", () => {
    expect(() => naturalSpline(0, 1, [1])).toThrow("The count of points of a spline is 1");
    expect(() => naturalSpline(0, 0, [1, 2])).toThrow("The spacing of a spline is 0");
    expect(() => naturalSpline(0, NaN, [1, 2])).toThrow(RangeError);
  });
});
