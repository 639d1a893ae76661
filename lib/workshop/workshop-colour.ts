import { sheetReply } from "../answers/reply-view.ts";
import type { Block } from "../blocks/block.ts";
import type { WorkshopPageView } from "../blocks/page-kinds.ts";
import {
  contentsOf,
  linksOf,
  section,
  statement,
  tables,
  tableOf,
} from "../blocks/section-blocks.ts";
import { batchView, noBatch } from "../pages/batch-view.ts";
import { labelTextView } from "../pages/label-text.ts";
import { addressTo, type PageContext, type PagePlace } from "../pages/page-context.ts";
import { pageOfSheet, type SheetPage } from "../pages/page-of-sheet.ts";
import { figureName } from "../present/figure-name.ts";
import { statementText } from "../present/statement-text.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { TableView } from "../present/views.ts";
import { tableView } from "../present/table-view.ts";
import { isKnown } from "../quantities/figure.ts";
import { figureEntries } from "../sheet/figure-entries.ts";
import { bookOf } from "../sheet/lots/lot-book.ts";
import { lotChartBlocks } from "./lot-chart-blocks.ts";
import { batchSheetPath } from "./lot-words.ts";
import { workshopAnswerPath } from "./workshop-answer.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { workshopPage } from "./workshop-frame.ts";
import { given } from "../quantities/given.ts";

export function workshopColourPath(slug: string): string {
  return `colours/${slug}/index.html`;
}

/** A colour as the workshop has it: what to weigh, what it costs and comes from, what is missing, and drafts for the counter. */
export function workshopColourPage(
  worded: SheetTexts,
  context: PageContext,
  place: PagePlace,
): WorkshopPageView {
  const { words } = context;
  const { colour: text } = words.pages.workshop;
  const book = bookOf(worded.sheet.slug, context.records);
  const page = pageOfSheet(worded, context, place);
  const sections = [
    ...section("batch", text.sections.batch, batchBlocks(page)),
    ...(book === undefined
      ? []
      : section("lots", text.sections.lots, lotChartBlocks(book, words, place.root))),
    ...section("costs", text.sections.costs, tables([costTable(page)])),
    ...section("gaps", text.sections.gaps, gapBlocks(page)),
    ...section("answers", text.sections.answers, answerBlocks(page)),
  ];
  const { name } = worded.sheet;
  return {
    ...workshopPage(context, {
      heading: text.heading(name),
      description: text.description(name),
      back: { text: text.back, href: place.root },
      lead: [],
      sections,
    }),
    contents: [
      ...contentsOf(sections),
      { text: text.sections.label, href: "#label" },
      { text: text.sections.reply, href: "#reply" },
    ],
    label: { ...labelTextView(page), heading: text.sections.label },
    reply: { ...sheetReply(worded, context), heading: text.sections.reply },
  };
}

function batchBlocks(page: SheetPage): Block[] {
  const { worded, words } = page;
  const { batch } = worded.sheet;
  if (batch === undefined) return [statement(noBatch(page))];
  const { table, remarks, reckoner } = batchView(batch, page);
  return [
    tableOf(table),
    ...remarks.map((remark) => statement(remark, "note")),
    {
      kind: "list",
      list: {
        heading: words.pages.paint.oilLists.slab,
        items: batch.reasons.map((reason) => ({ text: statementText(reason, words) })),
      },
    },
    ...linksOf([
      {
        text: words.pages.workshop.colour.batchSheet,
        href: addressTo(batchSheetPath(worded.sheet.slug), page.place),
      },
    ]),
    { kind: "reckoner", reckoner },
  ];
}

/** Everything that goes into the paint, with who sells it and what it costs. */
function costTable({ sheet, context: { records }, words }: SheetPage): TableView {
  const { colour: text } = words.pages.workshop;
  const { currency = "" } = records.workshop;
  const bought = [
    ...sheet.pigments.map(({ slug }) => records.pigments.get(slug)),
    ...given([sheet.vehicle, ...sheet.additions]).map(({ slug }) => records.vehicles.get(slug)),
  ].filter((one) => one !== undefined);
  return tableView({
    caption: text.costsCaption,
    columns: [
      text.costColumns.what,
      text.costColumns.supplier,
      { head: text.costColumns.price(currency), numeric: true },
      text.costColumns.date,
    ],
    rows: bought.map(({ record }) => [
      record.name,
      ("supplier" in record ? record.supplier : undefined) ?? NO_VALUE,
      record.pricePerKg === undefined ? NO_VALUE : words.numbers.decimal(record.pricePerKg, 2),
      record.date === undefined ? NO_VALUE : words.date(record.date),
    ]),
  });
}

/** Questions of customers that name the colour, each with the reply to send. */
function answerBlocks({ sheet, context: { answers }, place }: SheetPage): Block[] {
  const own = answers.filter(({ colours }) => colours.includes(sheet.slug));
  return linksOf(
    own.map(({ slug, question }) => ({
      text: question,
      href: addressTo(workshopAnswerPath(slug), place),
    })),
  );
}

/** Figures of the published sheet that nobody can state, by their names. */
function gapBlocks({ worded, words }: SheetPage): Block[] {
  const { colour: text } = words.pages.workshop;
  const missing = figureEntries(worded.sheet).filter(
    ({ figure, row }) => !isKnown(figure) && !row.isPrivate,
  );
  if (missing.length === 0) return [statement(text.noGaps)];
  const table = tableView({
    caption: text.gapsCaption,
    columns: [text.gapColumns.figure, text.gapColumns.reason, text.gapColumns.wanting],
    rows: missing.flatMap((entry) =>
      isKnown(entry.figure)
        ? []
        : [
            [
              figureName(entry, worded.sheet, words),
              words.absence({ reason: entry.figure.reason, wanting: [] }),
              entry.figure.wanting.join(", "),
            ],
          ],
    ),
  });
  return [statement(text.gapsLead(missing.length)), ...tables([table])];
}
