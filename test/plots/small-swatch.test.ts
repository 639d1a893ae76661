import { describe, expect, test } from "vitest";
import { PANEL_GREY } from "../../lib/plots/picture.ts";
import { cardSwatch, cellSwatch } from "../../lib/plots/small-swatch.ts";
import { hasClass, numberOf, parsedSvg } from "./parsed-svg.ts";

const one = { hex: "#223344" };
const other = { hex: "#998877" };

test("a card's swatch is named in words, escaped", () => {
  const { root, all } = parsedSvg(cardSwatch([one, other], `Smalt <"&'>`));
  expect(root.attributes).toMatchObject({ role: "img", "aria-label": `Smalt <"&'>` });
  expect(
    all.filter((element) => hasClass(element, "swatch")).map(({ attributes }) => attributes.fill),
  ).toEqual(["#223344", "#998877"]);
});

test.each([["a cell", cellSwatch(one)]])(
  "%s is decoration on N 6, with room around every swatch",
  (_, svg) => {
    const { root, all } = parsedSvg(svg);
    expect(root.attributes["aria-hidden"]).toBe("true");
    const ground = all.find((element) => hasClass(element, "panel"));
    expect(ground?.attributes.fill).toBe(PANEL_GREY);
    if (ground === undefined) return;
    for (const rect of all
      .filter((element) => hasClass(element, "swatch"))
      .flatMap(({ children }) => children)) {
      expect(numberOf(rect, "x")).toBeGreaterThanOrEqual(4);
      expect(numberOf(rect, "x") + numberOf(rect, "width")).toBeLessThanOrEqual(
        numberOf(ground, "width") - 4,
      );
    }
  },
);

test("a colour that is not read is an empty frame of a swatch's size", () => {
  const drawn = (svg: string, name: string) => {
    const found = parsedSvg(svg).all.find((element) => hasClass(element, name));
    return found?.children.at(0) ?? found;
  };
  const swatch = drawn(cellSwatch(one), "swatch");
  const frame = drawn(cellSwatch(undefined), "empty-frame");
  expect(frame?.attributes).toMatchObject({ fill: "none" });
  if (swatch === undefined || frame === undefined) throw new Error("Nothing was drawn");
  expect(numberOf(frame, "width") + 1).toBe(numberOf(swatch, "width"));
  expect(drawn(cellSwatch(undefined), "swatch")).toBeUndefined();
});

describe("counts", () => {
  test.each([[[]], [[one, other, one]]])("a card refuses %o", (colours) => {
    expect(() => cardSwatch(colours, "Smalt")).toThrow(`The colours of a card, ${colours.length}`);
  });
});
