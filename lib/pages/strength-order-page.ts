import { isKnown } from "../quantities/figure.ts";
import { valueText } from "../present/figure-text.ts";
import { standingView } from "../present/standing-view.ts";
import {
  asMarkup,
  type CatalogueTableView,
  type CellView,
  type TableView,
} from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { cellSwatch } from "../plots/small-swatch.ts";
import { strengthOrder } from "../collection/strength-order.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { comparableColour } from "./screen-swatch.ts";
import type { PageContext, PagePlace } from "./page-context.ts";

/** The range ranked by tinting strength beside the workshop's reference; below it what does not compare. */
export function strengthGroups(
  context: PageContext,
  place: PagePlace,
): CatalogueTableView["groups"] {
  const { words, sheets, records } = context;
  const text = words.pages.optics.byStrength;
  const { ranked, others } = strengthOrder(sheets.map(({ sheet }) => sheet));
  const reference = records.colours.get(records.workshop.strengthReference ?? "")?.record.name;
  const heading = text.ranked(reference ?? "");
  return [
    ...(ranked.length === 0
      ? []
      : [{ id: "ranked", heading, table: table(heading, ranked, context, place, true) }]),
    ...(others.length === 0
      ? []
      : [
          {
            id: "not-compared",
            heading: text.notCompared,
            table: table(text.notCompared, others, context, place, false),
          },
        ]),
  ];
}

function table(
  heading: string,
  listed: readonly Sheet[],
  { words, sheets }: PageContext,
  { root }: PagePlace,
  isRanked: boolean,
): TableView {
  const { columns } = words.pages.optics.byStrength;
  return {
    caption: words.pages.catalogue.caption(heading),
    compact: true,
    columns: [
      { head: columns.colour },
      ...(isRanked
        ? [
            { head: columns.byMass, numeric: true },
            { head: columns.byVolume, numeric: true },
          ]
        : []),
      { head: columns.white, numeric: true },
    ],
    rows: listed.flatMap((sheet): CellView[][] => {
      const worded = sheets.find((one) => one.sheet === sheet);
      if (worded === undefined) return [];
      const colour = comparableColour(sheet.notations.masstone);
      return [
        [
          {
            text: sheet.name,
            href: `${root}colours/${sheet.slug}/`,
            ...(colour === undefined ? {} : { swatch: asMarkup(cellSwatch(colour)) }),
          },
          ...(isRanked
            ? [
                cell(worded, "optics.tintingStrength", words),
                cell(worded, "optics.tintingStrengthByVolume", words),
              ]
            : []),
          whiteCell(worded, words),
        ],
      ];
    }),
  };
}

/** Parts of the first white that brings it to L* 50, and which white. */
function whiteCell(worded: SheetTexts, words: PageContext["words"]): CellView {
  const tint = worded.sheet.tints.find(
    ({ strengthParts }) => strengthParts !== undefined && isKnown(strengthParts.byVolume),
  );
  if (tint === undefined) return { text: "\u2013", reason: words.standings["not stated"].word };
  return {
    ...cell(worded, `tints.${tint.white.slug}.strengthParts.byVolume`, words),
    note: words.pages.optics.byStrength.inWhite(tint.white.name),
  };
}

function cell(worded: SheetTexts, path: string, words: PageContext["words"]): CellView {
  const { row, figure } = worded.leaf(path);
  return isKnown(figure)
    ? { text: valueText(row, figure, words), standing: standingView(figure, words) }
    : { text: "\u2013", reason: words.standings["not stated"].word };
}
