import { isNearNeutral } from "../collection/near-neutrals.ts";
import { toldStep } from "../kept/kept-steps.ts";
import type { Told } from "../kept/step-book.ts";
import { cardSwatch, cellSwatch } from "../plots/small-swatch.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { isKnown } from "../quantities/figure.ts";
import { rememberedOfTwo } from "../quantities/remembered.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Words } from "../words/words.ts";
import type { ColourRow } from "./colour-row.ts";
import { munsellPlace } from "./munsell-place.ts";
import { oilCells, orderCells, strengthCells } from "./order-cells.ts";
import { orderKeys } from "./order-keys.ts";
import type { PageContext } from "./page-context.ts";
import { rowFilters } from "./range-filters.ts";
import { ownColour, tellingTint } from "./screen-swatch.ts";

/** The row of a colour in a page's range. */
export function rowOf(
  worded: SheetTexts,
  { rows, words }: Pick<PageContext, "rows" | "words">,
): ColourRow {
  return rows()[worded.sheet.slug] ?? rowAlone(worded, words);
}

/** The row of a colour, with what tells it from what it was. */
export function toldRow(
  worded: SheetTexts,
  { words, steps }: Pick<PageContext, "words" | "steps">,
): Told<ColourRow> {
  const step = { modules: MODULES, name: "rows", of: worded.sheet.slug };
  return toldStep(steps, step, () => colourRow(worded, words));
}

const MODULES = ["lib/pages/colour-rows.ts", "lib/words/languages.ts"];

/** Of one that stands in no range. */
const rowAlone = rememberedOfTwo(colourRow);

function colourRow(worded: SheetTexts, words: Words): ColourRow {
  const { sheet } = worded;
  const colour = ownColour(sheet.notations.masstone);
  const munsell = sheet.notations.masstone?.munsell?.value;
  const hex = sheet.notations.masstone?.srgb?.hex;
  return {
    card: card(sheet, words),
    swatchIn: swatchesIn(sheet),
    tile: tile(sheet, words),
    colour,
    swatch: cellSwatch(colour),
    munsell: munsellPlace(sheet),
    lightness: munsell !== undefined && isKnown(munsell) ? Math.round(10 * munsell.value) : -1,
    isMeasured: hex !== undefined && isKnown(hex) && hex.restsOn === "measured",
    isLetDown: sheet.tints.length > 0,
    isNearNeutral: isNearNeutral(sheet),
    filters: rowFilters(sheet),
    keys: orderKeys(sheet, words),
    cells: orderCells(worded, words),
    oil: oilCells(worded, words),
    strength: strengthCells(worded, words),
  };
}

function card(sheet: Sheet, words: Words): ColourRow["card"] {
  const swatch = swatchOf(sheet, tellingTint(sheet)?.colour);
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
    // A name stays whole; between two names a line may break.
    pigments: sheet.pigments
      .map(({ colourIndexName, name }) => colourIndexName?.replaceAll(" ", "\u00a0") ?? name)
      .join(", "),
    ...(swatch === undefined ? { noSwatch: words.pages.catalogue.noSwatch } : { swatch }),
    ...(munsell !== undefined && isKnown(munsell)
      ? { line: `Munsell ${munsell.value}` }
      : isTintAlone(sheet) && { line: words.pages.catalogue.tintAlone }),
    ...(warning !== undefined && { signalWord: warning }),
  };
}

function swatchesIn(sheet: Sheet): ColourRow["swatchIn"] {
  return Object.fromEntries(
    sheet.tints.flatMap(({ white: { slug } }) => {
      const swatch = swatchOf(sheet, tellingTint(sheet, slug)?.colour);
      return swatch === undefined ? [] : [[slug, swatch] as const];
    }),
  );
}

/** Masstone above, and a tint below it. */
function swatchOf(sheet: Sheet, tint: ColourRow["colour"]): ColourRow["swatch"] | undefined {
  const shown = [ownColour(sheet.notations.masstone), tint].filter((one) => one !== undefined);
  return shown.length === 0 ? undefined : cardSwatch(shown, sheet.name);
}

/** Whether what is shown of a colour is a tint, for want of a reading of the colour itself. */
function isTintAlone(sheet: Sheet): boolean {
  return ownColour(sheet.notations.masstone) === undefined && tellingTint(sheet) !== undefined;
}

function tile(sheet: Sheet, words: Words): ColourRow["tile"] {
  const colours = [ownColour(sheet.notations.masstone), tellingTint(sheet)?.colour].filter(
    (colour) => colour !== undefined,
  );
  return {
    colours,
    ...(colours.length === 0 && { missing: words.pages.catalogue.noSwatch }),
    ...(sheet.discontinued !== undefined
      ? { note: words.pages.catalogue.madeNoMore }
      : isTintAlone(sheet) && { note: words.pages.catalogue.tintAlone }),
  };
}
