import { describe, expect, test } from "vitest";
import type { RowStep } from "../../lib/plots/swatch-row.ts";
import { swatchStrip } from "../../lib/plots/swatch-strip.ts";
import { hasClass, numberOf, parsedSvg, seenTexts, type ParsedElement } from "./parsed-svg.ts";

const STRIP = {
  idPrefix: "s",
  title: "t",
  description: "d",
  axisLabel: "colour : white, paint by mass",
  missing: "no reading",
};
const colour = { hex: "#445566" };
const step = (whiteParts: number, standing: RowStep["standing"]): RowStep => ({
  lines: [`1:${whiteParts}`],
  colour,
  standing,
});
const swatchesOf = (svg: string): ParsedElement[] =>
  parsedSvg(svg)
    .all.filter((element) => hasClass(element, "swatch"))
    .flatMap(({ children }) => children.slice(0, 1));

describe("swatchStrip", () => {
  test("keeps the order given, lines under each other", () => {
    const svg = swatchStrip("gloss-strip", {
      ...STRIP,
      steps: [
        { lines: ["matte", "L* 25"], colour, standing: "derived" },
        { lines: ["gloss", "L* 7"], colour, standing: "measured" },
      ],
    });
    expect(seenTexts(svg).slice(0, 4)).toEqual(["matte", "L* 25", "gloss", "L* 7"]);
  });

  test("a predicted step is lower, in dashes, and has no measured mark", () => {
    const svg = swatchStrip("ladder-strip", {
      ...STRIP,
      steps: [step(5, "measured"), step(10, "derived"), step(20, "estimated")],
    });
    const [measured, derived, estimated] = swatchesOf(svg).map((element) =>
      numberOf(element, "height"),
    );
    expect(derived).toBeLessThan((measured ?? NaN) * 0.8);
    expect(estimated).toBe(derived);
    const { all } = parsedSvg(svg);
    expect(
      all.filter(
        (element) =>
          hasClass(element, "plot__predicted") &&
          element.attributes["stroke-dasharray"] !== undefined,
      ),
    ).toHaveLength(2);
    expect(
      ["measured", "derived", "estimated"].map(
        (standing) => all.filter((element) => hasClass(element, `plot__mark--${standing}`)).length,
      ),
    ).toEqual([1, 1, 1]);
  });

  test("steps that are all predicted are to be judged against each other: none is lower or framed", () => {
    const svg = swatchStrip("ladder-strip", {
      ...STRIP,
      steps: [step(5, "derived"), step(10, "derived"), step(20, "estimated")],
    });
    expect(new Set(swatchesOf(svg).map((each) => numberOf(each, "height"))).size).toBe(1);
    expect(parsedSvg(svg).all.some((each) => hasClass(each, "plot__predicted"))).toBe(false);
  });

  test("a suspect step says so in a word", () => {
    const svg = swatchStrip("ladder-strip", {
      ...STRIP,
      steps: [{ ...step(5, "measured"), flag: "suspect" }, step(10, "measured")],
    });
    expect(
      parsedSvg(svg)
        .all.filter(({ text }) => text === "suspect")
        .map(({ attributes }) => attributes["font-weight"]),
    ).toEqual(["600"]);
  });

  test.each([1, 4, 7, 8, 13, 24])("%s steps stand on one grid inside the panel", (count) => {
    const svg = swatchStrip("ladder-strip", {
      ...STRIP,
      steps: Array.from({ length: count }, (_, i) => step(i + 1, "measured")),
    });
    const swatches = swatchesOf(svg);
    expect(swatches).toHaveLength(count);
    for (const element of swatches)
      expect(numberOf(element, "x") + numberOf(element, "width")).toBeLessThanOrEqual(320 - 15);
    const columns = new Set(swatches.map((element) => element.attributes.x)).size;
    const rows = new Set(swatches.map((element) => element.attributes.y)).size;
    expect(columns * rows).toBeGreaterThanOrEqual(count);
    expect(columns * (rows - 1)).toBeLessThan(count);
  });

  test("a step without a colour is hatched", () => {
    const svg = swatchStrip("ladder-strip", {
      ...STRIP,
      steps: [{ ...step(5, "not stated"), colour: undefined }],
    });
    expect(parsedSvg(svg).all.some((element) => hasClass(element, "swatch--missing"))).toBe(true);
    expect(seenTexts(svg)).toEqual(expect.arrayContaining(["no", "reading"]));
  });

  test("refuses no steps", () => {
    expect(() => swatchStrip("ladder-strip", { ...STRIP, steps: [] })).toThrow(
      "The steps, none, can't be drawn; right would be at least one",
    );
  });
});
