import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { luminanceOfValue, munsellValue } from "../../lib/colorimetry/munsell-value.ts";
import { checkTable, type Check } from "../support/checks.ts";

/** ASTM D1535, value function: V and Y% as tabulated. */
const TABLE = [
  [0.5, 0.567303],
  [1, 1.179925],
  [1.5, 1.970759],
  [2, 3.048116],
  [2.5, 4.4988],
  [3, 6.391178],
  [4, 11.700751],
  [5, 19.271844],
  [6, 29.301153],
  [7, 41.985394],
  [8, 57.619628],
  [9, 76.695586],
  [10, 100],
] as const;
const D1535 = { basis: "published", source: "astm-d1535", locator: "value function" } as const;

checkTable<number>(
  "luminanceOfValue",
  luminanceOfValue,
  TABLE.map(([V, Y]): Check<number, number> => ({
    ...D1535,
    input: V,
    expected: Y,
    tolerance: V === 10 ? 1e-9 : 5e-7,
  })),
);
checkTable<number>(
  "munsellValue",
  munsellValue,
  TABLE.map(([V, Y]): Check<number, number> => ({
    ...D1535,
    input: Y,
    expected: V,
    tolerance: 1e-6,
  })),
);

test("value and luminance round-trip and rise together", () => {
  const value = fc.double({ min: 0, max: 10, noNaN: true });
  fc.assert(
    fc.property(value, value, (one, other) => {
      expect(munsellValue(luminanceOfValue(one))).toBeCloseTo(one, 9);
      if (one < other) expect(luminanceOfValue(one)).toBeLessThan(luminanceOfValue(other));
    }),
    { seed: 1, numRuns: 200 },
  );
});

describe("limits", () => {
  test.each([
    [0, 0],
    [100, 10],
    [100 + 1e-7, 10],
  ])("Y %s is V %s", (Y, V) => {
    expect(munsellValue(Y)).toBeCloseTo(V, 9);
  });

  test.each([-1e-9, 100.1, NaN, Infinity])("Y %s is refused", (Y) => {
    expect(() => munsellValue(Y)).toThrow(
      new RangeError(`The luminance factor Y is ${Y}; right would be 0 <= Y <= 100`),
    );
  });

  test.each([-0.01, 10.01, NaN])("V %s is refused", (V) => {
    expect(() => luminanceOfValue(V)).toThrow(
      new RangeError(`The Munsell value is ${V}; right would be 0 <= V <= 10`),
    );
  });
});
