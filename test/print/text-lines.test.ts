import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fittedText, shrinking, wrappedLines, type Measure } from "../../lib/print/text-lines.ts";

/** Every letter as wide as half its size: lines can be counted by hand. */
const even: Measure = (text, _, sizePt) => (text.length * sizePt) / 2;
const SANS = { face: "sans", sizePt: 2 } as const;

describe("a text in lines", () => {
  test.each<[string, number, string[]]>([
    ["one two three", 7, ["one two", "three"]],
    ["one two three", 6, ["one", "two", "three"]],
    ["cold-pressed oil", 6, ["cold-", "presse", "d oil"]],
    ["cold-pressed oil", 8, ["cold-", "pressed", "oil"]],
    ["b* -4.1", 4, ["b*", "-4.1"]],
    ["PBk\u00a09 ab", 6, ["PBk\u00a09", "ab"]],
    ["", 5, []],
    ["  ", 5, []],
  ])("%j in %d", (text, width, lines) => {
    expect(wrappedLines(text, width, SANS, even)).toEqual(lines);
  });

  test("loses no letter and passes no line's width, whatever the text", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom("a", "b", " ", "-", "é"), maxLength: 80 }),
        fc.integer({ min: 1, max: 20 }),
        (text, width) => {
          const lines = wrappedLines(text, width, SANS, even);
          expect(lines.join("").replaceAll(" ", "")).toBe(text.replaceAll(" ", ""));
          for (const line of lines) expect(even(line, "sans", 2)).toBeLessThanOrEqual(width);
        },
      ),
      { seed: 1, numRuns: 200 },
    );
  });
});

describe("a text that is to take few lines", () => {
  test("keeps its size while it fits, else shrinks to its floor and no further", () => {
    const settings = shrinking("serif", 12, 10, 1.2);
    expect(settings.map(({ sizePt }) => sizePt)).toEqual([12, 11.5, 11, 10.5, 10]);
    expect(fittedText("aaaaaaaaaa", 60, 1, settings, even).setting.sizePt).toBe(12);
    expect(fittedText("aaaaaaaaaa", 59, 1, settings, even).setting.sizePt).toBe(11.5);
    expect(fittedText("aaaaaaaaaa", 50, 1, settings, even)).toMatchObject({
      setting: { sizePt: 10 },
      lines: ["aaaaaaaaaa"],
    });
    expect(fittedText("aaaaaaaaaa aaaaaaaaaa", 50, 1, settings, even)).toMatchObject({
      setting: { sizePt: 10 },
      lines: ["aaaaaaaaaa", "aaaaaaaaaa"],
    });
  });

  test("a floor between half points, at the size and above it", () => {
    expect(shrinking("sans", 8, 7.2, 1).map(({ sizePt }) => sizePt)).toEqual([8, 7.5, 7.2]);
    expect(shrinking("sans", 8, 8, 1).map(({ sizePt }) => sizePt)).toEqual([8]);
    expect(shrinking("sans", 7, 8, 1).map(({ sizePt }) => sizePt)).toEqual([7]);
  });
});
