import { numberColumns } from "../present/table-view.ts";
import { strengthOrder } from "../collection/strength-order.ts";
import type { OrderGroup } from "./catalogue-pages.ts";
import { rowOf } from "./colour-rows.ts";
import type { PageContext } from "./page-context.ts";
import { strengthReferenceName } from "./strength-reference.ts";
import { given } from "../quantities/given.ts";

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
  const { colour, byVolume, byMass, white } = text.columns;
  const inWhite = { head: white, numeric: true };
  return given([
    ranked.length > 0 && {
      id: "ranked",
      heading: text.ranked(reference),
      items: ranked.map(({ worded }) => worded),
      columns: [colour, ...numberColumns(byVolume, byMass), inWhite],
      cells: ({ strength }) => [...strength.beside, strength.white],
      isCompact: true,
    },
    others.length > 0 && {
      id: "not-compared",
      heading: text.notCompared,
      items: others.map(({ worded }) => worded),
      columns: [colour, inWhite],
      cells: ({ strength }) => [strength.white],
      isCompact: true,
    },
  ]);
}
