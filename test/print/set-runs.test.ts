import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { measureText } from "../../lib/print/print-document.ts";
import { fittedRuns, naturalWidths, setRuns, type SetRuns } from "../../lib/print/set-runs.ts";

const PT = 10;
const run = (text: string) => [{ text, face: "sans" }] as const;
const lines = ({ lines: own }: SetRuns): string[] =>
  own.map(({ marks }) => marks.map(({ text }) => text).join(""));
/** Set as wide as a text is. */
const inWidthOf = (text: string, width: string): string[] =>
  lines(setRuns(run(text), { widthMm: measureText(width, "sans", PT) + 0.01, sizePt: PT }));

describe("a text in lines", () => {
  test.each<[text: string, width: string, lines: string[]]>([
    ["one two three", "one two", ["one two", "three"]],
    ["one two three", "three", ["one", "two", "three"]],
    ["cold-pressed oil", "pressed", ["cold-", "pressed", "oil"]],
    ["b* -4.1", "-4.1", ["b*", "-4.1"]],
    ["PBk\u00a09 ab", "PBk\u00a09", ["PBk\u00a09", "ab"]],
    ["", "wide", []],
  ])("%j as wide as %j", (text, width, expected) => {
    expect(inWidthOf(text, width)).toEqual(expected);
  });

  test("is balanced without a word broken that a line holds", () => {
    const widthMm = measureText("Phthalocyanine", "sans", PT) + 0.5;
    const set = setRuns(run("Phthalocyanine Blue"), { widthMm, sizePt: PT, isBalanced: true });
    expect(lines(set)).toEqual(["Phthalocyanine", "Blue"]);
  });

  // An address that is copied by hand reads as one only where it is whole. Source: practice.
  test.each<[text: string, width: string, lines: string[]]>([
    ["write to shop@paint.example", "shop@paint.example", ["write to", "shop@paint.example"]],
    ["write to shop@paint.example", "to shop@paint", ["write to", "shop@", "paint.example"]],
    ["shop@paint.example", ".example", ["shop@", "paint", ".example"]],
  ])("%j as wide as %j parts the address only where no line holds it", (text, width, expected) => {
    expect(inWidthOf(text, width)).toEqual(expected);
  });

  test("is balanced with an address whole that a line holds", () => {
    const text = "write to the workshop shop@paint.example";
    const widthMm = measureText("write to the workshop", "sans", PT) + 0.5;
    expect(measureText("shop@paint.example", "sans", PT)).toBeLessThan(widthMm);
    const set = setRuns(run(text), { widthMm, sizePt: PT, isBalanced: true });
    expect(lines(set)).toEqual(["write to the workshop", "shop@paint.example"]);
    const narrow = setRuns(run("to shop@paint.example, by letter"), {
      widthMm: measureText("shop@paint.example,", "sans", PT) + 0.5,
      sizePt: PT,
      isBalanced: true,
    });
    expect(lines(narrow)).toEqual(["to", "shop@paint.example,", "by letter"]);
  });

  test("is balanced with a word's own hyphen broken only where a space would take a line more", () => {
    const text = "Bone black; Cold-pressed linseed oil";
    const widthMm = measureText("Cold-pressed linseed oil", "sans", PT) + 0.5;
    const set = (width: number) =>
      lines(setRuns(run(text), { widthMm: width, sizePt: PT, isBalanced: true }));
    expect(set(widthMm)).toEqual(["Bone black;", "Cold-pressed linseed oil"]);
    const narrower = measureText("pressed linseed oil", "sans", PT) + 0.5;
    expect(set(narrower)).toEqual(["Bone black; Cold-", "pressed linseed oil"]);
  });

  test("is no narrower than its longest word, nor wider than all of it in a line", () => {
    const { leastMm, greatestMm } = naturalWidths(run("a cold-pressed oil\u00a0of linseed"), PT);
    expect(leastMm).toBeCloseTo(measureText("pressed", "sans", PT), 6);
    expect(greatestMm).toBeCloseTo(
      measureText("a cold-pressed oil\u00a0of linseed", "sans", PT),
      1,
    );
    expect(naturalWidths([], PT)).toEqual({ leastMm: 0, greatestMm: 0 });
  });

  test("loses no letter and passes no line's width, whatever the text", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom("a", "b", " ", "-", "é"), maxLength: 80 }),
        fc.integer({ min: 4, max: 40 }),
        (text, widthMm) => {
          const set = setRuns(run(text), { widthMm, sizePt: PT });
          expect(lines(set).join("").replaceAll(" ", "")).toBe(text.replaceAll(" ", ""));
          // Kerning across a place where a word was broken is a tenth of a millimetre at most.
          for (const line of lines(set))
            expect(measureText(line, "sans", PT)).toBeLessThanOrEqual(widthMm + 0.2);
        },
      ),
      { seed: 1, numRuns: 200 },
    );
  });

  test("a word in two faces is not parted between them", () => {
    const set = setRuns(
      [
        { text: "made of lead", face: "sans" },
        { text: "(PW\u00a01), ground", face: "sans bold" },
      ],
      { widthMm: measureText("made of lead(PW", "sans", PT), sizePt: PT },
    );
    expect(lines(set)[0]).toBe("made of");
  });

  test("evened out it takes no line more, and its last line is not one word", () => {
    const text = "Keeps its chroma and turns towards green in white";
    const widthMm = measureText("Keeps its chroma and turns towards green in", "sans", PT) + 0.01;
    expect(lines(setRuns(run(text), { widthMm, sizePt: PT }))).toHaveLength(2);
    const even = lines(setRuns(run(text), { widthMm, sizePt: PT, isBalanced: true }));
    expect(even).toHaveLength(2);
    expect(even[1]?.split(" ").length).toBeGreaterThan(2);
  });

  test("at the right and in the middle it ends where its width does, and halfway", () => {
    const widthMm = 50;
    const own = measureText("price", "sans", PT);
    const at = (align: "right" | "centre"): number | undefined =>
      setRuns(run("price"), { widthMm, sizePt: PT, align }).marks[0]?.xMm;
    expect(at("right")).toBeCloseTo(widthMm - own, 9);
    expect(at("centre")).toBeCloseTo((widthMm - own) / 2, 9);
  });
});

