import { describe, expect, test } from "vitest";
import { onPanel, pictureWidth, PANEL_GREY, writtenPicture } from "../../lib/plots/picture.ts";
import { writtenSvg } from "../../lib/plots/svg.ts";
import { parsedSvg } from "./parsed-svg.ts";

const WORDS = { idPrefix: "p1", title: "A finding", description: "What it shows" };
const SIZE = { width: 320, height: 100.2 };

describe("writtenPicture", () => {
  test("is an image named by its title and description", () => {
    const { root, all } = parsedSvg(writtenPicture("trial", WORDS, SIZE, []));
    expect(root.attributes).toMatchObject({
      role: "img",
      "aria-labelledby": "p1-title p1-desc",
      viewBox: "0 0 320 101",
      class: "plot plot--trial",
      fill: "currentColor",
    });
    expect(
      all
        .filter(({ name }) => name === "title" || name === "desc")
        .map(({ text, attributes }) => [attributes.id, text]),
    ).toEqual([
      ["p1-title", "A finding"],
      ["p1-desc", "What it shows"],
    ]);
  });
  test("with links is a group, because an image hides what is in it", () => {
    expect(
      parsedSvg(writtenPicture("trial", WORDS, { ...SIZE, hasLinks: true }, [])).root.attributes
        .role,
    ).toBe("group");
  });
  test.each(["", "1a", "a b", 'a"b', "a#"])("refuses the id prefix %j", (idPrefix) => {
    expect(() => writtenPicture("trial", { ...WORDS, idPrefix }, SIZE, [])).toThrow(
      /The id prefix/,
    );
  });
  test.each(["title", "description"] as const)("refuses an empty %s", (key) => {
    expect(() => writtenPicture("trial", { ...WORDS, [key]: " " }, SIZE, [])).toThrow(`The ${key}`);
  });
});

test.each([
  [280, true],
  [279.9, false],
  [960, true],
  [960.1, false],
  [NaN, false],
])("width %s is taken: %s", (width, taken) => {
  if (taken) expect(pictureWidth({ ...WORDS, width })).toBe(width);
  else expect(() => pictureWidth({ ...WORDS, width })).toThrow(/The picture width/);
});

test("words on the panel reach a contrast of 4.5 to 1 (WCAG 2.2, 1.4.3)", () => {
  const luminance = (hex: string): number => {
    const c = parseInt(hex.slice(1, 3), 16) / 255;
    return c <= 0.03928 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4; // grey: R = G = B
  };
  const { color = "" } = parsedSvg(writtenSvg(onPanel([]))).root.attributes;
  expect(color).toMatch(/^#(..)\1\1$/);
  expect((luminance(PANEL_GREY) + 0.05) / (luminance(color) + 0.05)).toBeGreaterThan(4.5);
});
