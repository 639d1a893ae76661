/** Cells that the tables of the range share, whatever order they are in. */
import { isKnown } from "../quantities/figure.ts";
import { valueText } from "../present/figure-text.ts";
import { standingView } from "../present/standing-view.ts";
import { asMarkup, type CellView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Words } from "../words/words.ts";
import { cellSwatch } from "../plots/small-swatch.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { comparableColour } from "./screen-swatch.ts";
import { NO_VALUE } from "../words/no-value.ts";
import type { PagePlace } from "./page-context.ts";

/** A colour's name, the way to its sheet, and its swatch where it has one. */
export function colourCell({ name, slug, notations }: Sheet, { root }: PagePlace): CellView {
  const colour = comparableColour(notations.masstone);
  return {
    text: name,
    href: `${root}colours/${slug}/`,
    swatch: asMarkup(cellSwatch(colour)),
  };
}

/** A figure without its unit, which the column's head has. */
export function figureCell(worded: SheetTexts, path: string, words: Words): CellView {
  const { row, figure } = worded.leaf(path);
  return isKnown(figure)
    ? { text: valueText(row, figure, words), standing: standingView(figure, words) }
    : notStatedCell(words);
}

export function notStatedCell(words: Words): CellView {
  return { text: NO_VALUE, reason: words.standings["not stated"].word };
}
