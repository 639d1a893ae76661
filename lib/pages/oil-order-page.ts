import { unitText } from "../present/figure-text.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { leanestFirst } from "../collection/oil-order.ts";
import { remembered } from "../quantities/remembered.ts";
import { given } from "../quantities/given.ts";
import type { OrderGroup } from "./catalogue-pages.ts";
import { rowOf } from "./colour-rows.ts";
import type { PageContext } from "./page-context.ts";
import type { ColourRow } from "./colour-row.ts";

/** The range ranked by oil twice over: to a mass of pigment, and to a volume of it. */
export function oilGroups(context: PageContext): OrderGroup[] {
  const { words } = context;
  const text = words.pages.paint.byOil;
  const { byMass, byVolume, unknown } = byOil(context);
  const { colour, place, oilIndex, byVolume: volume } = text.columns;
  const oil = [
    { head: oilIndex, unit: unitText("g/100 g", words), numeric: true },
    { head: volume, unit: unitText("g/100 cm3", words), numeric: true },
  ];
  const ranked = {
    columns: [colour, { head: place, numeric: true }, ...oil],
    cells: (row: ColourRow, nth: number) => [String(nth), ...row.oil],
    isCompact: true,
  };
  return given([
    { id: "by-mass", heading: text.mass, items: byMass, ...ranked },
    { id: "by-volume", heading: text.volume, items: byVolume, ...ranked },
    unknown.length > 0 && {
      id: "not-stated",
      heading: text.notStated,
      items: unknown,
      columns: [colour, ...oil],
      cells: (row) => row.oil,
      isCompact: true,
    },
  ]);
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
