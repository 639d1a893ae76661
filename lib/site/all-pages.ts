import { ANSWER_INDEX } from "../answers/answer-index.ts";
import { ANSWERS } from "../answers/answer-pages.ts";
import { BENCHES } from "../pages/bench-page.ts";
import { CATALOGUE } from "../pages/catalogue-pages.ts";
import { COMPARE, PAIRS } from "../pages/compare-pages.ts";
import { EVIDENCE } from "../pages/evidence-page.ts";
import { FORMER } from "../pages/former-page.ts";
import { HOME } from "../pages/home-page.ts";
import { pagePlace } from "../pages/page-context.ts";
import { PALETTE } from "../pages/palette-page.ts";
import { PIGMENT_INDEX, PIGMENTS } from "../pages/pigment-pages.ts";
import { RANGE_MAPS } from "../pages/range-map-page.ts";
import { RECIPES } from "../pages/recipes-page.ts";
import { SHEETS } from "../pages/sheet-page.ts";
import { NOT_FOUND_PATH, siteFrame } from "../pages/site-frame.ts";
import { NOT_FOUND_PAGE, TEXT_PAGES } from "../pages/text-pages.ts";
import { TINT_BENCH } from "../pages/tint-bench-page.ts";
import { IN_THE_WHITES } from "../pages/whites-page.ts";
import { CARDS } from "../print/cards-page.ts";
import type { WorkshopView } from "../workshop/workshop-pages.ts";
import { pageEntry, type PageEntry, type PagesKept } from "./page-entry.ts";
import type { PagePaths } from "./site-addresses.ts";
import type { WorkedSite } from "./site-context.ts";

/** Every kind of page of the site, in the order that its pages are made in; what pages are filled with follows from these lines. */
export const PAGE_KINDS = [
  HOME,
  CATALOGUE,
  IN_THE_WHITES,
  SHEETS,
  BENCHES,
  EVIDENCE,
  TINT_BENCH,
  RECIPES,
  RANGE_MAPS,
  PALETTE,
  COMPARE,
  PAIRS,
  ANSWER_INDEX,
  ANSWERS,
  CARDS,
  PIGMENT_INDEX,
  PIGMENTS,
  ...TEXT_PAGES,
  FORMER,
  NOT_FOUND_PAGE,
];

type Planned = ReturnType<(typeof PAGE_KINDS)[number]["pages"]>[number];

/** What a page is filled with, of the site or of the workshop: its template is templates/pages/<kind>.njk. */
export type AnyPageView = ReturnType<Planned["view"]> | WorkshopView;

/** Where all pages of a site lie, in the folders of its languages. */
export function allPagePaths(sites: readonly WorkedSite[]): PagePaths {
  return sites.flatMap((worked) =>
    plannedPages(worked)
      .map(({ path }) => path)
      .filter((path) => path !== NOT_FOUND_PATH || worked.context.folder === "")
      .map((path) => `${worked.context.folder}${path}`),
  );
}

/** The pages of a site in one language, to be filled when they are looked into. */
export function sitePages(worked: WorkedSite): PageEntry[] {
  const { context, steps } = worked;
  const kept: PagesKept = { steps, of: "the site" };
  return plannedPages(worked).map(({ path, root, view, isUnlisted }) => {
    const place = root === undefined ? pagePlace(path) : { path, root };
    return pageEntry(
      path,
      () => ({ site: siteFrame(context, place), view: view(place) }),
      kept,
      isUnlisted,
    );
  });
}

function plannedPages(worked: WorkedSite): Planned[] {
  return PAGE_KINDS.flatMap(({ pages }): readonly Planned[] => pages(worked));
}
