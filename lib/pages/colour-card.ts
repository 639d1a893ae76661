import { isKnown } from "../quantities/figure.ts";
import { asMarkup, type ColourCardView, type Markup } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { cardSwatch } from "../plots/small-swatch.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { ownColour, tellingTint } from "./screen-swatch.ts";

/**
 * One colour in a grid: its swatch, its pigments and its Munsell notation.
 * @param inWhite the white whose tint is shown; else the one that tells most.
 */
export function colourCard(
  { sheet }: SheetTexts,
  { words }: PageContext,
  { root }: PagePlace,
  inWhite?: string,
): ColourCardView {
  const swatch = swatchOf(sheet, inWhite);
  const munsell = sheet.notations.masstone?.munsell?.text;
  const { signalWord, unknown } = sheet.cautions;
  const warning =
    signalWord !== null
      ? words.signalWords[signalWord]
      : unknown.length > 0
        ? words.pages.handling.unknownInShort
        : undefined;
  return {
    name: sheet.name,
    href: `${root}colours/${sheet.slug}/`,
    // A name stays whole; between two names a line may break.
    pigments: sheet.pigments
      .map(({ colourIndexName, name }) => colourIndexName?.replaceAll(" ", "\u00a0") ?? name)
      .join(", "),
    ...(swatch === undefined ? { noSwatch: words.pages.catalogue.noSwatch } : { swatch }),
    ...(munsell !== undefined && isKnown(munsell) ? { line: `Munsell ${munsell.value}` } : {}),
    ...(warning === undefined ? {} : { signalWord: warning }),
  };
}

/** Masstone above, and below it the tint that tells most. */
function swatchOf(sheet: Sheet, inWhite?: string): Markup | undefined {
  const masstone = ownColour(sheet.notations.masstone);
  const tint = tellingTint(sheet, inWhite)?.colour;
  const shown = [masstone, tint].filter((colour) => colour !== undefined);
  return shown.length === 0 ? undefined : asMarkup(cardSwatch(shown, sheet.name));
}
