import { describe, expect, test } from "vitest";
import { coordinate, element, polyline, writtenSvg } from "../../lib/plots/svg.ts";
import { parsedSvg } from "./parsed-svg.ts";

describe("writtenSvg", () => {
  test.each([
    "<b>&\"'</b>",
    "a < b && c > d",
    "]]>",
    "<!-- x -->",
    "Bleu d\u2019outremer \u00e9\u4e2d\ud83d\udd35",
  ])("%s comes back whole, as text and as attribute", (text) => {
    const { root } = parsedSvg(writtenSvg(element("text", { class: text }, [text])));
    expect(root.text).toBe(text);
    expect(root.attributes.class).toBe(text);
  });

  test.each(["\u0000", "\u0008", "\u001b", "\ud800", "\ufffe", "\u2028"])(
    "a letter that XML forbids becomes a space (%j)",
    (letter) => {
      const { root } = parsedSvg(
        writtenSvg(element("text", { class: `a${letter}b` }, [`a${letter}b`])),
      );
      expect(root.text).toBe("a b");
      expect(root.attributes.class).toBe("a b");
    },
  );

  test("an attribute that is undefined is left out", () => {
    expect(writtenSvg(element("rect", { x: 1, fill: undefined }))).toBe(`<rect x="1"/>`);
  });
});

describe("coordinate", () => {
  test.each([
    [1, "1"],
    [1.23456, "1.235"],
    [-0.0001, "0"],
    [-0, "0"],
    [1e-9, "0"],
    [123456.7, "123456.7"],
  ])("%s -> %s", (value, text) => {
    expect(coordinate(value)).toBe(text);
  });
  test.each([NaN, Infinity, -Infinity])("refuses %s", (value) => {
    expect(() => coordinate(value)).toThrow(
      new RangeError(`The coordinate, ${value}, can't be drawn; right would be a finite number`),
    );
    expect(() => polyline([{ x: 0, y: value }])).toThrow(RangeError);
    expect(() => writtenSvg(element("rect", { x: value }))).toThrow(RangeError);
  });
});
