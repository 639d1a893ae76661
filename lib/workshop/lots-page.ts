import type { Block } from "../blocks/block.ts";
import type { WorkshopPageView } from "../blocks/page-kinds.ts";
import { section, statement, tableOf } from "../blocks/section-blocks.ts";
import { TELLING_DEGREES } from "../lots/replicate-spread.ts";
import type { PageContext, PagePlace } from "../pages/page-context.ts";
import type { TableView } from "../present/views.ts";
import { numberColumns, tableView } from "../present/table-view.ts";
import { lotBooks, spreadOf, type JudgedLot, type LotBook } from "../sheet/lots/lot-book.ts";
import type { Lot } from "../records/records.ts";
import { lotAddress, verdictWord } from "./lot-words.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { workshopPage } from "./workshop-frame.ts";
import { given } from "../quantities/given.ts";

/** Every lot, the newest first, and how well the workshop repeats itself. */
export function lotsPage(context: PageContext, place: PagePlace): WorkshopPageView {
  const { words, records } = context;
  const { index: text } = words.pages.lots;
  const sections = [
    ...section("lots", text.outcome, [
      records.lots.size === 0 ? statement(text.none) : tableOf(lotsTable(context, place)),
    ]),
    ...(records.lots.size === 0
      ? []
      : section("spread", text.spreadHeading, spreadBlocks(context))),
  ];
  return workshopPage(context, {
    heading: text.heading,
    description: text.description,
    lead: [text.lead],
    sections,
  });
}

interface Listed {
  readonly lot: Lot;
  readonly judged?: JudgedLot;
  readonly isStandard: boolean;
}

function listed({ standard, lots, planned }: LotBook): Listed[] {
  return given([
    standard !== undefined && { lot: standard, isStandard: true },
    ...lots.map((judged) => ({ lot: judged.lot, judged, isStandard: false })),
    ...planned.map((lot) => ({ lot, isStandard: false })),
  ]);
}

function lotsTable(context: PageContext, { root }: PagePlace): TableView {
  const { words, records } = context;
  const { index: text } = words.pages.lots;
  const rows = lotBooks(records)
    .flatMap((book) => listed(book).map((one) => ({ ...one, book })))
    .toSorted((one, other) => (one.lot.record.date > other.lot.record.date ? -1 : 1));
  return tableView({
    caption: text.caption,
    columns: [
      text.columns.lot,
      text.columns.colour,
      text.columns.date,
      text.columns.verdict,
      ...numberColumns(text.columns.letDown, text.columns.strength),
    ],
    rows: rows.map(({ lot, judged, isStandard, book }) => {
      const letDown = judged?.comparison.letDown;
      return [
        { text: lot.record.number, href: `${root}${lotAddress(lot.slug)}` },
        {
          text: book.colour.record.name,
          href: `${root}colours/${book.colour.slug}/`,
        },
        words.date(lot.record.date),
        lot.record.state?.is === "recalled"
          ? text.recalled
          : isStandard
            ? text.standard
            : lot.record.planned === true
              ? text.planned
              : lot.record.state?.is === "conceded"
                ? text.conceded
                : verdictWord(judged?.comparison.verdict, words),
        letDown === undefined ? NO_VALUE : words.numbers.decimal(letDown.difference.deltaE00, 2),
        letDown?.strength === undefined
          ? NO_VALUE
          : words.numbers.decimal(letDown.strength.weightedPercent, 1),
      ];
    }),
  });
}

function spreadBlocks({ words, records }: PageContext): Block[] {
  const { index: text } = words.pages.lots;
  const { colour, strengthPercent } = spreadOf(records);
  if (colour === undefined || strengthPercent === undefined) return [statement(text.spreadNone)];
  return [
    statement(
      text.spread(
        words.numbers.decimal(colour.standardDeviation, 2),
        words.numbers.decimal(strengthPercent.standardDeviation, 1),
        strengthPercent.degrees,
      ),
    ),
    statement(
      strengthPercent.degrees >= TELLING_DEGREES ? text.spreadUsed : text.spreadNotUsed,
      "note",
    ),
    statement(text.spreadOfReadings, "note"),
  ];
}
