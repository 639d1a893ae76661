import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { answerIndex, answerPage, answerPath } from "../answers/answer-pages.ts";
import { aboutPage, methodsPage, notFoundPage, sourcesPage } from "../pages/text-pages.ts";
import {
  catalogueGrid,
  catalogueTable,
  ORDERS,
  orderPath,
  WHITES_PATH,
} from "../pages/catalogue-pages.ts";
import { comparePage, comparePairPage, pairAddress, shownColours } from "../pages/compare-pages.ts";
import { homePage } from "../pages/home-page.ts";
import { labelPage } from "../pages/label-page.ts";
import { pagePlace, type PagePlace } from "../pages/page-context.ts";
import { pigmentIndex, pigmentPage } from "../pages/pigment-pages.ts";
import { hasMixing } from "../pages/mixing-data.ts";
import {
  BENCH_PATH,
  mapPath,
  PALETTE_PATH,
  reachesOf,
  RECIPES_PATH,
} from "../pages/mixing-ways.ts";
import { palettePage } from "../pages/palette-page.ts";
import { rangeMapPage } from "../pages/range-map-page.ts";
import { recipesPage } from "../pages/recipes-page.ts";
import { tintBenchPage } from "../pages/tint-bench-page.ts";
import { benchPage, benchPath } from "../pages/bench-page.ts";
import { evidencePage, evidencePath } from "../pages/evidence-page.ts";
import { sheetPage } from "../pages/sheet-page.ts";
import { cardSizes } from "../print/card-size.ts";
import { cardsFolder, cardsPage } from "../print/cards-page.ts";
import type { SheetToPrint } from "../print/sheet-paper.ts";
import { searchDocuments } from "../pages/search-documents.ts";
import { NOT_FOUND_PATH, siteFrame } from "../pages/site-frame.ts";
import { whitesPage } from "../pages/whites-page.ts";
import { isNearNeutral } from "../collection/near-neutrals.ts";
import type { ShownColour } from "../present/comparison-types.ts";
import type { AnyPageView } from "../blocks/page-kinds.ts";
import { hostFiles } from "./host-files.ts";
import { mixingFiles } from "./mixing-files.ts";
import { masstoneCsv } from "./masstone-csv.ts";
import { chosenPairs } from "../records/chosen-pairs.ts";
import type { Records } from "../records/records.ts";
import { recordSchemas } from "../records/json-schemas.ts";
import { catalogueCsv } from "./catalogue-csv.ts";
import { figuresCsv } from "./figures-csv.ts";
import { catalogueJson, manifestJson, sheetJson, workshopManifestJson } from "./published-data.ts";
import { dataSchemas } from "./data-schemas.ts";
import type { DataFile, PageEntry, Site } from "./site.ts";
import { MANIFEST } from "./output-manifest.ts";
import { labelsPdf } from "../print/labels-pdf.ts";
import { packageSizes } from "../print/package-size.ts";
import { rangeLabels } from "../print/range-labels.ts";
import { reprintList, type EarlierCard } from "../print/reprint-list.ts";
import { LABELS_PDF } from "../workshop/labels-page.ts";
import { workshopPages } from "../workshop/workshop-pages.ts";
import { hazardNotes } from "./hazard-notes.ts";
import { diagnosticsOf, workedSites, type WorkedSite } from "./site-context.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import { sitemap } from "./sitemap.ts";

/**
 * A whole site worked out of checked records, and what contradicts itself; the workshop's own pages when they are asked for.
 * @param cache of first-principles figures; nothing is kept without it.
 */
export function siteOf(
  records: Records,
  date: string | undefined,
  cache?: WorkCache,
): {
  readonly site: Site;
  readonly workshop: (asked: WorkshopAsked) => Site;
  readonly warnings: readonly Diagnostic[];
} {
  const sites = workedSites(records, date, cache);
  const [worked, ...others] = sites;
  return {
    site: {
      ...siteOfWorked(worked, worked.context.records, date),
      photographs: records.photographs.flatMap(({ pictures, inReadColour }) => [
        ...(pictures?.screen ?? []),
        ...(inReadColour?.screen ?? []),
      ]),
      translated: others.map((other) => ({
        folder: other.context.folder,
        site: siteOfWorked(other, other.context.records, date),
      })),
    },
    workshop: (asked) => workshopOfWorked(worked, date, asked),
    warnings: diagnosticsOf(sites),
  };
}

