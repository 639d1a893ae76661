import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { PANEL_GREY, TEXT_SIZE } from "../../lib/plots/picture.ts";
import { textWidth } from "../../lib/plots/text-width.ts";
import { sharedArea, type Box } from "../../lib/plots/box.ts";
import { EXAMPLE_PICTURES } from "./example-pictures.ts";
import { hasClass, numberOf, parsedSvg, type ParsedElement } from "./parsed-svg.ts";

const PICTURES = Object.entries(EXAMPLE_PICTURES).map(([name, svg]) => ({
  name,
  svg,
  ...parsedSvg(svg),
}));

test.each(PICTURES)("$name is drawn as before", async ({ name, svg }) => {
  await expect(svg).toMatchFileSnapshot(join(import.meta.dirname, "snapshots", `${name}.svg`));
  expect(svg, "three decimals at most").not.toMatch(/="[^"]*\d\.\d{5}/);
});

test("no two pictures share an id", () => {
  const ids = PICTURES.flatMap(({ all }) => all.flatMap(({ attributes }) => attributes.id ?? []));
  expect(new Set(ids).size).toBe(ids.length);
});

describe.each(PICTURES)("$name", ({ root, all }) => {
  test("keeps to the content security policy: no style, script, handler or outside reference", () => {
    for (const { name, attributes } of all) {
      expect(["style", "script", "foreignObject", "image", "use"]).not.toContain(name);
      for (const [key, value] of Object.entries(attributes)) {
        expect(key).not.toMatch(/^(?:style|on.*|xlink:.*)$/i);
        expect(value).not.toMatch(/javascript:|url\(/i);
      }
    }
  });

  test("has a title and a description, and ids that begin with its prefix", () => {
    const [title, desc] = root.children;
    expect([title?.name, desc?.name]).toEqual(["title", "desc"]);
    expect(root.attributes["aria-labelledby"]).toBe(
      `${title?.attributes.id ?? ""} ${desc?.attributes.id ?? ""}`,
    );
    expect(title?.text).not.toBe("");
  });

  test("is a group when it holds links, else an image", () => {
    expect(root.attributes.role).toBe(all.some(({ name }) => name === "a") ? "group" : "img");
  });

  test("has no colour of its own but a swatch's and the panel's", () => {
    for (const { name, attributes, children, ancestors } of all) {
      for (const paint of ["fill", "stroke"] as const) {
        const value = attributes[paint];
        if (
          value === undefined ||
          value === "none" ||
          value === "currentColor" ||
          value === PANEL_GREY
        )
          continue;
        if (name === "g") {
          expect(value).toMatch(/^#[0-9a-f]{6}$/);
          expect(children).toHaveLength(1);
        } else {
          expect(value).toMatch(/^color\(display-p3 /);
          expect(ancestors.at(-1)?.attributes[paint]).toMatch(/^#[0-9a-f]{6}$/);
        }
      }
    }
  });

  test("prints text at 10 px or more where it is shown at its narrowest", () => {
    // A phone of 320 px with margins of 16 px; the wide ones are shown from about 640 px on, the widest from 60 rem.
    const width = numberOf(root, "width");
    const shownPx = width <= 360 ? 288 : width < 900 ? 600 : 960;
    expect(
      (numberOf(root, "font-size") * shownPx) / numberOf(root, "width"),
    ).toBeGreaterThanOrEqual(10);
    expect(
      all.filter(({ name, attributes }) => name !== "svg" && attributes["font-size"] !== undefined),
    ).toEqual([]);
  });

  test("clips no words, and lets none touch a swatch or each other", () => {
    const [width, height] = [numberOf(root, "width"), numberOf(root, "height")];
    const texts = all
      // A name that waits for a pointer shows alone, over whatever stands there.
      .filter(
        ({ name, ancestors }) =>
          name === "text" &&
          ancestors.every(({ attributes }) => attributes["visibility"] !== "hidden"),
      )
      .map((element) => ({ element, box: textBox(element) }));
    const swatches = all
      .filter((element) => hasClass(element, "swatch") && !hasClass(element, "swatch--missing"))
      .flatMap(({ children }) => children.map(rectBox));
    texts.forEach(({ element, box }, i) => {
      const inside =
        box.left >= -0.5 && box.right <= width + 0.5 && box.top >= -1 && box.bottom <= height + 0.5;
      expect(inside, `${element.text} lies inside`).toBe(true);
      for (const swatch of swatches)
        expect(sharedArea(box, swatch), `${element.text} and a swatch`).toBe(0);
      for (const other of texts.slice(i + 1))
        expect(sharedArea(box, other.box), `${element.text} and ${other.element.text}`).toBe(0);
    });
  });
});

/** From the baseline up to the capitals and down to the descenders. */
function textBox(element: ParsedElement): Box {
  const width = textWidth(
    element.text,
    element.attributes["font-weight"] === undefined ? "normal" : "bold",
  );
  const [x, y] = [numberOf(element, "x"), numberOf(element, "y")];
  const left =
    { start: x, middle: x - width / 2, end: x - width }[
      element.attributes["text-anchor"] ?? "start"
    ] ?? NaN;
  return { left, top: y - TEXT_SIZE * 0.75, right: left + width, bottom: y + TEXT_SIZE * 0.22 };
}

function rectBox(element: ParsedElement): Box {
  const [left, top] = [numberOf(element, "x"), numberOf(element, "y")];
  return {
    left,
    top,
    right: left + numberOf(element, "width"),
    bottom: top + numberOf(element, "height"),
  };
}
