import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkTable, type Check } from "../support/checks.ts";
import { TEXT_SIZE } from "../../lib/plots/picture.ts";
import { textWidth, wrappedLines } from "../../lib/plots/text-width.ts";

// Advance widths in thousandths of an em, from memory of the font's published metrics (Helvetica, Adobe Core 14 AFM).
const AFM = {
  basis: "memory",
  source: "Helvetica AFM",
  locator: "C lines, WX",
  tolerance: 1e-9,
} as const;
checkTable<string>(
  "textWidth, in thousandths of an em",
  (text) => (textWidth(text) / TEXT_SIZE) * 1000,
  [
    { ...AFM, input: "0", expected: 556 },
    { ...AFM, input: "i", expected: 222 },
    { ...AFM, input: "m", expected: 833 },
    { ...AFM, input: "W", expected: 944 },
    { ...AFM, input: " ", expected: 278 },
    { ...AFM, input: "L", expected: 556 },
    { ...AFM, input: "N 7", expected: 722 + 278 + 556 },
    { ...AFM, input: "1:20", expected: 3 * 556 + 278 },
    { ...AFM, input: "\u00e9", expected: 556, note: "an accent takes no room" },
  ] satisfies Check<string, number>[],
);

describe("wrappedLines", () => {
  test.each([
    ["Titanium white", 50, ["Titanium", "white"]],
    ["Titanium white", 200, ["Titanium white"]],
    ["Stack-process lead white", 60, ["Stack-", "process", "lead white"]],
    ["unbreakable", 5, ["unbreakable"]],
    ["", 50, []],
    ["  ", 50, []],
    ["a\nb", 50, ["a b"]],
  ] as const)("%j in %s", (text, width, lines) => {
    expect(wrappedLines(text, width).map((line) => line.replace(/\s+/g, " "))).toEqual(lines);
  });

  test("keeps every word, and no line is too wide unless it is one word", () => {
    fc.assert(
      fc.property(
        fc.array(fc.stringMatching(/^[a-zA-Z]{1,12}$/), { maxLength: 12 }),
        fc.integer({ min: 20, max: 300 }),
        (words, width) => {
          const lines = wrappedLines(words.join(" "), width);
          expect(lines.join(" ")).toBe(words.join(" "));
          for (const line of lines)
            expect(line.includes(" ") && textWidth(line) > width).toBe(false);
        },
      ),
      { seed: 1, numRuns: 200 },
    );
  });
});
