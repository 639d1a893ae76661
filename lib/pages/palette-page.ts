import type { ScreenColour } from "../plots/screen-colour.ts";
import { section, statement, tableOf } from "../blocks/section-blocks.ts";
import { layeringOrder } from "../mixing/layering-order.ts";
import { REACH_LEVELS, TOLD_LEVEL } from "../mixing/reach/range-reach.ts";
import { wallOrder } from "./colour-tile.ts";
import {
  offeredLead,
  offeredOf,
  mixingPlaces,
  mixingWays,
  PALETTE_PATH,
  reachedWhites,
  type MixingPageView,
  type PaintChoice,
} from "./mixing-ways.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { pageHead } from "./site-frame.ts";
import { onePage } from "./page-kind.ts";

/** A chosen set of tubes, kept in the address; without script the order of layering of them all. */
export interface PaletteView extends MixingPageView {
  readonly kind: "palette";
  /** That colours mix in. */
  readonly whites: readonly PaintChoice[];
  /** L* at which its reach can be drawn, and is before another is asked for. */
  readonly levels: readonly number[];
  readonly level: number;
  /** `missing` says that a tube was not read. */
  readonly tubes: readonly (PaintChoice & {
    readonly colours: readonly ScreenColour[];
    readonly missing?: string;
  })[];
}

/** The tubes to choose from, and all of them in the order in which layers dry. */
export function palettePage(context: PageContext, place: PagePlace): PaletteView {
  const text = context.words.pages.mixing;
  const { palette } = text;
  const range = offeredOf(context);
  const paints = range.data.paints.filter(({ kind }) => kind !== "medium");
  const bySlug = new Map(paints.map((paint) => [paint.slug, paint]));
  const { columns } = palette;
  const ordered = layeringOrder(paints);
  return {
    kind: "palette",
    ...pageHead(context, place, palette.heading, palette.description),
    lead: [palette.lead, ...offeredLead(context)],
    ways: mixingWays(context, place),
    words: text,
    whites: reachedWhites(context).map(({ slug, name }) => ({ slug, name })),
    levels: REACH_LEVELS,
    level: TOLD_LEVEL,
    tubes: wallOrder(context)
      .flatMap(({ sheet }) => bySlug.get(sheet.slug) ?? [])
      .map(({ slug, name, screen }) => ({
        slug,
        name,
        colours: screen === undefined ? [] : [screen],
        ...(screen === undefined && { missing: context.words.pages.catalogue.noSwatch }),
      })),
    sections: section("order", palette.order, [
      // Of a whole range nearly every colour is leaner than some below it: the note says it once.
      statement(palette.orderNote, "note"),
      tableOf({
        caption: palette.order,
        columns: [columns.colour, columns.dries, columns.oil, columns.lasts],
        rows: ordered.map(({ slug, name, facts }) => [
          { text: name, href: `${place.root}colours/${slug}/` },
          facts.drying?.text ?? NO_VALUE,
          facts.oil?.text ?? NO_VALUE,
          facts.lightfastness?.text ?? NO_VALUE,
        ]),
      }),
    ]),
  };
}

export const PALETTE = onePage(
  PALETTE_PATH,
  palettePage,
  (context) => mixingPlaces(context).maps.length > 0,
);
