import { describe, expect, test } from "vitest";
import { FINISH_LIMITS, FINISHES, finishRuling } from "../../lib/formulation/finish.ts";
import { finishDifference, GLOSS_LIMITS, glossRuling } from "../../lib/formulation/gloss.ts";

describe("finishRuling: oil-paste limits .90, .97, 1.0 (an estimate of the trade)", () => {
  test.each([
    [0.3, "gloss"],
    [0.8999, "gloss"],
    [0.9, "semi-gloss"],
    [0.9699, "semi-gloss"],
    [0.97, "satin"],
    [1, "satin"],
    [1.0001, "matte"],
    [2, "matte"],
  ])("reduced PVC %s -> %s", (lambda, finish) => expect(finishRuling(lambda).finish).toBe(finish));

  test("has the finishes in order, the limits rising, the last open", () => {
    expect(FINISH_LIMITS.map((row) => row.finish)).toEqual(FINISHES);
    const limits = FINISH_LIMITS.map((row) => row.reducedPvcTo);
    expect(limits).toEqual([...limits].sort((a, b) => a - b));
    expect(limits.at(-1)).toBe(Infinity);
  });

  test("judges an estimate at its middle and names all that it reaches", () => {
    const ruling = finishRuling([0.95, 1.15]);
    expect(ruling).toMatchObject({
      finish: "matte",
      spans: ["semi-gloss", "satin", "matte"],
      reason: { rule: "film-holds-voids", source: "hansen-lowinger-sadoff-1993" },
    });
  });

  test("tells nothing of an estimate that reaches from gloss to matte", () => {
    expect(finishRuling([0.65, 1.05])).toMatchObject({
      finish: undefined,
      spans: FINISHES,
      reason: { rule: "finish-not-told", values: { reducedPvc: [0.65, 1.05] } },
    });
    expect(finishRuling([0.65, 1]).finish).toBe("gloss");
  });

  test("where it is the clumps that make voids, says so: for all its oil", () => {
    expect(finishRuling(1.1, 0.82).reason).toMatchObject({
      rule: "clumps-make-voids",
      values: { finish: "matte", reducedPvc: 1.1, reducedPvcOpened: 0.82 },
    });
    expect(finishRuling(1.2, 1.05).reason.rule).toBe("film-holds-voids");
    expect(finishRuling(0.95, 0.82).reason.rule).toBe("oil-little-in-excess");
  });

  test.each([0, -1, NaN, Infinity])("refuses %s", (lambda) => {
    expect(() => finishRuling(lambda)).toThrow(
      new RangeError(`The reduced PVC is ${lambda}; right would be 0 < reduced PVC < Infinity`),
    );
  });
});

describe("glossRuling: words of the trade for 60 degrees", () => {
  test.each([
    [0, "matte", 85],
    [9.99, "matte", 85],
    [10, "satin", undefined],
    [34.99, "satin", undefined],
    [35, "semi-gloss", undefined],
    [69.99, "semi-gloss", undefined],
    [70, "gloss", undefined],
    [70.01, "gloss", 20],
    [98, "gloss", 20],
  ])("%s gloss units -> %s, better read at %s", (gloss, finish, angle) => {
    expect(glossRuling(gloss).finish).toBe(finish);
    expect(glossRuling(gloss).betterAngle).toBe(angle);
    expect(glossRuling(gloss).reason).toMatchObject({
      standing: "measured",
      source: "iso-2813",
      values: { gloss60: gloss },
    });
  });
  test("lists the better angle with the reading", () => {
    expect(glossRuling(82).reason.values).toEqual({
      gloss60: 82,
      finish: "gloss",
      betterAngle: 20,
    });
    expect(glossRuling(50).reason.values).toEqual({ gloss60: 50, finish: "semi-gloss" });
  });
  test("has one row for each finish", () =>
    expect(GLOSS_LIMITS.map((row) => row.finish)).toEqual(FINISHES));
  test.each([-0.1, NaN, Infinity])("refuses %s", (gloss) =>
    expect(() => glossRuling(gloss)).toThrow(/The gloss at 60 degrees/),
  );
});

describe("finishDifference", () => {
  test.each([
    // reduced PVC expected, gloss read
    [0.85, 82, undefined],
    [0.85, 50, undefined],
    [0.85, 20, "duller-than-expected"],
    [1.1, 5, undefined],
    [1.1, 20, undefined],
    [1.1, 36, "glossier-than-expected"],
    [1.1, 90, "glossier-than-expected"],
  ])("expected at %s, read %s: %s", (lambda, gloss, rule) => {
    expect(finishDifference(finishRuling(lambda), glossRuling(gloss))?.rule).toBe(rule);
  });
  test("an estimate that reaches near the reading is none", () => {
    expect(finishDifference(finishRuling([0.95, 1.2]), glossRuling(75))).toBeUndefined();
    expect(finishDifference(finishRuling([0.99, 1.2]), glossRuling(75))?.rule).toBe(
      "glossier-than-expected",
    );
  });
});
