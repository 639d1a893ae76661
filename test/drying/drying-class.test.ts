import { describe, expect, test } from "vitest";
import { DRYING_LIMITS, dryingClassRuling } from "../../lib/drying/drying-class.ts";

describe("dryingClassRuling: fast to 3, medium to 6, slow to 12 days (estimates of the trade)", () => {
  test.each([
    [0.5, "fast"],
    [3, "fast"],
    [3.01, "medium"],
    [6, "medium"],
    [6.01, "slow"],
    [12, "slow"],
    [12.01, "very slow"],
    [200, "very slow"],
  ])("%s days -> %s", (days, expected) =>
    expect(dryingClassRuling(days).dryingClass).toBe(expected),
  );

  test("counts a range by its middle, and says every class that it reaches into", () => {
    expect(dryingClassRuling([2, 7])).toMatchObject({
      dryingClass: "medium",
      limit: DRYING_LIMITS[1],
      spans: ["fast", "medium", "slow"],
      reason: {
        rule: "drying-class-over-several",
        values: {
          spans: ["fast", "medium", "slow"],
          touchDryDays: [2, 7],
          filmThicknessUm: 75,
          temperatureC: 20,
        },
        standing: "estimated",
        source: "practice-drying",
      },
    });
    expect(dryingClassRuling([4, 6]).reason.rule).toBe("drying-class");
  });

  // 3 and 6 days are the last of fast and of medium: a range has a day in a class or has none.
  test.each([
    [[3, 6], ["medium"]],
    [[6, 12], ["slow"]],
    [
      [2.9, 6],
      ["fast", "medium"],
    ],
    [
      [3, 6.1],
      ["medium", "slow"],
    ],
    [[6, 6], ["medium"]],
    [[12, 20], ["very slow"]],
  ] as const)("%j reaches into %j", (days, spans) =>
    expect(dryingClassRuling(days).spans).toEqual(spans),
  );

  test("limits rise, and end open", () => {
    const limits = DRYING_LIMITS.map((row) => row.touchDryDaysMax);
    expect(limits).toEqual([...limits].sort((a, b) => a - b));
    expect(limits.at(-1)).toBe(Infinity);
  });

  test.each([0, -1, NaN, Infinity])("refuses %s", (days) => {
    expect(() => dryingClassRuling(days)).toThrow(
      new RangeError(`The days to touch dry is ${days}; right would be 0 < days < Infinity`),
    );
    expect(() => dryingClassRuling([1, days])).toThrow(RangeError);
  });
});
