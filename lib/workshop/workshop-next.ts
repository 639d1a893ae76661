import type { WorkshopPageView } from "../blocks/page-kinds.ts";
import { section, statement, tableOf } from "../blocks/section-blocks.ts";
import type { HeldAnswer } from "../claims/held-claims.ts";
import type { PageContext, PagePlace } from "../pages/page-context.ts";
import { nextSteps } from "../planning/next-steps.ts";
import { dueTable, lineTable } from "./due-table.ts";
import { nextLines, openLines, pressingLines, type DueMatter } from "./next-view.ts";
import { workshopPage } from "./workshop-frame.ts";
import { given } from "../quantities/given.ts";

export const NEXT_PATH = "next/index.html";

/** Steps that a build tries, sheets that it works out for them, and lines that its page shows: `next` tries them all. */
const TRIED = { steps: 40, sheets: 250 };
/** So many colours are few enough that a build tries all steps as `next` does, and both have one list. Our own choice. */
const FEW_COLOURS = 12;
const SHOWN = 20;

/** What to do next: what to find out that the sheets gain most by, and what falls due. */
export function workshopNextPage(
  context: PageContext,
  place: PagePlace,
  answers: readonly HeldAnswer[],
  matter: DueMatter,
): WorkshopPageView {
  const { words, records, sheets } = context;
  const text = words.pages.nextSteps;
  const steps = nextSteps(
    records,
    sheets.map(({ sheet }) => sheet),
    answers,
    sheets.length <= FEW_COLOURS ? { ...TRIED, steps: Infinity } : TRIED,
    context,
  );
  const lines = nextLines(steps, records, words).slice(0, SHOWN);
  const open = openLines(context, matter);
  const sections = [
    ...section(
      "due",
      text.due,
      given([
        dueTable(pressingLines(context, matter), words, place),
        matter.reprints === undefined && statement(text.reprintsUnknown, "note"),
      ]),
    ),
    ...section("steps", text.steps, [
      lines.length === 0
        ? statement(text.none)
        : tableOf({
            caption: text.stepsCaption,
            columns: [
              text.columns.what,
              text.columns.gain,
              { head: text.columns.hours, numeric: true },
              text.columns.record,
            ],
            rows: lines.map(({ what, gain, hours, file, record }) => [
              what,
              gain,
              hours,
              { text: file, note: record },
            ]),
          }),
    ]),
    ...section(
      "open",
      text.open,
      open.length === 0 ? [] : [lineTable(text.openCaption, open, words, place)],
    ),
  ];
  return workshopPage(context, {
    heading: text.heading,
    description: text.lead,
    lead: [text.lead],
    back: { text: words.pages.workshop.colour.back, href: place.root },
    sections,
  });
}
