import { isKnown } from "../quantities/figure.ts";
import type { CellView, TableView } from "../present/views.ts";
import type { Words } from "../words/words.ts";
import type { OrderGroup } from "./catalogue-pages.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { strengthOrder } from "../collection/strength-order.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { colourCell, figureCell, notStatedCell } from "./order-cells.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { plainSheets } from "./worded-sheet.ts";

/** The range ranked by tinting strength beside the workshop's reference; below it what does not compare. */
export function strengthGroups(
  sheets: readonly SheetTexts[],
  words: Words,
  reference: string,
): OrderGroup[] {
  const text = words.pages.optics.byStrength;
  const { ranked, others } = strengthOrder(plainSheets(sheets));
  const worded = new Map(sheets.map((one) => [one.sheet, one]));
  const group = (
    id: string,
    heading: string,
    listed: readonly Sheet[],
    isRanked: boolean,
  ): OrderGroup => ({
    id,
    heading,
    items: listed.flatMap((sheet) => worded.get(sheet) ?? []),
    table: (shown, _, context, place) => table(heading, shown, context, place, isRanked),
  });
  return [
    ...(ranked.length === 0 ? [] : [group("ranked", text.ranked(reference), ranked, true)]),
    ...(others.length === 0 ? [] : [group("not-compared", text.notCompared, others, false)]),
  ];
}

function table(
  heading: string,
  shown: readonly SheetTexts[],
  { words }: PageContext,
  place: PagePlace,
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
            { head: columns.byVolume, numeric: true },
            { head: columns.byMass, numeric: true },
          ]
        : []),
      { head: columns.white, numeric: true },
    ],
    rows: shown.map((worded): CellView[] => [
      colourCell(worded.sheet, place),
      ...(isRanked
        ? [
            figureCell(worded, "optics.tintingStrengthByVolume", words),
            figureCell(worded, "optics.tintingStrength", words),
          ]
        : []),
      whiteCell(worded, words),
    ]),
  };
}

/** Parts of the first white that brings it to L* 50, and which white. */
function whiteCell(worded: SheetTexts, words: PageContext["words"]): CellView {
  const tint = worded.sheet.tints.find(
    ({ strengthParts }) => strengthParts !== undefined && isKnown(strengthParts.byVolume),
  );
  if (tint === undefined) return notStatedCell(words);
  return {
    ...figureCell(worded, `tints.${tint.white.slug}.strengthParts.byVolume`, words),
    note: words.pages.optics.byStrength.inWhite(tint.white.name),
  };
}
