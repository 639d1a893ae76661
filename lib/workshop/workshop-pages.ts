import type { WorkshopPageView } from "../blocks/page-kinds.ts";
import type { FigureIndex } from "../claims/figure-index.ts";
import type { HeldAnswer } from "../claims/held-claims.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { pagePlace, type PageContext, type PagePlace } from "../pages/page-context.ts";
import type { SiteView } from "../present/views.ts";
import { workshopAnswerPage, workshopAnswerPath } from "./workshop-answer.ts";
import { workshopColourPage, workshopColourPath } from "./workshop-colour.ts";
import { workshopFrame } from "./workshop-frame.ts";
import { NEXT_PATH, workshopNextPage } from "./workshop-next.ts";
import { workshopHome } from "./workshop-home.ts";

/** One page of the workshop's own, below the root of its own output. */
export interface WorkshopPage {
  readonly path: string;
  readonly site: SiteView;
  readonly view: WorkshopPageView;
}

/** What the workshop's pages are made from beside the sheets. */
export interface WorkshopMatter {
  readonly answers: readonly HeldAnswer[];
  readonly index: FigureIndex;
  /** What the sheets and answers found against the records. */
  readonly found: readonly Diagnostic[];
}

/** Every page of the workshop's own. */
export function workshopPages(
  context: PageContext,
  { answers, index, found }: WorkshopMatter,
): WorkshopPage[] {
  const { nav } = context.words.pages.workshop;
  const ways = [
    { text: context.words.pages.nextSteps.heading, href: NEXT_PATH.replace("index.html", "") },
    { text: nav.colours, href: "#colours" },
    { text: nav.answers, href: "#answers" },
  ];
  const page = (path: string, view: (place: PagePlace) => WorkshopPageView): WorkshopPage => {
    const place = pagePlace(path);
    return { path, site: workshopFrame(context, place, ways), view: view(place) };
  };
  return [
    page("index.html", (place) => workshopHome(context, place, found)),
    page(NEXT_PATH, (place) => workshopNextPage(context, place, answers)),
    ...context.sheets.map((worded) =>
      page(workshopColourPath(worded.sheet.slug), (place) =>
        workshopColourPage(worded, context, place),
      ),
    ),
    ...answers.map((held) =>
      page(workshopAnswerPath(held.answer.slug), (place) =>
        workshopAnswerPage(held, context, place, index),
      ),
    ),
  ];
}
