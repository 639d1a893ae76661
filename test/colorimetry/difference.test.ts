import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deltaE00, deltaEab } from "../../lib/colorimetry/difference.ts";
import { SHARMA_PAIRS } from "./sharma-pairs.ts";

describe("deltaE00 (Sharma, Wu & Dalal 2005, Table 1)", () => {
  test("all 34 pairs are there", () => {
    expect(SHARMA_PAIRS).toHaveLength(34);
  });

  test.each(SHARMA_PAIRS)("%s %s %s against %s %s %s is %s", (L1, a1, b1, L2, a2, b2, expected) => {
    const [one, other] = [
      { L: L1, a: a1, b: b1 },
      { L: L2, a: a2, b: b2 },
    ];
    expect(Math.abs(deltaE00(one, other) - expected)).toBeLessThanOrEqual(5e-5);
    expect(deltaE00(other, one)).toBeCloseTo(deltaE00(one, other), 12);
  });
});

describe("deltaEab (CIE 15, the distance)", () => {
  test.each([
    // Pythagorean by hand
    [{ L: 50, a: 0, b: 0 }, { L: 50, a: 3, b: 4 }, 5],
    [{ L: 50, a: 1, b: 2 }, { L: 52, a: 4, b: 8 }, 7],
  ])("%j to %j is %s", (one, other, expected) => {
    expect(deltaEab(one, other)).toBeCloseTo(expected, 12);
  });
});

const coordinate = fc.double({ min: -100, max: 100, noNaN: true });
const lab = fc.record({
  L: fc.double({ min: 0, max: 100, noNaN: true }),
  a: coordinate,
  b: coordinate,
});

test("both are zero for a colour and itself, and never NaN", () => {
  fc.assert(
    fc.property(lab, lab, (one, other) => {
      expect(deltaE00(one, one)).toBe(0);
      expect(deltaEab(one, one)).toBe(0);
      expect(deltaE00(one, other)).toBeGreaterThanOrEqual(0);
    }),
    { seed: 1, numRuns: 200 },
  );
});

test.each([NaN, Infinity])("a Lab with %s is refused", (bad) => {
  const [good, broken] = [
    { L: 50, a: 0, b: 0 },
    { L: 50, a: bad, b: 0 },
  ];
  const fault = new RangeError(`The L*, a* or b* is ${bad}; right would be a finite number`);
  expect(() => deltaE00(good, broken)).toThrow(fault);
  expect(() => deltaEab(broken, good)).toThrow(fault);
});
