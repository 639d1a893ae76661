import { describe, expect, test } from "vitest";
import { swatchPanel, type SwatchPanel } from "../../lib/plots/swatch-panel.ts";
import { hasClass, numberOf, parsedSvg, seenTexts, type ParsedElement } from "./parsed-svg.ts";

const WORDS = { idPrefix: "p", title: "t", description: "d" };
const grey = { hex: "#777777" };
const black = { hex: "#111213" };

function params(whites: number, levels: number): SwatchPanel {
  return {
    ...WORDS,
    missing: "not stated",
    masstone: { colour: black, caption: "Masstone", standing: "measured" },
    levels: ["L* 70", "L* 50", "L* 30"].slice(0, levels),
    whites: Array.from({ length: whites }, (_, i) => ({
      caption: `White ${i + 1}`,
      standing: "derived",
      tints: Array.from({ length: levels }, () => grey),
    })),
  };
}
const swatchesOf = (svg: string): ParsedElement[] =>
  parsedSvg(svg)
    .all.filter((element) => hasClass(element, "swatch") && element.attributes.fill !== undefined)
    .flatMap(({ children }) => children);

describe.each(["narrow", "wide"] as const)("%s", (variant) => {
  test.each([
    [0, 0],
    [1, 1],
    [1, 3],
    [2, 2],
    [3, 1],
    [3, 3],
  ])("%s whites at %s lightnesses", (whites, levels) => {
    const svg = swatchPanel(params(whites, levels), variant);
    const [masstone, ...tints] = swatchesOf(svg);
    expect(tints).toHaveLength(whites * levels);
    // A row for each lightness, a column for each white, all of one size.
    expect(new Set(tints.map((tint) => tint.attributes.y)).size).toBe(whites === 0 ? 0 : levels);
    expect(new Set(tints.map((tint) => tint.attributes.x)).size).toBe(whites);
    expect(
      new Set(tints.map((tint) => `${tint.attributes.width ?? ""} ${tint.attributes.height ?? ""}`))
        .size,
    ).toBe(whites === 0 ? 0 : 1);
    expect(Number(masstone?.attributes.width)).toBeGreaterThanOrEqual(
      Math.max(
        0,
        ...(whites === 1 && variant === "wide" ? [] : tints.map((tint) => numberOf(tint, "width"))),
      ),
    );
    for (let i = 1; i <= whites; i++) expect(seenTexts(svg)).toContain(`White ${i}`);
  });

  test("every swatch has room around it on one panel", () => {
    const svg = swatchPanel(params(3, 3), variant);
    const panels = parsedSvg(svg).all.filter((element) => hasClass(element, "panel"));
    expect(panels).toHaveLength(1);
    const boxes = swatchesOf(svg).map(
      (element) =>
        ["x", "y", "width", "height"].map((name) => numberOf(element, name)) as [
          number,
          number,
          number,
          number,
        ],
    );
    boxes.forEach(([x, y, width, height], i) => {
      expect(x).toBeGreaterThanOrEqual(12);
      expect(y).toBeGreaterThanOrEqual(12);
      expect(x + width).toBeLessThanOrEqual(numberOf(parsedSvg(svg).root, "width") - 12);
      boxes.slice(i + 1).forEach(([x2, y2, width2, height2]) => {
        const apart = Math.max(
          x2 - (x + width),
          x - (x2 + width2),
          y2 - (y + height),
          y - (y2 + height2),
        );
        expect(apart).toBeGreaterThanOrEqual(10);
      });
    });
  });

  test("a caption stands nearer to its own swatch than to the next", () => {
    const svg = swatchPanel(params(3, 3), variant);
    const caption = parsedSvg(svg).all.find(({ text }) => text === "Masstone");
    const [masstone, ...tints] = swatchesOf(svg);
    if (caption === undefined || masstone === undefined)
      throw new Error("Unexpected panel without masstone");
    const above = numberOf(caption, "y") - (numberOf(masstone, "y") + numberOf(masstone, "height"));
    const below = tints
      .map((tint) => numberOf(tint, "y") - numberOf(caption, "y"))
      .filter((distance) => distance > 0);
    expect(above).toBeGreaterThan(12);
    for (const distance of below) expect(distance).toBeGreaterThan(above * 0.75);
  });

  test("a missing masstone is a hatched outline and a word, and no colour", () => {
    const missing = swatchPanel(
      {
        ...params(0, 0),
        masstone: { colour: undefined, caption: "Masstone", standing: "not stated" },
      },
      variant,
    );
    expect(swatchesOf(missing)).toHaveLength(0);
    expect(
      parsedSvg(missing).all.filter((element) => hasClass(element, "swatch--missing")),
    ).toHaveLength(1);
    expect(seenTexts(missing)).toContain("not stated");
  });

  test("refuses what does not fit", () => {
    expect(() => swatchPanel(params(4, 1), variant)).toThrow(/The whites, 4/);
    expect(() => swatchPanel({ ...params(1, 1), levels: ["a", "b", "c", "d"] }, variant)).toThrow(
      /The lightnesses, 4/,
    );
    expect(() => swatchPanel({ ...params(1, 1), levels: [] }, variant)).toThrow(
      /The lightnesses, 0/,
    );
    expect(() => swatchPanel({ ...params(1, 2), levels: ["L* 50"] }, variant)).toThrow(
      /The tints in White 1, 2/,
    );
  });
});

test("narrow puts the tints under the masstone, wide beside it", () => {
  const place = (variant: "narrow" | "wide"): { below: boolean; beside: boolean } => {
    const [masstone, tint] = swatchesOf(swatchPanel(params(3, 3), variant));
    if (masstone === undefined || tint === undefined)
      throw new Error("Unexpected panel without swatches");
    return {
      below: numberOf(tint, "y") > numberOf(masstone, "y") + numberOf(masstone, "height"),
      beside: numberOf(tint, "x") > numberOf(masstone, "x") + numberOf(masstone, "width"),
    };
  };
  expect(place("narrow")).toEqual({ below: true, beside: false });
  expect(place("wide")).toEqual({ below: false, beside: true });
});
