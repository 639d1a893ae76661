import { nameOrder } from "../quantities/name-order.ts";
import type { TileView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Words } from "../words/words.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { rowOf } from "./colour-rows.ts";
import { familyLinks } from "./catalogue-pages.ts";
import { evenly } from "./range-parts.ts";

/** A colour on the wall: masstone over the tint that tells most. */
export function colourTile(
  worded: SheetTexts,
  context: PageContext,
  { root }: PagePlace,
): TileView {
  const { slug, name } = worded.sheet;
  return { name, href: `${root}colours/${slug}/`, ...rowOf(worded, context).tile };
}

/** Masstones that stand for a family. */
const FAMILY_PAINTS = 8;

/** A tile a family in place of one a colour: some of its masstones from light to dark, and the way to all of them. */
export function familyTiles(context: PageContext, place: PagePlace): TileView[] {
  const { words } = context;
  const text = words.pages.catalogue;
  const ways = new Map(familyLinks(context, place).map(({ family, href }) => [family, href]));
  const wall = wallOrder(context);
  return WALL.map((family) => ({
    family,
    members: wall.filter(({ sheet }) => (sheet.family ?? "other") === family),
  }))
    .filter(({ members }) => members.length > 0)
    .map(({ family, members }): TileView => {
      const colours = members.flatMap((worded) => rowOf(worded, context).colour ?? []);
      return {
        name: words.families[family],
        href: ways.get(family) ?? `${place.root}colours/`,
        colours: evenly(colours, FAMILY_PAINTS),
        ...(colours.length === 0 && { missing: text.noSwatch }),
        note: text.count(members.length),
      };
    });
}

/**
 * By family, and in each from light to dark by Munsell value as it is printed, so that what nobody
 * can tell apart stands by name; what was not read comes last, and after all what is made no more.
 */
export function wallOrder(context: Pick<PageContext, "sheets" | "rows" | "words">): SheetTexts[] {
  const inOrder = nameOrder(context.words.language);
  const lightness = (worded: SheetTexts): number => rowOf(worded, context).lightness;
  return context.sheets.toSorted(
    (one, other) =>
      Number(one.sheet.discontinued !== undefined) -
        Number(other.sheet.discontinued !== undefined) ||
      WALL.indexOf(one.sheet.family ?? "other") - WALL.indexOf(other.sheet.family ?? "other") ||
      lightness(other) - lightness(one) ||
      inOrder(one.sheet.name, other.sheet.name),
  );
}

/** The order of a wall: round the hues, then what has none. */
const WALL: readonly (keyof Words["families"])[] = [
  "yellow",
  "orange",
  "earth",
  "brown",
  "red",
  "violet",
  "blue",
  "green",
  "grey",
  "black",
  "white",
  "extender",
  "other",
];
