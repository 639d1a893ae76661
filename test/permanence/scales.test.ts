import { describe, expect, test } from "vitest";
import {
  BLUE_WOOL_CORRESPONDENCE,
  blueWool,
  customaryCategory,
} from "../../lib/permanence/blue-wool.ts";
import {
  GREY_SCALE,
  greyScaleRuling,
  SEEN_CHANGE,
  seenChange,
} from "../../lib/permanence/grey-scale.ts";
import { LIGHTFASTNESS_LIMITS } from "../../lib/permanence/lightfastness.ts";
import { scaleComplaint } from "../../lib/permanence/scale-words.ts";

describe("blue wool, ISO 105-B02: references 1 to 8 (read)", () => {
  test.each([1, 8])("%s is a reference", (reference) =>
    expect(blueWool(reference)).toEqual({ scale: "blue wool", reference }),
  );
  test.each([0, 9, 6.5, NaN, Infinity])("%s is none", (reference) => {
    expect(() => blueWool(reference)).toThrow(
      new RangeError(
        `The blue wool reference is ${reference}; right would be a whole number 1 to 8`,
      ),
    );
  });
  test.each([
    [8, "I"],
    [7, "I"],
    [6, "II"],
    [5, "III"],
    [4, "III"],
    [3, "IV"],
    [2, "IV"],
    [1, "V"],
  ])("%s is customarily set beside %s (memory)", (reference, category) => {
    expect(customaryCategory(blueWool(reference))).toMatchObject({
      row: { category },
      reason: {
        rule: "blue-wool-is-another-scale",
        source: "memory-permanence",
        standing: "estimated",
      },
    });
  });
  test("every reference stands beside one category, every category beside a reference", () => {
    expect(BLUE_WOOL_CORRESPONDENCE.flatMap((row) => row.references).toSorted()).toEqual([
      1, 2, 3, 4, 5, 6, 7, 8,
    ]);
    expect(BLUE_WOOL_CORRESPONDENCE.map((row) => row.category)).toEqual(
      LIGHTFASTNESS_LIMITS.map((row) => row.category),
    );
  });
});

describe("grey scale, ISO 105-A02", () => {
  // whole grades read; half grades memory
  test.each([
    ["5", 0],
    ["4", 1.7],
    ["3", 3.4],
    ["2", 6.8],
    ["1", 13.6],
    ["4-5", 0.8],
    ["3-4", 2.5],
    ["2-3", 4.8],
    ["1-2", 9.6],
  ])("grade %s is %s CIELAB units", (grade, deltaEab) => {
    expect(GREY_SCALE.find((row) => row.grade === grade)).toMatchObject({
      deltaEab,
      standing: grade.length === 1 ? "read" : "memory",
    });
    expect(greyScaleRuling(deltaEab).grade).toBe(grade);
  });
  test.each([
    [0.39, "5"],
    [0.4, "5"],
    [0.41, "4-5"],
    [11.59, "1-2"],
    [11.61, "1"],
    [60, "1"],
  ])("a change of %s is nearest grade %s", (deltaEab, grade) => {
    expect(greyScaleRuling(deltaEab).grade).toBe(grade);
  });
  test("falls as the change grows", () => {
    const steps = GREY_SCALE.map((row) => row.deltaEab);
    expect(steps).toEqual([...steps].sort((a, b) => a - b));
  });
  test.each([-0.1, NaN, Infinity])("refuses %s", (deltaEab) =>
    expect(() => greyScaleRuling(deltaEab)).toThrow(/The colour change/),
  );
});

describe("scaleComplaint: a word of the wrong scale", () => {
  test.each([
    ["I", "category", undefined],
    ["V", "category", undefined],
    ["8", "blue wool", undefined],
    ["4-5", "grey scale", undefined],
    [
      "7",
      "category",
      "if it is blue wool 7, give it as blueWool; customarily set beside category I",
    ],
    [
      "1",
      "category",
      "category 1 is written I; if it is blue wool 1, give it as blueWool; customarily set beside category V",
    ],
    ["9", "category", ""],
    ["VI", "category", ""],
    ["excellent", "category", ""],
    ["ii", "category", "write II"],
    ["LF I", "category", "write I"],
    ["II", "blue wool", "II is a category: give it as category"],
    ["BW 7", "blue wool", "write 7"],
    ["9", "blue wool", ""],
    ["4-5", "category", "4-5 is a grey-scale grade: it tells a change, not a lightfastness"],
    ["4-5", "blue wool", "4-5 is a grey-scale grade: it tells a change, not a lightfastness"],
    ["I", "grey scale", "I is a category: give it as category"],
  ] as const)("%s as %s: %s", (word, wanted, hint) => {
    const complaint = scaleComplaint(word, wanted);
    if (hint === undefined) expect(complaint).toBeUndefined();
    else
      expect(complaint).toMatchObject({
        severity: "error",
        rule: "permanence/wrong-scale",
        actual: word,
        hint: hint === "" ? undefined : hint,
      });
  });

  test.each([
    ["category", "lightfastness category"],
    ["blue wool", "blue wool reference"],
    ["grey scale", "grade of the grey scale"],
  ] as const)("a word of no scale is named as none of the %s", (wanted, named) => {
    expect(scaleComplaint("fast", wanted)?.message).toContain(`"fast" is no ${named}: that is `);
  });
});

/** ISO 105-A02 (read): grade 1 to 2 is the greatest change of the scale: no word of a fair or good colour fits it. */
describe("words of a change follow what was seen", () => {
  test.each([
    [0, "unchanged"],
    [0.3, "unchanged"],
    [1.1, "hardly changed"],
    [3.4, "changed slightly"],
    [5.6, "changed"],
    [11.4, "changed much"],
    [14.1, "changed greatly"],
  ] as const)("Delta-E*ab %s: %s", (deltaEab, word) => expect(seenChange(deltaEab)).toBe(word));
  test("each grade has one", () => {
    expect(Object.keys(SEEN_CHANGE).sort()).toEqual(GREY_SCALE.map(({ grade }) => grade).sort());
  });
});
