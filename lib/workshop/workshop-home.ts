import type { Block } from "../blocks/block.ts";
import type { WorkshopPageView } from "../blocks/page-kinds.ts";
import { section, statement, tableOf } from "../blocks/section-blocks.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { addressTo, type PageContext, type PagePlace } from "../pages/page-context.ts";
import { ownColour } from "../pages/screen-swatch.ts";
import { madeStep } from "../kept/kept-steps.ts";
import { cellSwatch } from "../plots/small-swatch.ts";
import { valueText } from "../present/figure-text.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { CellView, TableView } from "../present/views.ts";
import { numberColumns, tableView } from "../present/table-view.ts";
import { isKnown } from "../quantities/figure.ts";
import { workshopAnswerPath } from "./workshop-answer.ts";
import { upperFirst } from "../words/letter-case.ts";
import { workshopColourPath } from "./workshop-colour.ts";
import { dueTable, recordLink } from "./due-table.ts";
import { pressingLines, recordName, type DueMatter } from "./next-view.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { workshopPage } from "./workshop-frame.ts";
import { NEXT_PATH } from "./workshop-next.ts";

/** Of the batches that a sheet works out, the one whose cost the list shows. */
const LISTED_BATCH = "500-g";

/** The workshop's first page: what presses, what contradicts itself, its colours with what they cost and lack, its replies. */
export function workshopHome(
  context: PageContext,
  place: PagePlace,
  { found, due }: { readonly found: readonly Diagnostic[]; readonly due: DueMatter },
): WorkshopPageView {
  const { words } = context;
  const { workshop: text, nextSteps } = words.pages;
  const sections = [
    ...section("due", nextSteps.due, [
      dueTable(pressingLines(context, due), words, place),
      {
        kind: "links",
        links: [{ text: nextSteps.heading, href: addressTo(NEXT_PATH, place) }],
      },
    ]),
    ...section("faults", text.home.faults, faultBlocks(context, place, found)),
    ...section("colours", text.home.colours, [tableOf(colourTable(context, place))]),
    ...section("answers", text.home.answers, [replies(context, place)]),
  ];
  return workshopPage(context, {
    heading: text.heading,
    description: text.lead,
    lead: [text.lead],
    sections,
  });
}

function colourTable(context: PageContext, place: PagePlace): TableView {
  const { words, records, sheets, steps } = context;
  const { home: text } = words.pages.workshop;
  return tableView({
    caption: text.coloursCaption,
    compact: true,
    columns: [
      text.columns.colour,
      ...numberColumns(
        text.columns.cost(500, records.workshop.currency ?? ""),
        text.columns.wanting,
      ),
      text.columns.suppliers,
    ],
    rows: sheets.map((worded) => {
      const { slug } = worded.sheet;
      const step = { modules: MODULES, name: "lines of the workshop", of: slug };
      const { name, ...cells } = madeStep(steps, step, () => lineOf(worded, context));
      const href = addressTo(workshopColourPath(slug), place);
      return [{ ...name, href }, cells.cost, cells.wanting, cells.suppliers];
    }),
  });
}

const MODULES = ["lib/workshop/workshop-home.ts", "lib/words/languages.ts"];

/** What the list shows of a colour, wherever the list stands. */
function lineOf(
  worded: SheetTexts,
  context: PageContext,
): Readonly<Record<"name" | "cost" | "wanting" | "suppliers", CellView & { text: string }>> {
  const { sheet, inShort } = worded;
  return {
    name: { text: sheet.name, swatch: cellSwatch(ownColour(sheet.notations.masstone)) },
    cost: costCell(worded, context),
    wanting: { text: String(inShort.notStatedCount) },
    suppliers: { text: suppliers(worded, context) },
  };
}

/** What a batch costs, and what of it has no price and is not in that. */
function costCell(worded: SheetTexts, { words, records }: PageContext): CellView {
  const batch = worded.sheet.batch?.sizes.find(({ slug }) => slug === LISTED_BATCH);
  if (batch?.cost === undefined || !isKnown(batch.cost)) return { text: NO_VALUE };
  const unpriced = batch.unpriced.map(
    (slug) => (records.pigments.get(slug) ?? records.vehicles.get(slug))?.record.name ?? slug,
  );
  return {
    text: valueText(worded.leaf(`batch.sizes.${LISTED_BATCH}.cost`).row, batch.cost, words),
    ...(unpriced.length > 0 && { note: words.pages.workshop.home.costWithout(unpriced) }),
  };
}

function suppliers({ sheet: { pigments } }: SheetTexts, { records }: PageContext): string {
  const names = pigments.flatMap(({ slug }) => records.pigments.get(slug)?.record.supplier ?? []);
  return names.length === 0 ? NO_VALUE : [...new Set(names)].join(", ");
}

function replies({ words, answers }: PageContext, place: PagePlace): Block {
  return answers.length === 0
    ? statement(words.pages.workshop.home.answersNone)
    : {
        kind: "links",
        links: answers.map(({ slug, question }) => ({
          text: question,
          href: addressTo(workshopAnswerPath(slug), place),
        })),
      };
}

function faultBlocks(
  { words }: PageContext,
  place: PagePlace,
  found: readonly Diagnostic[],
): Block[] {
  const { home: text } = words.pages.workshop;
  if (found.length === 0) return [statement(text.noFaults)];
  return [
    statement(text.faultsLead),
    tableOf({
      caption: text.faultsCaption,
      columns: [text.faultColumns.what, text.faultColumns.where],
      rows: found.map(({ message, hint, place: { file, line } }) => {
        const record = recordName(file);
        return [
          { text: `${message}.`, ...(hint !== undefined && { note: upperFirst(hint) }) },
          {
            text: text.recordLine(record, line),
            ...recordLink(record.replace(/\.\w+$/, ""), place),
          },
        ];
      }),
    }),
  ];
}
