/**
 * Pages of a large range: how much they hold, counted in bytes and in colours and never by the clock.
 * The range is the demonstration many times over, each time under other names.
 */
import { describe, expect, test } from "vitest";
import { benchPage } from "../../lib/pages/bench-page.ts";
import { blacksInWhitesPicture, blacksInWhitesTable } from "../../lib/pages/blacks-in-whites.ts";
import {
  byFamily,
  catalogueGrid,
  catalogueTable,
  ORDERS,
  orderPaths,
} from "../../lib/pages/catalogue-pages.ts";
import { wallOrder } from "../../lib/pages/colour-tile.ts";
import { comparePage } from "../../lib/pages/compare-pages.ts";
import { homePage } from "../../lib/pages/home-page.ts";
import { pagePlace, type PageContext } from "../../lib/pages/page-context.ts";
import { ON_ONE_PAGE } from "../../lib/pages/range-parts.ts";
import { sheetPage } from "../../lib/pages/sheet-page.ts";
import { whitesPage, whitesPaths } from "../../lib/pages/whites-page.ts";
import { isKnown } from "../../lib/quantities/figure.ts";
import { rangeParts } from "../../lib/site/range-papers.ts";
import { worked } from "../support/demonstration.ts";

/** The demonstration so many times over. */
function ranged(times: number): PageContext {
  const { context } = worked();
  return {
    ...context,
    sheets: Array.from({ length: times }, (_, i) =>
      context.sheets.map((worded) => ({
        ...worded,
        sheet: {
          ...worded.sheet,
          slug: `${worded.sheet.slug}-${i}`,
          name: `${worded.sheet.name} ${i}`,
        },
      })),
    ).flat(),
  };
}

const [N, TWICE] = [ranged(8), ranged(16)];
const bytes = (view: unknown): number => JSON.stringify(view).length;
const place = (path: string) => pagePlace(path);

describe.each([
  ["the first page", (context: PageContext) => homePage(context, place("index.html"))],
  [
    "the choice of colours to compare",
    (context: PageContext) => comparePage(context, place("compare/index.html")),
  ],
  [
    "the picture of blacks in whites",
    (context: PageContext) => blacksInWhitesPicture("50", context, "b"),
  ],
  [
    "the table of blacks in whites",
    (context: PageContext) => blacksInWhitesTable("50", context, place("answers/x/index.html")),
  ],
])("%s", (_, made) => {
  test("weighs as much for twice the colours", () => {
    const [one, twice] = [bytes(made(N)), bytes(made(TWICE))];
    expect(twice).toBeLessThan(1.03 * one);
  });
});

