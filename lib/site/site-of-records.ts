import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { aboutPage, methodsPage, notFoundPage, sourcesPage } from "../pages/text-pages.ts";
import { catalogueGrid, catalogueTable, ORDERS, orderPath } from "../pages/catalogue-pages.ts";
import { homePage } from "../pages/home-page.ts";
import { labelPage } from "../pages/label-page.ts";
import { pagePlace, type PageContext, type PagePlace } from "../pages/page-context.ts";
import { pigmentIndex, pigmentPage } from "../pages/pigment-pages.ts";
import { sheetPage } from "../pages/sheet-page.ts";
import type { SheetToPrint } from "../print/sheet-paper.ts";
import { siteFrame } from "../pages/site-frame.ts";
import type { AnyPageView } from "../present/views.ts";
import { wordedSheet } from "../present/worded-sheet.ts";
import { ENGLISH } from "../present/words/en/english.ts";
import { neighboursOf } from "./neighbours.ts";
import { masstoneCsv } from "./masstone-csv.ts";
import { rangeOf } from "../range/range.ts";
import type { Records } from "../records/records.ts";
import { allSheets } from "../sheet/all-sheets.ts";
import { revision } from "../sheet/revision.ts";
import { recordSchemas } from "../records/json-schemas.ts";
import { catalogueCsv } from "./catalogue-csv.ts";
import { catalogueJson, manifestJson, sheetJson, type PublishedSheet } from "./published-data.ts";
import { dataSchemas } from "./data-schemas.ts";
import { sheetWarnings } from "./sheet-warnings.ts";
import type { DataFile, PageEntry, Site } from "./site.ts";
import { sitemap } from "./sitemap.ts";

/** A whole site, worked out of checked records: pages for Eleventy, data as text, and what contradicts itself. */
export function siteOf(records: Records, date: string | undefined): { site: Site; warnings: readonly Diagnostic[] } {
  const sheets = allSheets(records);
  const range = rangeOf(sheets);
  const published = sheets.map((sheet): PublishedSheet => {
    const worded = wordedSheet(sheet, ENGLISH);
    return { worded, revision: revision(worded.plain), neighbours: neighboursOf(sheet, sheets, range) };
  });
  const context: PageContext = {
    words: ENGLISH, records, sheets: published.map(({ worded }) => worded), range, date,
    revision: revision(published.map((one) => one.revision)),
  };
  const pages = sitePages(published, context);
  return {
    site: { pages, files: dataFiles(published, records, date, pages), sheetCount: sheets.length, prints: { sheets: sheetsToPrint(pages, context), context } },
    warnings: sheetWarnings(sheets, records, ENGLISH),
  };
}

function sitePages(published: readonly PublishedSheet[], context: PageContext): PageEntry[] {
  const page = (path: string, view: (place: PagePlace) => AnyPageView): PageEntry => {
    const place = pagePlace(path);
    return { path, site: siteFrame(context, place), view: view(place) };
  };
  // The server may show it at any depth, so that its links start at the root.
  const lost: PagePlace = { path: "404.html", root: "/" };
  return [
    page("index.html", (place) => homePage(context, place)),
    page(orderPath("grid"), (place) => catalogueGrid(context, place)),
    ...ORDERS.map((order) => page(orderPath(order), (place) => catalogueTable(order, context, place))),
    ...published.map(({ worded, revision: own }) => page(`colours/${worded.sheet.slug}/index.html`, (place) => sheetPage(worded, own, context, place))),
    page("pigments/index.html", (place) => pigmentIndex(context, place)),
    ...[...context.records.pigments.values()].map((pigment) => page(`pigments/${pigment.slug}/index.html`, (place) => pigmentPage(pigment, context, place))),
    page("methods/index.html", (place) => methodsPage(context, place)),
    page("label/index.html", (place) => labelPage(context, place)),
    page("sources/index.html", (place) => sourcesPage(context, place)),
    page("about/index.html", (place) => aboutPage(context, place)),
    { path: lost.path, site: siteFrame(context, lost), view: notFoundPage(context, lost) },
  ];
}

/** A sheet goes on paper from the view that its page is made of. */
function sheetsToPrint(pages: readonly PageEntry[], context: PageContext): SheetToPrint[] {
  return context.sheets.flatMap((worded) => {
    const place = pagePlace(`colours/${worded.sheet.slug}/index.html`);
    const view = pages.find(({ path }) => path === place.path)?.view;
    return view?.kind === "sheet" ? [{ view, page: { context, worded, place, words: context.words } }] : [];
  });
}

function dataFiles(published: readonly PublishedSheet[], records: Records, date: string | undefined, pages: readonly PageEntry[]): DataFile[] {
  const { siteAddress } = records.workshop;
  return [
    { path: "catalogue.json", text: catalogueJson(published, records) },
    { path: "catalogue.csv", text: catalogueCsv(published) },
    { path: "manifest.json", text: manifestJson(published, date) },
    ...published.map((one) => ({ path: `colours/${one.worded.sheet.slug}/sheet.json`, text: sheetJson(one) })),
    ...published.flatMap(({ worded: { sheet } }) => masstoneCsv(sheet)),
    ...[...recordSchemas(), ...dataSchemas()].map(({ name, schema }) => ({ path: `schema/${name}.schema.json`, text: `${JSON.stringify(schema, null, 2)}\n` })),
    ...(siteAddress === undefined ? [] : [{ path: "sitemap.xml", text: sitemap(siteAddress, pages.map(({ path }) => path)) }]),
  ];
}
