import type { RangeCounts } from "../words/range-counts.ts";
import type { ColourRow } from "./colour-row.ts";
import { rowOf } from "./colour-rows.ts";
import type { PageContext } from "./page-context.ts";

/** What the first page's sentence counts. */
export function rangeCounts(context: Pick<PageContext, "sheets" | "rows" | "words">): RangeCounts {
  const all = context.sheets.map((worded) => ({
    row: rowOf(worded, context),
    isMedium: worded.sheet.family === "extender",
  }));
  const count = (isOne: (row: ColourRow, isMedium: boolean) => boolean): number =>
    all.filter(({ row, isMedium }) => isOne(row, isMedium)).length;
  const isShown = ({ colour }: ColourRow): boolean => colour !== undefined;
  return {
    measured: count(({ isMeasured }, isMedium) => isMeasured && !isMedium),
    mediums: count(({ isMeasured }, isMedium) => isMeasured && isMedium),
    byEye: count((row) => isShown(row) && !row.isMeasured),
    unread: count((row) => !isShown(row)),
    tinted: count(({ isLetDown }) => isLetDown),
  };
}