describe("a text whose words may be parted", () => {
  /** Divided as a dictionary does. */
  const hyphens = (word: string): number[] => (word === "environment" ? [2, 4, 7] : []);
  const inWidth = (text: string, width: string): string[] =>
    lines(
      setRuns(run(text), {
        widthMm: measureText(width, "sans", PT) + 0.01,
        sizePt: PT,
        hyphens,
      }),
    );

  test.each<[text: string, width: string, lines: string[]]>([
    ["to the environment now", "to the environ-", ["to the environ-", "ment now"]],
    ["to the environment now", "to the envi-", ["to the envi-", "ronment", "now"]],
    // A line that is filled to three quarters is left as it is.
    ["to the environment now", "to theen-", ["to the", "environ-", "ment", "now"]],
    // Neither a last word nor a code.
    ["to the environment", "to the environ-", ["to the", "environment"]],
    ["to CAS 7440-43-9 now", "to CAS 7440-", ["to CAS", "7440-43-9", "now"]],
    // A last word that no line holds is divided as any other, and not letter by letter.
    ["to environment", "environ-", ["to envi-", "ron-", "ment"]],
  ])("%j as wide as %j", (text, width, expected) => {
    expect(inWidth(text, width)).toEqual(expected);
  });

  test("is as narrow as the longest part of a word", () => {
    const parts = ["en-", "vi", "ron-", "ment"].map((part) => measureText(part, "sans", PT));
    expect(naturalWidths(run("environment"), PT, hyphens).leastMm).toBeCloseTo(
      Math.max(measureText("vi-", "sans", PT), ...parts),
      1,
    );
  });
});

describe("a text that is to take few lines", () => {
  const widthAt = (sizePt: number): number => measureText("aaaaaaaaaa", "sans", sizePt) + 0.001;
  const fitted = (text: string, widthMm: number): SetRuns =>
    fittedRuns(run(text), 1, [12, 11.5, 11, 10.5, 10], { widthMm });

  test("keeps its size while it fits, else shrinks to its floor and no further", () => {
    expect(fitted("aaaaaaaaaa", widthAt(12)).sizePt).toBe(12);
    expect(fitted("aaaaaaaaaa", widthAt(11.6)).sizePt).toBe(11.5);
    expect(fitted("aaaaaaaaaa", widthAt(10))).toMatchObject({ sizePt: 10 });
    const two = fitted("aaaaaaaaaa aaaaaaaaaa", widthAt(10));
    expect(two.sizePt).toBe(10);
    expect(lines(two)).toEqual(["aaaaaaaaaa", "aaaaaaaaaa"]);
  });
});
