import type { SheetTexts } from "../present/sheet-texts.ts";
import { numberColumns } from "../present/table-view.ts";
import type { CellView, ColumnView } from "../present/views.ts";
import { strengthOrder } from "../collection/strength-order.ts";
import { given } from "../quantities/given.ts";
import { mostOf } from "../quantities/most-of.ts";
import type { OrderGroup } from "./catalogue-pages.ts";
import type { ColourRow } from "./colour-row.ts";
import { rowOf } from "./colour-rows.ts";
import type { PageContext } from "./page-context.ts";
import { strengthReferenceName } from "./strength-reference.ts";

/** The range ranked by tinting strength beside the workshop's reference; below it what does not compare. */
export function strengthGroups(context: PageContext): OrderGroup[] {
  const { sheets, words } = context;
  const text = words.pages.optics.byStrength;
  const reference = strengthReferenceName(context);
  const { ranked, others } = strengthOrder(
    sheets.map((worded) => ({
      slug: worded.sheet.slug,
      worded,
      strength: rowOf(worded, context).keys.strength,
    })),
    ({ strength }) => strength,
    ({ worded }) => rowOf(worded, context).isLetDown,
  );
  const { colour, byVolume, byMass } = text.columns;
  const withWhite = (group: typeof ranked) => {
    const items = group.map(({ worded }) => worded);
    return { items, white: whiteColumn(items, context) };
  };
  const [compared, notCompared] = [withWhite(ranked), withWhite(others)];
  return given([
    ranked.length > 0 && {
      id: "ranked",
      heading: text.ranked(reference),
      items: compared.items,
      columns: [colour, ...numberColumns(byVolume, byMass), compared.white.column],
      cells: ({ strength }) => [...strength.beside, compared.white.cell(strength)],
      isCompact: true,
    },
    others.length > 0 && {
      id: "not-compared",
      heading: text.notCompared,
      items: notCompared.items,
      columns: [colour, notCompared.white.column],
      cells: ({ strength }) => [notCompared.white.cell(strength)],
      isCompact: true,
    },
  ]);
}

/** Parts of white: which white most of them were let down in stands in the head, and another in its own cell. */
function whiteColumn(
  items: readonly SheetTexts[],
  context: PageContext,
): {
  readonly column: ColumnView;
  readonly cell: (strength: ColourRow["strength"]) => CellView;
} {
  const { columns, inWhite } = context.words.pages.optics.byStrength;
  const whites = items.map((worded) => rowOf(worded, context).strength.white);
  const usual = mostOf(whites.filter((white) => white !== undefined));
  return {
    column: {
      head: usual === undefined ? columns.white : `${columns.white}, ${inWhite(usual)}`,
      numeric: true,
    },
    cell: ({ parts, white }) =>
      white === undefined || white === usual ? parts : { ...parts, note: inWhite(white) },
  };
}
