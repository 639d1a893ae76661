import { expect, test } from "vitest";
import { catalogueGrid, catalogueTable, ORDERS } from "../../lib/pages/catalogue-pages.ts";
import { comparePage } from "../../lib/pages/compare-pages.ts";
import { homePage } from "../../lib/pages/home-page.ts";
import { pagePlace, type PageContext } from "../../lib/pages/page-context.ts";
import type { SheetTexts } from "../../lib/present/sheet-texts.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";
import { worked } from "../support/demonstration.ts";

/** What is known of a sheet that is not loaded (SheetHead, and which colour it is of). */
const KNOWN_SOONER: ReadonlySet<string | symbol> = new Set([
  "slug",
  "name",
  "family",
  "discontinued",
]);

/** A sheet that is not there: all but its name and family is asked for in vain. */
function unloaded({ sheet }: SheetTexts): SheetTexts {
  const inVain = (key: string | symbol): never => {
    throw new RangeError(`${String(key)} of ${sheet.slug} was asked for`);
  };
  return {
    sheet: new Proxy(sheet, {
      get: (own, key): unknown => (KNOWN_SOONER.has(key) ? own[key as keyof Sheet] : inVain(key)),
    }),
    get plain() {
      return inVain("plain");
    },
    get inShort() {
      return inVain("inShort");
    },
    has: (path): path is never => inVain(path),
    leaf: inVain,
  };
}

const { context } = worked();
const LIGHT: PageContext = { ...context, sheets: context.sheets.map(unloaded) };

/** Pages of the whole range, by what they show of it. */
const PAGES: readonly (readonly [string, (context: PageContext) => unknown])[] = [
  ["the first page", (of) => homePage(of, pagePlace("index.html"))],
  ["the choice of colours to compare", (of) => comparePage(of, pagePlace("compare/index.html"))],
  ["the swatches", (of) => catalogueGrid(0, of, pagePlace("colours/index.html"))],
  ...ORDERS.map((order): readonly [string, (context: PageContext) => unknown] => [
    `the table by ${order}`,
    (of) => catalogueTable(order, 0, of, pagePlace(`colours/by-${order}/index.html`)),
  ]),
];

test.each(PAGES)("%s is filled without loading a sheet", (_, filled) => {
  expect(filled(LIGHT)).toEqual(filled(context));
});
