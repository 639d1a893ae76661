import { describe, expect, test } from "vitest";
import { PANEL_GREY } from "../../lib/plots/picture.ts";
import { ownColourLine, swatch } from "../../lib/plots/screen-colour.ts";
import { element, writtenSvg } from "../../lib/plots/svg.ts";
import { parsedSvg } from "./parsed-svg.ts";

const BOX = { left: 0, top: 0, right: 10, bottom: 20 };

describe("swatch", () => {
  test("has sRGB on the group and Display P3 on the shape, so that the second falls back to the first", () => {
    const { root } = parsedSvg(
      writtenSvg(swatch({ hex: "#B03A2E", displayP3: "color(display-p3 0.64 0.26 0.21)" }, BOX)),
    );
    expect(root).toMatchObject({ name: "g", attributes: { class: "swatch", fill: "#b03a2e" } });
    expect(root.children[0]).toMatchObject({
      name: "rect",
      attributes: { fill: "color(display-p3 0.64 0.26 0.21)", width: "10", height: "20" },
    });
  });

  test("without Display P3 the shape takes the group's", () => {
    expect(
      parsedSvg(writtenSvg(swatch({ hex: "#b03a2e" }, BOX))).root.children[0]?.attributes,
    ).not.toHaveProperty("fill");
  });

  test.each([
    ["#939393", true],
    ["#8f959c", true],
    ["#adadad", false],
    ["#707780", false],
    ["#ffffff", false],
    ["#ad00ad", false],
  ])("%s has a hairline: %s", (hex, hairline) => {
    expect(
      Object.hasOwn(
        parsedSvg(writtenSvg(swatch({ hex }, BOX))).root.children[0]?.attributes ?? {},
        "stroke",
      ),
    ).toBe(hairline);
  });

  test.each(["red", "#fff", "#12345g", "url(#x)", "", "#123456;"])(
    "refuses the sRGB colour %j",
    (hex) => {
      expect(() => swatch({ hex }, BOX)).toThrow(`The sRGB colour, ${hex}`);
    },
  );
  test.each([
    "color(srgb 1 0 0)",
    "color(display-p3 1 0)",
    "color(display-p3 1 0 NaN)",
    "url(#x)",
    "color(display-p3 1 0 0 / 0.5)",
  ])("refuses the Display P3 colour %j", (displayP3) => {
    expect(() => swatch({ hex: "#000000", displayP3 }, BOX)).toThrow(
      `The Display P3 colour, ${displayP3}`,
    );
  });
  test.each([
    "color(display-p3 0 0 0)",
    "color(display-p3 0.123 1 .5)",
    "color(display-p3 -0.01 1.02 5e-4)",
  ])("takes %j", (displayP3) => {
    expect(() => swatch({ hex: "#000000", displayP3 }, BOX)).not.toThrow();
  });
});

test("the panel is Munsell N 6, strictly neutral", () => {
  // ASTM D1535 value function at V = 6, then the sRGB transfer function of IEC 61966-2-1; an equal R, G, B has a* = b* = 0.
  const V = 6;
  const Y =
    (1.1914 * V - 0.22533 * V ** 2 + 0.23352 * V ** 3 - 0.020484 * V ** 4 + 0.00081939 * V ** 5) /
    100;
  const level = Math.round(255 * (1.055 * Y ** (1 / 2.4) - 0.055)).toString(16);
  expect(PANEL_GREY).toBe(`#${level}${level}${level}`);
});

test("a line in the panel's own grey still has a dark rim", () => {
  const { all } = parsedSvg(
    writtenSvg(
      element(
        "g",
        {},
        ownColourLine({ hex: PANEL_GREY }, [
          { x: 0, y: 0 },
          { x: 9, y: 9 },
        ]),
      ),
    ),
  );
  const [rim, curve] = all.filter(({ name }) => name === "path");
  expect(rim?.attributes.stroke).toBe("currentColor");
  expect(Number(rim?.attributes["stroke-width"])).toBeGreaterThan(
    Number(curve?.attributes["stroke-width"]),
  );
});
