import { answerIndex } from "../answers/answer-index.ts";
import { answerPage, answerPath } from "../answers/answer-pages.ts";
import { benchPage, benchPath } from "../pages/bench-page.ts";
import { catalogueGrid, catalogueTable, ORDERS } from "../pages/catalogue-pages.ts";
import { comparePage, comparePairPage, pairAddress } from "../pages/compare-pages.ts";
import { evidencePage, evidencePath } from "../pages/evidence-page.ts";
import { formerPage, formerPages } from "../pages/former-page.ts";
import { homePage } from "../pages/home-page.ts";
import { BENCH_PATH, PALETTE_PATH, reachesOf, RECIPES_PATH } from "../pages/mixing-ways.ts";
import { pagePlace, type PagePlace } from "../pages/page-context.ts";
import { palettePage } from "../pages/palette-page.ts";
import { pigmentIndex, pigmentPage } from "../pages/pigment-pages.ts";
import { rangeMapPage } from "../pages/range-map-page.ts";
import { recipesPage } from "../pages/recipes-page.ts";
import { sheetPage } from "../pages/sheet-page.ts";
import { NOT_FOUND_PATH, siteFrame } from "../pages/site-frame.ts";
import { notFoundPage, TEXT_PAGES } from "../pages/text-pages.ts";
import { tintBenchPage } from "../pages/tint-bench-page.ts";
import { whitesPage } from "../pages/whites-page.ts";
import type { ShownColour } from "../present/comparison-types.ts";
import { cardSizes } from "../print/card-size.ts";
import { cardsPage } from "../print/cards-page.ts";
import { at } from "../quantities/at.ts";
import { chosenPairs } from "../records/chosen-pairs.ts";
import type { WorkshopView } from "../workshop/workshop-pages.ts";
import { pageEntry, type PageEntry, type PagesKept } from "./page-entry.ts";
import { plannedPaths } from "./planned-paths.ts";
import type { PagePaths } from "./site-addresses.ts";
import type { WorkedSite } from "./site-context.ts";

/** Colours by their slugs, as pages compare them. */
export type Shown = ReadonlyMap<string, () => ShownColour>;

/** A page that is to be: where it lies, and how it is filled. */
interface PlannedPage<V> {
  readonly isUnlisted?: boolean;
  readonly place: PagePlace;
  readonly view: (place: PagePlace) => V;
}

/** What a page is filled with, of the site or of the workshop: its template is templates/pages/<kind>.njk. */
export type AnyPageView = ReturnType<PlannedPages[number]["view"]> | WorkshopView;
type PlannedPages = ReturnType<typeof plannedPages>;

/** Where all pages of a site lie, in the folders of its languages. */
export function allPagePaths(sites: readonly WorkedSite[]): PagePaths {
  return sites.flatMap((worked) =>
    pagePaths(worked)
      .filter((path) => path !== NOT_FOUND_PATH || worked.context.folder === "")
      .map((path) => `${worked.context.folder}${path}`),
  );
}

/** Where the pages of a site lie in the folder of their language, those that only say what took their place among them. */
function pagePaths(worked: WorkedSite): string[] {
  return plannedPages(worked, new Map()).map(({ place: { path } }) => path);
}

/** The pages of a site in one language, to be filled when they are looked into. */
export function sitePages(worked: WorkedSite, shown: Shown): PageEntry[] {
  const { context, steps } = worked;
  const kept: PagesKept = { steps, of: "the site" };
  return plannedPages(worked, shown).map(({ place, view, isUnlisted }) =>
    pageEntry(
      place.path,
      () => ({ site: siteFrame(context, place), view: view(place) }),
      kept,
      isUnlisted,
    ),
  );
}

/**
 * Every page of the site; what pages are filled with follows from these lines. What goes into one is asked for
 * when it is filled, so that it is known what it reads: a sheet's revision too, which is asked of the sheet there.
 */
// Its type is what it returns: to write it down would be to list all kinds once more.
function plannedPages(worked: WorkedSite, shown: Shown) {
  const { published, context } = worked;
  const { records } = context;
  const planned = plannedPaths(worked);
  const page = <V>(path: string, view: PlannedPage<V>["view"]): PlannedPage<V> => ({
    place: pagePlace(path),
    view,
  });
  return [
    page("index.html", (place) => homePage(context, place)),
    ...planned.grid.map((path, nth) => page(path, (place) => catalogueGrid(nth, context, place))),
    ...ORDERS.flatMap((order, i) =>
      at(planned.orders, i).map((path, nth) =>
        page(path, (place) => catalogueTable(order, nth, context, place)),
      ),
    ),
    ...planned.whites.map((path, nth) => page(path, (place) => whitesPage(nth, context, place))),
    ...published.map(({ worded }) =>
      page(`colours/${worded.sheet.slug}/index.html`, (place) => sheetPage(worded, context, place)),
    ),
    ...published.map((one) =>
      page(benchPath(one.worded.sheet.slug), (place) =>
        benchPage(one.worded, one.revision, context, place),
      ),
    ),
    ...published.map((one) =>
      page(evidencePath(one.worded.sheet.slug), (place) =>
        evidencePage(one.worded, one.revision, context, place),
      ),
    ),
    ...(planned.mixes
      ? [
          page(BENCH_PATH, (place) => tintBenchPage(context, place)),
          page(RECIPES_PATH, (place) => recipesPage(context, place)),
        ]
      : []),
    ...planned.maps.map((path, nth) =>
      page(path, (place) => rangeMapPage(at(reachesOf(context), nth), context, place)),
    ),
    ...(planned.maps.length > 0
      ? [page(PALETTE_PATH, (place) => palettePage(context, place))]
      : []),
    page("compare/index.html", (place) => comparePage(context, place)),
    ...chosenPairs(records.workshop).map((pair) =>
      page(`${pairAddress(pair)}index.html`, (place) =>
        comparePairPage(
          pair,
          pair.colours.flatMap((slug) => shown.get(slug)?.() ?? []),
          context,
          place,
        ),
      ),
    ),
    ...(records.answers.size > 0
      ? [page("answers/index.html", (place) => answerIndex(context, place))]
      : []),
    ...[...records.answers.keys()].map((slug) =>
      page(answerPath(slug), (place) => {
        const { heldOf, index } = worked.answers;
        return answerPage(heldOf(slug), context, place, index);
      }),
    ),
    ...cardSizes(records.workshop).flatMap((size, i) =>
      at(planned.cards, i).map((path, nth) =>
        page(path, (place) => {
          const laid = at(worked.laidOut().sizes, i);
          return cardsPage(worked.cards, size, laid.card, nth, context, place);
        }),
      ),
    ),
    page("pigments/index.html", (place) => pigmentIndex(context, place)),
    ...[...records.pigments.values()].map((pigment) =>
      page(`pigments/${pigment.slug}/index.html`, (place) => pigmentPage(pigment, context, place)),
    ),
    ...Object.entries(TEXT_PAGES).map(([folder, { filled }]) =>
      page(`${folder}/index.html`, (place) => filled(context, place)),
    ),
    ...formerPages(records.workshop).map(({ path, former }) => ({
      ...page(path, (place) => formerPage(former, context, place)),
      isUnlisted: true,
    })),
    {
      ...page(NOT_FOUND_PATH, (place) => notFoundPage(context, place)),
      // The server may show it at any depth, so that its links start at the site's own folder.
      place: { path: NOT_FOUND_PATH, root: records.siteBase },
    },
  ];
}
