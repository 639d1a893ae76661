import type { TableView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { tableView } from "../present/table-view.ts";
import { strengthOrder } from "../collection/strength-order.ts";
import type { OrderGroup } from "./catalogue-pages.ts";
import { colourCell } from "./colour-cell.ts";
import { rowOf } from "./colour-rows.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { given } from "../quantities/given.ts";

/** The range ranked by tinting strength beside the workshop's reference; below it what does not compare. */
export function strengthGroups(context: PageContext): OrderGroup[] {
  const { records, sheets, words } = context;
  const text = words.pages.optics.byStrength;
  const { strengthReference = "" } = records.workshop;
  const reference = records.colours.get(strengthReference)?.record.name ?? "";
  const { ranked, others } = strengthOrder(
    sheets.map((worded) => ({
      slug: worded.sheet.slug,
      worded,
      strength: rowOf(worded, context).keys.strength,
    })),
    ({ strength }) => strength,
    ({ worded }) => rowOf(worded, context).isLetDown,
  );
  const group = (
    id: string,
    heading: string,
    listed: readonly { readonly worded: SheetTexts }[],
    isRanked: boolean,
  ): OrderGroup => ({
    id,
    heading,
    items: listed.map(({ worded }) => worded),
    table: (shown, _, page, place) => table(heading, shown, page, place, isRanked),
  });
  return given([
    ranked.length > 0 && group("ranked", text.ranked(reference), ranked, true),
    others.length > 0 && group("not-compared", text.notCompared, others, false),
  ]);
}

function table(
  heading: string,
  shown: readonly SheetTexts[],
  context: PageContext,
  place: PagePlace,
  isRanked: boolean,
): TableView {
  const { words } = context;
  const { columns } = words.pages.optics.byStrength;
  return tableView({
    caption: words.pages.catalogue.caption(heading),
    compact: true,
    columns: [
      columns.colour,
      ...(isRanked
        ? [
            { head: columns.byVolume, numeric: true },
            { head: columns.byMass, numeric: true },
          ]
        : []),
      { head: columns.white, numeric: true },
    ],
    rows: shown.map((worded) => {
      const { beside, white } = rowOf(worded, context).strength;
      return [colourCell(worded, context, place), ...(isRanked ? beside : []), white];
    }),
  });
}
