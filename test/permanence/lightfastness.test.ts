import { describe, expect, test } from "vitest";
import {
  LIGHTFASTNESS_LIMITS,
  lightfastnessRuling,
  worstCategory,
} from "../../lib/permanence/lightfastness.ts";

describe("the limits", () => {
  test("rise, and end open, so that every colour change has one category", () => {
    const limits = LIGHTFASTNESS_LIMITS.map((row) => row.deltaEabMax);
    expect(limits).toEqual([...limits].sort((a, b) => a - b));
    expect(limits.at(-1)).toBe(Infinity);
  });
});

describe("lightfastnessRuling (astm-d4303)", () => {
  test.each([
    // Delta-E*ab, category; each limit from both sides
    [0, "I"],
    [4, "I"],
    [4.01, "II"],
    [8, "II"],
    [8.01, "III"],
    [16, "III"],
    [16.01, "IV"],
    [24, "IV"],
    [24.01, "V"],
    [90, "V"],
  ])("%s -> %s", (deltaEab, category) => {
    expect(lightfastnessRuling(deltaEab).category).toBe(category);
  });

  test("carries the row it was decided by", () => {
    expect(lightfastnessRuling(10).limit).toBe(LIGHTFASTNESS_LIMITS[2]);
  });

  test.each([-1, NaN, Infinity])("refuses %s", (deltaEab) => {
    expect(() => lightfastnessRuling(deltaEab)).toThrow(
      /The colour change Delta-E\*ab is .*; right would be/,
    );
  });
});

describe("worstCategory", () => {
  test("is the least lightfast, in any order", () => {
    expect(worstCategory(["I", "III", "II"])).toBe("III");
    expect(worstCategory(["V", "I"])).toBe("V");
    expect(worstCategory(["I", "V"])).toBe("V");
    expect(worstCategory(["II"])).toBe("II");
  });
  test("of none is refused", () =>
    expect(() => worstCategory([])).toThrow(
      new RangeError("The list of categories is empty; right would be at least one"),
    ));
});
