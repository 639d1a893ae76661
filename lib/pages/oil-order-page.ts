import { isKnown, type Figure } from "../quantities/figure.ts";
import { valueText } from "../present/figure-text.ts";
import { standingView } from "../present/standing-view.ts";
import {
  asMarkup,
  type CatalogueTableView,
  type CellView,
  type TableView,
} from "../present/views.ts";
import { cellSwatch } from "../plots/small-swatch.ts";
import { oilOrder } from "../collection/oil-order.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { comparableColour } from "./screen-swatch.ts";
import type { PageContext, PagePlace } from "./page-context.ts";

/** The range ranked by oil twice over: to a mass of pigment, and to a volume of it. */
export function oilGroups(context: PageContext, place: PagePlace): CatalogueTableView["groups"] {
  const { words, sheets } = context;
  const text = words.pages.paint.byOil;
  const order = oilOrder(sheets.map(({ sheet }) => sheet));
  const unknown = sheets.map(({ sheet }) => sheet).filter((sheet) => !order.byMass.includes(sheet));
  return [
    { id: "by-mass", heading: text.mass, table: table(text.mass, order.byMass, context, place) },
    {
      id: "by-volume",
      heading: text.volume,
      table: table(text.volume, order.byVolume, context, place),
    },
    ...(unknown.length === 0
      ? []
      : [
          {
            id: "not-stated",
            heading: text.notStated,
            table: table(text.notStated, unknown, context, place, false),
          },
        ]),
  ];
}

function table(
  heading: string,
  sheets: readonly Sheet[],
  { words, sheets: all }: PageContext,
  { root }: PagePlace,
  ranked = true,
): TableView {
  const { columns } = words.pages.paint.byOil;
  const cell = (sheet: Sheet, path: string, figure: Figure): CellView => {
    const row = all.find((worded) => worded.sheet === sheet)?.leaf(path).row;
    return row === undefined || !isKnown(figure)
      ? { text: "\u2013", reason: words.standings["not stated"].word }
      : { text: valueText(row, figure, words), standing: standingView(figure, words) };
  };
  return {
    caption: words.pages.catalogue.caption(heading),
    compact: true,
    columns: [
      { head: columns.colour },
      ...(ranked ? [{ head: columns.place, numeric: true }] : []),
      { head: columns.oilIndex, unit: "g/100 g", numeric: true },
      { head: columns.byVolume, unit: "g/100 cm\u00b3", numeric: true },
    ],
    rows: sheets.map((sheet, i): CellView[] => {
      const colour = comparableColour(sheet.notations.masstone);
      return [
        {
          text: sheet.name,
          href: `${root}colours/${sheet.slug}/`,
          ...(colour === undefined ? {} : { swatch: asMarkup(cellSwatch(colour)) }),
        },
        ...(ranked ? [{ text: String(i + 1) }] : []),
        cell(sheet, "oil.oilIndexGPer100g", sheet.oil.oilIndexGPer100g),
        cell(sheet, "oil.oilGPer100cm3", sheet.oil.oilGPer100cm3),
      ];
    }),
  };
}