test("the first page of a large range has a tile a family, each the way to its colours and their number", () => {
  const { tiles } = homePage(N, place("index.html"));
  const families = new Set(N.sheets.map(({ sheet }) => sheet.family ?? "other"));
  expect(tiles).toHaveLength(families.size);
  const counted = tiles.map(({ note = "" }) => Number.parseInt(note, 10));
  expect(counted.reduce((sum, count) => sum + count, 0)).toBe(N.sheets.length);
  for (const { href } of tiles) expect(href).toMatch(/^colours\/(?:by-page\/\d+\/)?#[a-z]+$/);
});

test("the demonstration itself stays on one page each", () => {
  const { context } = worked();
  expect(homePage(context, place("index.html")).tiles).toHaveLength(context.sheets.length);
  for (const order of ["grid", ...ORDERS] as const)
    expect(orderPaths(order, context)).toHaveLength(1);
  expect(whitesPaths(context)).toHaveLength(1);
});

describe.each(["grid", ...ORDERS] as const)("the order %s", (order) => {
  test("shows every colour once on some page, none of which holds more than it may", () => {
    const shown = orderPaths(order, N).map((path, nth) =>
      order === "grid"
        ? catalogueGrid(nth, N, place(path)).families.flatMap(({ colours }) =>
            colours.map(({ href }) => href),
          )
        : catalogueTable(order, nth, N, place(path)).groups.flatMap(({ table }) =>
            table.rows.map(([cell]) => cell?.href ?? ""),
          ),
    );
    const slugs = new Set(
      shown.flat().map((href) => href.replace(/^(?:\.\.\/)+colours\/|\/$/g, "")),
    );
    expect(Math.max(...shown.map(({ length }) => length))).toBeLessThanOrEqual(ON_ONE_PAGE.colours);
    // By oil each stands twice, by strength alone what was let down or compares.
    if (order !== "strength") expect(slugs.size).toBe(N.sheets.length);
    if (order !== "strength" && order !== "oil") expect(shown.flat()).toHaveLength(N.sheets.length);
  });

  test("has pages that lead to one another", () => {
    const paths = orderPaths(order, N);
    expect(paths.length).toBeGreaterThan(1);
    const [, second = ""] = paths;
    const { parts } =
      order === "grid"
        ? catalogueGrid(1, N, place(second))
        : catalogueTable(order, 1, N, place(second));
    expect(parts.map(({ href }) => new URL(href, `https://x/${second}`).pathname)).toEqual(
      paths.map((path) => `/${path.replace("index.html", "")}`),
    );
    expect(parts.filter(({ current }) => current)).toHaveLength(1);
  });
});

test("blacks and greys stand on pages of so many, each with their own trails alone", () => {
  const paths = whitesPaths(N);
  expect(paths.length).toBeGreaterThan(1);
  const [first, last] = [
    whitesPage(0, N, place(paths[0] ?? "")),
    whitesPage(paths.length - 1, N, place(paths.at(-1) ?? "")),
  ];
  const board = (view: typeof first): number =>
    view.sections
      .flatMap(({ blocks }) => blocks)
      .flatMap((block) => (block.kind === "board" ? block.rows : [])).length;
  expect(board(first)).toBe(ON_ONE_PAGE.neutrals);
  expect(board(last)).toBeLessThanOrEqual(ON_ONE_PAGE.neutrals);
});

test("sheets are bound in one file up to a limit, and in several beyond", () => {
  const family = (count: number) => ({
    name: "black",
    items: Array.from({ length: count }, (_, i) => i),
  });
  expect(rangeParts([family(0)])).toEqual([]);
  expect(rangeParts([family(100), family(50)]).map(({ path }) => path)).toEqual(["range.pdf"]);
  const parts = rangeParts([family(100), family(51)]);
  expect(parts.map(({ path }) => path)).toEqual(["range-1.pdf", "range-2.pdf"]);
  expect(parts.map(({ families }) => families.flatMap(({ items }) => items).length)).toEqual([
    150, 1,
  ]);
});

test.each(["bone-black", "umber-ultramarine-black", "titanium-white", "slate-grey"])(
  "what the pages of %s are filled with is told whole by its text",
  (slug) => {
    const { published, context } = worked();
    const own = published.find(({ worded }) => worded.sheet.slug === slug);
    if (own === undefined) throw new Error(`Unexpected demonstration without ${slug}`);
    for (const view of [
      sheetPage(own.worded, context, place(`colours/${slug}/index.html`)),
      benchPage(own.worded, own.revision, context, place(`colours/${slug}/bench/index.html`)),
    ])
      expect(JSON.parse(JSON.stringify(view))).toStrictEqual(view);
  },
);

test("a catalogue has the second of a name before the tenth", () => {
  const names = byFamily(TWICE.sheets, "en").flatMap(([, members]) =>
    members.map(({ sheet }) => sheet.name).filter((name) => /^Bone Black \d+$/.test(name)),
  );
  expect(names).toEqual(Array.from({ length: 16 }, (_, i) => `Bone Black ${i}`));
});

test("on the wall colours of one printed value stand by name, so that hundredths of a step scatter no row", () => {
  const groups = new Map<string, string[]>();
  for (const { sheet } of wallOrder(TWICE)) {
    const value = sheet.notations.masstone?.munsell?.value;
    const tenths =
      value !== undefined && isKnown(value) ? Math.round(10 * value.value) : "not read";
    const group = `${sheet.family} ${sheet.discontinued} ${tenths}`;
    groups.set(group, [...(groups.get(group) ?? []), sheet.name]);
  }
  expect(groups.size).toBeLessThan(TWICE.sheets.length / 8);
  for (const names of groups.values())
    expect(names).toEqual(names.toSorted(new Intl.Collator("en", { numeric: true }).compare));
});
