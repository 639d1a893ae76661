import { isKnown } from "../quantities/figure.ts";
import type { TileView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Words } from "../words/words.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { comparableColour, tellingTint } from "./screen-swatch.ts";

/** A colour on the wall: masstone over the tint that tells most. */
export function colourTile(
  { sheet }: SheetTexts,
  { words }: PageContext,
  { root }: PagePlace,
): TileView {
  const masstone = comparableColour(sheet.notations.masstone);
  const tint = tellingTint(sheet);
  const colours = [masstone, tint].filter((colour) => colour !== undefined);
  return {
    name: sheet.name,
    href: `${root}colours/${sheet.slug}/`,
    colours,
    ...(colours.length === 0 ? { missing: words.pages.catalogue.noSwatch } : {}),
    ...(sheet.discontinued === undefined ? {} : { note: words.pages.catalogue.madeNoMore }),
  };
}

/** By family, and in each from light to dark; what was not read comes last, and after all what is made no more. */
export function wallOrder(sheets: readonly SheetTexts[]): SheetTexts[] {
  return sheets.toSorted(
    (one, other) =>
      Number(one.sheet.discontinued !== undefined) -
        Number(other.sheet.discontinued !== undefined) ||
      WALL.indexOf(one.sheet.family ?? "other") - WALL.indexOf(other.sheet.family ?? "other") ||
      lightness(other) - lightness(one),
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

function lightness({ sheet }: SheetTexts): number {
  const value = sheet.notations.masstone?.munsell?.value;
  return value !== undefined && isKnown(value) ? value.value : -1;
}