/** Pages for Eleventy, data as text, and what may be printed. */
export function siteOfWorked(worked: WorkedSite, records: Records, date: string | undefined): Site {
  const shown = shownColours(worked.context);
  const pages = sitePages(worked, shown);
  return {
    base: records.siteBase,
    language: worked.context.words.language,
    pages,
    files: [...dataFiles(worked, records, date, pages), ...shown.map(comparisonData)],
    sheetCount: worked.published.length,
    sheets: worked.published.map(({ worded }) => worded.sheet),
    prints: {
      sheets: sheetsToPrint(worked, pages),
      cards: worked.cards,
      laidOut: worked.laidOut,
      context: worked.context,
    },
  };
}

/** How the workshop's pages are wanted. */
export interface WorkshopAsked {
  /** Whether labels are drawn as a PDF, too. */
  readonly isPrinted: boolean;
  /** Cards as they were printed last, where that is known. */
  readonly printedCards: readonly EarlierCard[] | undefined;
}

function workshopOfWorked(
  worked: WorkedSite,
  date: string | undefined,
  { isPrinted, printedCards }: WorkshopAsked,
): Site {
  const { context, answers, cards, diagnostics } = worked;
  const { records, sheets, words } = context;
  const labels = rangeLabels(sheets, packageSizes(records.workshop), context);
  const pdf =
    isPrinted && labels.runs.length > 0
      ? labelsPdf(labels.runs, { workshop: records.workshop.name, date, words })
      : undefined;
  return {
    pages: workshopPages(context, {
      answers: answers.held,
      index: answers.index,
      found: diagnostics,
      due: {
        labelNotes: hazardNotes(
          sheets.map(({ sheet }) => sheet),
          records,
        ),
        reprints: printedCards && reprintList(cards.cards, printedCards, words),
      },
      labels: { ...labels, ...(pdf === undefined ? {} : { pdf }) },
    }),
    language: worked.context.words.language,
    files: [{ path: MANIFEST, text: workshopManifestJson(date) }],
    ...(pdf === undefined ? {} : { papers: [{ path: LABELS_PDF, bytes: pdf.bytes }] }),
    sheetCount: worked.published.length,
  };
}

function sitePages(
  { published, context, answers, cards }: WorkedSite,
  shown: readonly ShownColour[],
): PageEntry[] {
  const page = (path: string, view: (place: PagePlace) => AnyPageView): PageEntry => {
    const place = pagePlace(path);
    return { path, site: siteFrame(context, place), view: view(place) };
  };
  // The server may show it at any depth, so that its links start at the site's own folder.
  const lost: PagePlace = { path: NOT_FOUND_PATH, root: context.records.siteBase };
  return [
    page("index.html", (place) => homePage(context, place)),
    page(orderPath("grid"), (place) => catalogueGrid(context, place)),
    ...ORDERS.map((order) =>
      page(orderPath(order), (place) => catalogueTable(order, context, place)),
    ),
    ...(context.sheets.some(({ sheet }) => isNearNeutral(sheet))
      ? [page(WHITES_PATH, (place) => whitesPage(context, place))]
      : []),
    ...published.map(({ worded }) =>
      page(`colours/${worded.sheet.slug}/index.html`, (place) => sheetPage(worded, context, place)),
    ),
    ...published.map(({ worded, revision: own }) =>
      page(benchPath(worded.sheet.slug), (place) => benchPage(worded, own, context, place)),
    ),
    ...published.map(({ worded, revision: own }) =>
      page(evidencePath(worded.sheet.slug), (place) => evidencePage(worded, own, context, place)),
    ),
    ...(hasMixing(context)
      ? [
          page(BENCH_PATH, (place) => tintBenchPage(context, place)),
          page(RECIPES_PATH, (place) => recipesPage(context, place)),
          ...mapPages(context, page),
        ]
      : []),
    page("compare/index.html", (place) => comparePage(context, place)),
    ...chosenPairs(context.records.workshop).map((pair) =>
      page(`${pairAddress(pair)}index.html`, (place) =>
        comparePairPage(pair, shown, context, place),
      ),
    ),
    ...(answers.held.length === 0
      ? []
      : [page("answers/index.html", (place) => answerIndex(context, place))]),
    ...answers.held.map((held) =>
      page(answerPath(held.answer.slug), (place) =>
        answerPage(held, context, place, answers.index),
      ),
    ),
    ...cardSizes(context.records.workshop).map((size) =>
      page(`${cardsFolder(size, context)}index.html`, (place) =>
        cardsPage(cards, size, context, place),
      ),
    ),
    page("pigments/index.html", (place) => pigmentIndex(context, place)),
    ...[...context.records.pigments.values()].map((pigment) =>
      page(`pigments/${pigment.slug}/index.html`, (place) => pigmentPage(pigment, context, place)),
    ),
    page("methods/index.html", (place) => methodsPage(context, place)),
    page("label/index.html", (place) => labelPage(context, place)),
    page("sources/index.html", (place) => sourcesPage(context, place)),
    page("about/index.html", (place) => aboutPage(context, place)),
    { path: lost.path, site: siteFrame(context, lost), view: notFoundPage(context, lost) },
  ];
}

