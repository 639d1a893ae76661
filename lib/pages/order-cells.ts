/** Cells that the tables of the range share, whatever order they are in. */
import { isKnown } from "../quantities/figure.ts";
import { valueText } from "../present/figure-text.ts";
import { standingView } from "../present/standing-view.ts";
import type { CellView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Words } from "../words/words.ts";
import { NO_VALUE } from "../words/no-value.ts";
import type { ColourRow } from "./colour-row.ts";
import type { SheetPath } from "../sheet/sheet-path.ts";

/** Cells of the tables in most orders, behind a colour's name. */
export function orderCells(worded: SheetTexts, words: Words): CellView[] {
  const { pigments, permanence } = worded.sheet;
  return [
    {
      text: pigments.map(({ colourIndexName, name }) => colourIndexName ?? name).join(", "),
    },
    withoutStanding(cell(worded, "notations.masstone.munsell.text", words)),
    isKnown(permanence.category)
      ? {
          ...cell(worded, "permanence.category", words),
          ...(permanence.basis === "own exposure" && { note: words.pages.paint.permanence.cell }),
        }
      : cell(worded, "permanence.expectation", words),
    cell(worded, "optics.opacityClass", words),
    cell(worded, "drying.class", words),
    cell(worded, "oil.oilIndexGPer100g", words),
  ];
}

function cell(worded: SheetTexts, path: SheetPath, words: Words): CellView {
  return worded.has(path)
    ? figureCell(worded, path, words)
    : { text: NO_VALUE, reason: words.pages.catalogue.notRead };
}

function withoutStanding(own: CellView): CellView {
  const { standing: _standing, ...rest } = own;
  return rest;
}

export function oilCells(worded: SheetTexts, words: Words): CellView[] {
  return [
    figureCell(worded, "oil.oilIndexGPer100g", words),
    figureCell(worded, "oil.oilGPer100cm3", words),
  ];
}

export function strengthCells(worded: SheetTexts, words: Words): ColourRow["strength"] {
  return {
    beside: [
      figureCell(worded, "optics.tintingStrengthByVolume", words),
      figureCell(worded, "optics.tintingStrength", words),
    ],
    ...partsOfWhite(worded, words),
  };
}

/** Parts of the first white that brings it to L* 50, and which white. */
function partsOfWhite(
  worded: SheetTexts,
  words: Words,
): Pick<ColourRow["strength"], "parts" | "white"> {
  const tint = worded.sheet.tints.find(
    ({ strengthParts }) => strengthParts !== undefined && isKnown(strengthParts.byVolume),
  );
  if (tint === undefined) return { parts: notStatedCell(words) };
  const { slug, name } = tint.white;
  return {
    parts: figureCell(worded, `tints.${slug}.strengthParts.byVolume`, words),
    white: name,
  };
}

/** A figure without its unit, which the column's head has. */
export function figureCell(worded: SheetTexts, path: SheetPath, words: Words): CellView {
  const { row, figure } = worded.leaf(path);
  return isKnown(figure)
    ? { text: valueText(row, figure, words), standing: standingView(figure, words) }
    : notStatedCell(words);
}

export function notStatedCell(words: Words): CellView {
  return { text: NO_VALUE, reason: words.standings["not stated"].word };
}
