import { describe, expect, test } from "vitest";
import { expectedContradiction } from "../../lib/permanence/expected-contradiction.ts";

/** A measurement that lies beyond what an estimate allows is said; one step of the estimate is within it (this project's rule). */
describe("an exposure against what was expected", () => {
  const exposed = (category: "I" | "II" | "III" | "IV" | "V") => ({
    form: "tint" as const,
    category,
    meanDeltaEab: 9,
  });
  test.each([
    ["excellent", "I", undefined],
    ["excellent", "II", undefined],
    ["excellent", "III", "exposure-worse-than-expected"],
    ["excellent", "V", "exposure-worse-than-expected"],
    ["fair", "I", "exposure-better-than-expected"],
    ["fair", "II", undefined],
    ["fair", "IV", undefined],
    ["fair", "V", "exposure-worse-than-expected"],
    ["fugitive", "V", undefined],
    ["fugitive", "III", "exposure-better-than-expected"],
  ] as const)("expected %s, exposed %s: %s", (expectation, category, rule) =>
    expect(expectedContradiction(expectation, exposed(category))?.rule).toBe(rule),
  );
  test("lists what it went by", () => {
    expect(expectedContradiction("excellent", exposed("IV"))).toEqual({
      rule: "exposure-worse-than-expected",
      values: { expectation: "excellent", exposed: "IV", form: "tint", meanDeltaEab: 9 },
      standing: "derived",
      source: "practice-permanence",
    });
  });
});
