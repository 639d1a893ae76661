import { describe, expect, test } from "vitest";
import { sideBySidePanel, type SideBySidePanel } from "../../lib/plots/side-by-side-panel.ts";
import { hasClass, numberOf, parsedSvg, seenTexts, type ParsedElement } from "./parsed-svg.ts";

const SHADES = ["#111213", "#223344", "#445566", "#777777"].map((hex) => ({ hex }));

function params(count: number, whites = 2, missing: readonly number[] = []): SideBySidePanel {
  const tints = SHADES.slice(0, count).map((shade, i) => (missing.includes(i) ? undefined : shade));
  return {
    idPrefix: "p",
    title: "t",
    description: "d",
    missing: "not stated",
    colours: SHADES.slice(0, count).map((masstone, i) => ({
      name:
        [
          "Lamp Black",
          "Umber-Ultramarine Black",
          "Viridian-Quinacridone Black",
          "Chromium Oxide Green",
        ][i] ?? "",
      masstone: missing.includes(i) ? undefined : masstone,
    })),
    whites: Array.from({ length: whites }, (_, i) => ({
      caption: `White ${i + 1}`,
      levels: ["L* 70", "L* 50"].map((label) => ({ label, tints })),
    })),
  };
}
const boxes = (svg: string) =>
  parsedSvg(svg)
    .all.filter((element) => hasClass(element, "swatch") && element.attributes.fill !== undefined)
    .flatMap(({ children }): ParsedElement[] => children)
    .map((element) => ({
      x: numberOf(element, "x"),
      y: numberOf(element, "y"),
      width: numberOf(element, "width"),
      height: numberOf(element, "height"),
    }));

describe.each(["narrow", "wide"] as const)("%s", (variant) => {
  test.each([
    [2, 0],
    [2, 3],
    [3, 2],
    [4, 3],
  ])(
    "%i colours in %i whites: each strip edge to edge, in one order, on one panel",
    (count, whites) => {
      const svg = sideBySidePanel(params(count, whites), variant);
      const found = boxes(svg);
      expect(found).toHaveLength(count * (1 + 2 * whites));
      const width = numberOf(parsedSvg(svg).root, "width");
      for (let first = 0; first < found.length; first += count) {
        found.slice(first, first + count).forEach((box, i, strip) => {
          const next = strip[i + 1];
          if (next !== undefined) expect(Math.abs(box.x + box.width - next.x)).toBeLessThan(0.01);
          expect([box.y, box.height]).toEqual([strip[0]?.y, strip[0]?.height]);
          expect(box.x).toBeGreaterThanOrEqual(16);
          expect(box.x + box.width).toBeLessThanOrEqual(width - 16 + 0.01);
        });
      }
      expect(parsedSvg(svg).all.filter((element) => hasClass(element, "panel"))).toHaveLength(1);
    },
  );

  test("a name too long for its swatch is broken, and cut where no break helps", () => {
    const texts = seenTexts(sideBySidePanel(params(4), variant));
    expect(texts.filter((text) => text.length > (variant === "narrow" ? 11 : 28))).toEqual([]);
    expect(texts.join(" ").replaceAll("- ", "-")).toContain("Umber-Ultramarine Black");
  });

  test("a colour that is not known is hatched, and a strip that none reaches is left out", () => {
    const one = sideBySidePanel(params(3, 1, [1]), variant);
    expect(
      parsedSvg(one).all.filter((element) => hasClass(element, "swatch--missing")),
    ).toHaveLength(3);
    const none = sideBySidePanel(params(2, 1, [0, 1]), variant);
    expect(seenTexts(none)).not.toContain("L* 50");
  });
});

test.each<[string, SideBySidePanel]>([
  ["The colours side by side, 1, can't be drawn; right would be 2 to 4", params(1)],
  ["The whites, 4, can't be drawn; right would be 0 to 3", params(2, 4)],
  [
    "The tints in W, 1, can't be drawn; right would be 2, one a colour",
    {
      ...params(2, 0),
      whites: [{ caption: "W", levels: [{ label: "L* 50", tints: SHADES.slice(0, 1) }] }],
    },
  ],
])("%s", (complaint, wrong) => {
  expect(() => sideBySidePanel(wrong, "wide")).toThrow(new RangeError(complaint));
});
