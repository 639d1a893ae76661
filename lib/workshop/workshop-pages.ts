import type { FigureIndex } from "../claims/figure-index.ts";
import type { HeldAnswer } from "../claims/held-claims.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { pagePlace, shortAddress, type PageContext } from "../pages/page-context.ts";
import type { PlannedPage } from "../pages/page-kind.ts";
import { wordedSheet } from "../pages/worded-sheet.ts";
import { madeStep } from "../kept/kept-steps.ts";
import { certain } from "../quantities/at.ts";
import type { SiteView } from "../present/views.ts";
import { bookOf, lotBooks, lotsOf, type JudgedLot, type LotBook } from "../sheet/lots/lot-book.ts";
import { batchSheetPage, type BatchSheetView } from "./batch-sheet-page.ts";
import { labelsPage, type LabelMatter } from "./labels-page.ts";
import { correctionSheetPage } from "./correction-sheet-page.ts";
import { bestCorrection, lotPage } from "./lot-page.ts";
import { batchSheetPath, correctionAddress, lotBatchAddress, lotPath } from "./lot-words.ts";
import { lotsPage } from "./lots-page.ts";
import { trialsPage } from "./trials-page.ts";
import { workshopAnswerPage, workshopAnswerPath } from "./workshop-answer.ts";
import { workshopColourPage, workshopColourPath } from "./workshop-colour.ts";
import { workshopFrame } from "./workshop-frame.ts";
import type { DueMatter } from "./next-view.ts";
import { NEXT_PATH, workshopNextPage } from "./workshop-next.ts";
import { workshopHome } from "./workshop-home.ts";

/** What pages of the workshop are filled with. */
export type WorkshopView = ReturnType<ReturnType<typeof plannedPages>[number]["view"]>;

/** One page of the workshop's own, below the root of its own output. */
interface WorkshopPage {
  readonly path: string;
  /** Asked for when the page is wanted: all that it reads is read then. */
  readonly filled: () => {
    readonly site: SiteView;
    readonly view: WorkshopView;
  };
}

/** What the workshop's pages are made from beside the sheets. */
interface WorkshopMatter {
  readonly answers: readonly HeldAnswer[];
  readonly heldOf: (slug: string) => HeldAnswer;
  readonly index: FigureIndex;
  /** What the sheets and answers found against the records. */
  readonly found: readonly Diagnostic[];
  readonly due: DueMatter;
  readonly labels: LabelMatter;
}

/** To take to the slab: of each planned lot its batch, of one that is off what would bring it back. */
function sheetsOfLots(
  { colour, planned, lots }: LotBook,
  context: PageContext,
): PlannedPage<BatchSheetView>[] {
  const worded = wordedSheet(colour.slug, context);
  return [
    ...(worded === undefined
      ? []
      : planned.map((lot): PlannedPage<BatchSheetView> => ({
          path: `${lotBatchAddress(lot.slug)}index.html`,
          view: (place) => batchSheetPage(worded, context, place, lot),
        }))),
    ...lots.flatMap((judged): PlannedPage<BatchSheetView>[] =>
      !madeStep(
        context.steps,
        { modules: ["lib/workshop/lot-page.ts"], name: "corrections", of: judged.lot.slug },
        () => isCorrected(judged, colour, context),
      )
        ? []
        : [
            {
              path: `${correctionAddress(judged.lot.slug)}index.html`,
              view: (place) =>
                correctionSheetPage(
                  judged.lot,
                  certain(bestCorrection(certain(judgedAgain(judged, colour, context)))),
                  context,
                  place,
                ),
            },
          ],
    ),
  ];
}

function isCorrected(judged: JudgedLot, colour: LotBook["colour"], context: PageContext): boolean {
  const again = judgedAgain(judged, colour, context);
  return again !== undefined && bestCorrection(again) !== undefined;
}

/** The lot as its colour's book judges it, asked for again by what a page is filled with. */
function judgedAgain(
  { lot: { slug } }: JudgedLot,
  colour: LotBook["colour"],
  { records }: PageContext,
): JudgedLot | undefined {
  return bookOf(colour.slug, records)?.lots.find(({ lot }) => lot.slug === slug);
}

/** Every page of the workshop's own. */
export function workshopPages(context: PageContext, matter: WorkshopMatter): WorkshopPage[] {
  const { nav } = context.words.pages.workshop;
  const ways = [
    { text: context.words.pages.nextSteps.heading, href: shortAddress(NEXT_PATH) },
    { text: nav.colours, href: "#colours" },
    { text: nav.lots, href: "lots/" },
    { text: nav.labels, href: "labels/" },
    { text: nav.trials, href: "trials/" },
    { text: nav.answers, href: "#answers" },
  ];
  return plannedPages(context, matter).map(({ path, view }) => {
    const place = pagePlace(path);
    return {
      path,
      filled: () => ({ site: workshopFrame(context, place, ways), view: view(place) }),
    };
  });
}

// Its type is what it returns: to write it down would be to list all kinds once more.
function plannedPages(context: PageContext, matter: WorkshopMatter) {
  const page = <V>(path: string, view: PlannedPage<V>["view"]): PlannedPage<V> => ({ path, view });
  return [
    page("index.html", (place) => workshopHome(context, place, matter)),
    page(NEXT_PATH, (place) => workshopNextPage(context, place, matter.answers, matter.due)),
    ...context.sheets.map((worded) =>
      page(workshopColourPath(worded.sheet.slug), (place) =>
        workshopColourPage(worded, context, place),
      ),
    ),
    page("lots/index.html", (place) => lotsPage(context, place)),
    ...lotBooks(context.records).flatMap((book) =>
      lotsOf(book.colour.slug, context.records).map((lot) =>
        page(lotPath(lot.slug), (place) =>
          lotPage(lot, bookOf(book.colour.slug, context.records) ?? book, context, place),
        ),
      ),
    ),
    ...lotBooks(context.records).flatMap((book) => sheetsOfLots(book, context)),
    ...context.sheets.map((worded) =>
      page(batchSheetPath(worded.sheet.slug), (place) => batchSheetPage(worded, context, place)),
    ),
    page("labels/index.html", () => labelsPage(context, matter.labels)),
    page("trials/index.html", () => trialsPage(context)),
    ...[...context.records.answers.keys()].map((slug) =>
      page(workshopAnswerPath(slug), (place) => {
        const { heldOf, index } = matter;
        return workshopAnswerPage(heldOf(slug), context, place, index);
      }),
    ),
  ];
}
