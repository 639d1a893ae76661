import type { CellView, TableView } from "../present/views.ts";
import { unitText } from "../present/figure-text.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Words } from "../words/words.ts";
import type { OrderGroup } from "./catalogue-pages.ts";
import { oilOrder } from "../collection/oil-order.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { colourCell, figureCell } from "./order-cells.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { plainSheets } from "./worded-sheet.ts";

/** The range ranked by oil twice over: to a mass of pigment, and to a volume of it. */
export function oilGroups(sheets: readonly SheetTexts[], words: Words): OrderGroup[] {
  const text = words.pages.paint.byOil;
  const order = oilOrder(plainSheets(sheets));
  const ranked = new Set(order.byMass);
  const unknown = sheets.filter(({ sheet }) => !ranked.has(sheet));
  const worded = new Map(sheets.map((one) => [one.sheet, one]));
  const group = (
    id: string,
    heading: string,
    items: readonly SheetTexts[],
    isRanked: boolean,
  ): OrderGroup => ({
    id,
    heading,
    items,
    table: (shown, from, context, place) =>
      table(heading, shown, isRanked ? from : undefined, context, place),
  });
  const wordedOf = (listed: readonly Sheet[]): SheetTexts[] =>
    listed.flatMap((sheet) => worded.get(sheet) ?? []);
  return [
    group("by-mass", text.mass, wordedOf(order.byMass), true),
    group("by-volume", text.volume, wordedOf(order.byVolume), true),
    ...(unknown.length === 0 ? [] : [group("not-stated", text.notStated, unknown, false)]),
  ];
}

/** @param from place of the first in its order, from 0; undefined for what has no place. */
function table(
  heading: string,
  shown: readonly SheetTexts[],
  from: number | undefined,
  { words }: PageContext,
  place: PagePlace,
): TableView {
  const { columns } = words.pages.paint.byOil;
  return {
    caption: words.pages.catalogue.caption(heading),
    compact: true,
    columns: [
      { head: columns.colour },
      ...(from !== undefined ? [{ head: columns.place, numeric: true }] : []),
      { head: columns.oilIndex, unit: unitText("g/100 g", words), numeric: true },
      { head: columns.byVolume, unit: unitText("g/100 cm3", words), numeric: true },
    ],
    rows: shown.map((worded, i): CellView[] => [
      colourCell(worded.sheet, place),
      ...(from === undefined ? [] : [{ text: String(from + i + 1) }]),
      figureCell(worded, "oil.oilIndexGPer100g", words),
      figureCell(worded, "oil.oilGPer100cm3", words),
    ]),
  };
}