/** Where the range reaches, for a range of colours that mix. */
function mapPages(
  context: WorkedSite["context"],
  page: (path: string, view: (place: PagePlace) => AnyPageView) => PageEntry,
): PageEntry[] {
  const reaches = reachesOf(context);
  return reaches.length === 0
    ? []
    : [
        ...reaches.map((reach) =>
          page(mapPath(reach, context), (place) => rangeMapPage(reach, context, place)),
        ),
        page(PALETTE_PATH, (place) => palettePage(context, place)),
      ];
}

/** A colour's pages as paper takes them. */
function sheetsToPrint(
  { published, context }: WorkedSite,
  pages: readonly PageEntry[],
): SheetToPrint[] {
  const views = new Map(pages.map(({ path, view }) => [path, view]));
  return published.flatMap(
    ({
      worded: {
        sheet: { slug },
      },
    }) => {
      const sheet = views.get(`colours/${slug}/index.html`);
      const bench = views.get(benchPath(slug));
      return sheet?.kind === "sheet" && bench?.kind === "bench"
        ? [{ slug, sheet, bench, context }]
        : [];
    },
  );
}

function dataFiles(
  { published, cards, context }: WorkedSite,
  records: Records,
  date: string | undefined,
  pages: readonly PageEntry[],
): DataFile[] {
  const { siteAddress } = records.workshop;
  return [
    { path: "catalogue.json", text: catalogueJson(published, records) },
    { path: "catalogue.csv", text: catalogueCsv(published, records, context) },
    { path: "figures.csv", text: figuresCsv(published) },
    {
      path: "search-index.js",
      text: `globalThis.searchDocuments=${JSON.stringify(searchDocuments(context))};\n`,
    },
    { path: "manifest.json", text: manifestJson(published, cards, date) },
    ...published.map((one) => ({
      path: `colours/${one.worded.sheet.slug}/sheet.json`,
      text: sheetJson(one),
    })),
    ...published.flatMap(({ worded: { sheet } }) => masstoneCsv(sheet)),
    ...mixingFiles(context),
    ...[...recordSchemas(), ...dataSchemas()].map(({ name, schema }) => ({
      path: `schema/${name}.schema.json`,
      text: `${JSON.stringify(schema, null, 2)}\n`,
    })),
    ...hostFiles(records),
    ...(siteAddress === undefined
      ? []
      : [
          {
            path: "sitemap.xml",
            text: sitemap(
              siteAddress,
              pages.map(({ path }) => path),
            ),
          },
        ]),
  ];
}

/** What the page Compare fetches of a colour. */
function comparisonData(colour: ShownColour): DataFile {
  return { path: `compare/${colour.slug}.json`, text: `${JSON.stringify(colour)}\n` };
}
