/** How a list is cut into pages: counts alone, whatever stands in it. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { evenly, pagesOf, partLinks, partPaths } from "../../lib/pages/range-parts.ts";

const groups = (...counts: readonly number[]) =>
  counts.map((count, id) => ({ id, items: Array.from({ length: count }, (_, i) => `${id}.${i}`) }));

describe("pagesOf", () => {
  test("a list that finds room stays on one page", () => {
    expect(pagesOf(groups(3, 2), 5)).toEqual([
      [
        { id: 0, items: ["0.0", "0.1", "0.2"], from: 0 },
        { id: 1, items: ["1.0", "1.1"], from: 0 },
      ],
    ]);
  });

  test("one more entry opens a page, and a group goes on there from where it was cut", () => {
    const [, second] = pagesOf(groups(3, 3), 5);
    expect(second).toEqual([{ id: 1, items: ["1.2"], from: 2 }]);
  });

  test("an empty list has one empty page", () => {
    expect(pagesOf([], 5)).toEqual([[]]);
    expect(pagesOf(groups(0), 5)).toEqual([[]]);
  });

  test("every entry stands on one page, in order, and no page holds more than it may", () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat(40), { maxLength: 8 }),
        fc.integer({ min: 1, max: 30 }),
        (counts, most) => {
          const list = groups(...counts);
          const pages = pagesOf(list, most);
          const sizes = pages.map((page) => page.flatMap(({ items }) => items).length);
          expect(pages.flatMap((page) => page.flatMap(({ items }) => items))).toEqual(
            list.flatMap(({ items }) => items),
          );
          expect(Math.max(...sizes)).toBeLessThanOrEqual(most);
          // Only the last may have room left.
          expect(sizes.slice(0, -1).every((size) => size === most)).toBe(true);
        },
      ),
      { seed: 1 },
    );
  });
});

test("pages of a list lie below its own address, and lead to one another from any of them", () => {
  const paths = partPaths("colours/by-hue/index.html", [1, 2]);
  expect(paths).toEqual(["colours/by-hue/index.html", "colours/by-hue/2/index.html"]);
  expect(partLinks(paths, { path: "colours/by-hue/2/index.html", root: "../../../" })).toEqual([
    { text: "1", href: "../../../colours/by-hue/" },
    { text: "2", href: "../../../colours/by-hue/2/", current: true },
  ]);
  expect(partLinks(paths.slice(0, 1), { path: "x", root: "" })).toEqual([]);
});

test.each([
  [4, [0, 1, 2, 3]],
  [3, [0, 2, 3]],
  [2, [0, 3]],
  [1, [0]],
])("of four, %d at even steps from the first to the last", (most, expected) => {
  expect(evenly([0, 1, 2, 3], most)).toEqual(expected);
});
