import { describe, expect, test } from "vitest";
import {
  decimalText,
  outward,
  placesWithin,
  printedNumbers,
  quantityText,
  significantText,
} from "../../lib/words/number-text.ts";

test.each([
  [-0.04, 1, "0.0"],
  [-4.06, 1, "\u22124.1"],
  [2, 1, "2.0"],
  [0.25, 0, "0"],
])("decimalText(%s, %s) is %s", (value, places, text) => {
  expect(decimalText(value, places)).toBe(text);
});

test.each([
  [1234, 2, "1200"],
  [0.0344, 2, "0.034"],
  [63.2, 2, "63"],
  [9.96, 2, "10"],
  [4.1999, 3, "4.20"],
  [0, 2, "0"],
  [-1.26, 2, "\u22121.3"],
])("significantText(%s, %s) is %s", (value, digits, text) => {
  expect(significantText(value, digits)).toBe(text);
});

// Outward rounding of an interval's ends, IEEE 1788 (from memory): what is printed contains what is known.
test.each([
  [327.379, "at least", -1, 320],
  [30.4, "at most", 0, 31],
  [0.9785, "at least", 2, 0.97],
  [0.97, "at least", 2, 0.97],
  [0.29, "at most", 2, 0.29],
  [100, "at most", -1, 100],
  [-4.06, "at least", 1, -4.1],
  [327.379, undefined, -1, 327.379],
] as const)(
  "%s, a bound \u201c%s\u201d, is printed to %s places as %s",
  (value, bound, places, printed) => {
    expect(outward(value, bound, places)).toBe(printed);
  },
);

test.each([
  [undefined, 1, 1],
  [0.4, 1, 1],
  [2, 1, 0],
  [0.05, 1, 1],
  [0.99, 2, 1],
  [30, 1, 0],
])("an uncertainty of %s leaves %s places as %s", (uncertainty, places, left) => {
  expect(placesWithin(uncertainty, places)).toBe(left);
});

test("an estimate reads as its two ends, or as about one when they read alike", () => {
  const whole = (value: number): string => decimalText(value, 0);
  expect(quantityText([3, 6], whole, "about")).toBe("3\u20136");
  expect(quantityText([3.1, 3.2], whole, "about")).toBe("about 3");
  expect(quantityText(4, whole, "about")).toBe("4");
});

test("what differs from nought by nothing that counts is 0, however small", () => {
  for (const value of [9.6e-164, -1e-300, 5e-324]) expect(significantText(value, 3)).toBe("0");
  expect(significantText(1e-9, 1)).toBe("0.000000001");
});

test.each([
  [".", ["\u22124.1", "0.034", "1.5", "0.98"]],
  [",", ["\u22124,1", "0,034", "1,5", "0,98"]],
] as const)("numbers are printed with the mark of a language, %s", (mark, texts) => {
  const { decimal, significant, days, plain } = printedNumbers(mark);
  expect([decimal(-4.06, 1), significant(0.0344, 2), days(1.4), plain(0.98)]).toEqual(texts);
});

/** ISO 80000-1, 7.3.1: digits in groups of three parted by a small space; four digits are left whole. */
describe("printed numbers are parted in threes from five digits on", () => {
  const { decimal, significant, plain } = printedNumbers(",");
  test.each([
    [() => decimal(11000, 0), "11\u202f000"],
    [() => decimal(-1234567.25, 2), "\u22121\u202f234\u202f567,25"],
    [() => decimal(9999, 0), "9999"],
    [() => significant(50000, 2), "50\u202f000"],
    [() => decimal(0.123456, 6), "0,123456"],
    [() => decimal(1.123456, 6), "1,123456"],
    [() => plain(10000), "10\u202f000"],
  ])("%#", (printed, expected) => expect(printed()).toBe(expected));
});
