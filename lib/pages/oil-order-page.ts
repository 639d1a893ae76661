import type { TableView } from "../present/views.ts";
import { unitText } from "../present/figure-text.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { tableView } from "../present/table-view.ts";
import { leanestFirst } from "../collection/oil-order.ts";
import { remembered } from "../quantities/remembered.ts";
import type { OrderGroup } from "./catalogue-pages.ts";
import { colourCell } from "./colour-cell.ts";
import { rowOf } from "./colour-rows.ts";
import type { PageContext, PagePlace } from "./page-context.ts";

/** The range ranked by oil twice over: to a mass of pigment, and to a volume of it. */
export function oilGroups(context: PageContext): OrderGroup[] {
  const text = context.words.pages.paint.byOil;
  const { byMass, byVolume, unknown } = byOil(context);
  const group = (
    id: string,
    heading: string,
    items: readonly SheetTexts[],
    isRanked: boolean,
  ): OrderGroup => ({
    id,
    heading,
    items,
    table: (shown, from, page, place) =>
      table(heading, shown, isRanked ? from : undefined, page, place),
  });
  return [
    group("by-mass", text.mass, byMass, true),
    group("by-volume", text.volume, byVolume, true),
    ...(unknown.length === 0 ? [] : [group("not-stated", text.notStated, unknown, false)]),
  ];
}

const byOil = remembered((context: PageContext) => {
  const entries = context.sheets.map((worded) => {
    const { oilByMass, oilByVolume } = rowOf(worded, context).keys;
    return { slug: worded.sheet.slug, worded, oilByMass, oilByVolume };
  });
  const ranked = (oilOf: (one: (typeof entries)[number]) => number | undefined): SheetTexts[] =>
    leanestFirst(entries, oilOf).map(({ worded }) => worded);
  return {
    byMass: ranked(({ oilByMass }) => oilByMass),
    byVolume: ranked(({ oilByVolume }) => oilByVolume),
    unknown: entries.filter(({ oilByMass }) => oilByMass === undefined).map(({ worded }) => worded),
  };
});

/** @param from place of the first in its order, from 0; undefined for what has no place. */
function table(
  heading: string,
  shown: readonly SheetTexts[],
  from: number | undefined,
  context: PageContext,
  place: PagePlace,
): TableView {
  const { words } = context;
  const { columns } = words.pages.paint.byOil;
  return tableView({
    caption: words.pages.catalogue.caption(heading),
    compact: true,
    columns: [
      columns.colour,
      ...(from !== undefined ? [{ head: columns.place, numeric: true }] : []),
      { head: columns.oilIndex, unit: unitText("g/100 g", words), numeric: true },
      { head: columns.byVolume, unit: unitText("g/100 cm3", words), numeric: true },
    ],
    rows: shown.map((worded, i) => [
      colourCell(worded, context, place),
      ...(from === undefined ? [] : [String(from + i + 1)]),
      ...rowOf(worded, context).oil,
    ]),
  });
}
