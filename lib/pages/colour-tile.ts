import { nameOrder } from "../quantities/name-order.ts";
import type { Language } from "../records/schema/terms.ts";
import { isKnown } from "../quantities/figure.ts";
import type { TileView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Words } from "../words/words.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { familyLinks } from "./catalogue-pages.ts";
import { evenly } from "./range-parts.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { comparableColour, tellingTint } from "./screen-swatch.ts";

/** A colour on the wall: masstone over the tint that tells most. */
export function colourTile(
  { sheet }: SheetTexts,
  { words }: PageContext,
  { root }: PagePlace,
): TileView {
  const colours = tilePaints(sheet);
  return {
    name: sheet.name,
    href: `${root}colours/${sheet.slug}/`,
    colours,
    ...(colours.length === 0 ? { missing: words.pages.catalogue.noSwatch } : {}),
    ...(sheet.discontinued === undefined ? {} : { note: words.pages.catalogue.madeNoMore }),
  };
}

/** Masstone and the tint that tells most, as far as they were read. */
export function tilePaints(sheet: Sheet): TileView["colours"] {
  return [comparableColour(sheet.notations.masstone), tellingTint(sheet)?.colour].filter(
    (colour) => colour !== undefined,
  );
}

/** Masstones that stand for a family. */
const FAMILY_PAINTS = 8;

/** A tile a family in place of one a colour: some of its masstones from light to dark, and the way to all of them. */
export function familyTiles(context: PageContext, place: PagePlace): TileView[] {
  const { words, sheets } = context;
  const text = words.pages.catalogue;
  const ways = new Map(familyLinks(context, place).map(({ family, href }) => [family, href]));
  const wall = wallOrder(sheets, words.language);
  return WALL.map((family) => ({
    family,
    members: wall.filter(({ sheet }) => (sheet.family ?? "other") === family),
  }))
    .filter(({ members }) => members.length > 0)
    .map(({ family, members }): TileView => {
      const colours = members.flatMap(({ sheet }) => {
        const masstone = comparableColour(sheet.notations.masstone);
        return masstone === undefined ? [] : [masstone];
      });
      return {
        name: words.families[family],
        href: ways.get(family) ?? `${place.root}colours/`,
        colours: evenly(colours, FAMILY_PAINTS),
        ...(colours.length === 0 ? { missing: text.noSwatch } : {}),
        note: text.count(members.length),
      };
    });
}

/**
 * By family, and in each from light to dark by Munsell value as it is printed, so that what nobody
 * can tell apart stands by name; what was not read comes last, and after all what is made no more.
 */
export function wallOrder(sheets: readonly SheetTexts[], language: Language): SheetTexts[] {
  const inOrder = nameOrder(language);
  return sheets.toSorted(
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

/** In tenths. */
function lightness({ sheet }: SheetTexts): number {
  const value = sheet.notations.masstone?.munsell?.value;
  return value !== undefined && isKnown(value) ? Math.round(10 * value.value) : -1;
}
