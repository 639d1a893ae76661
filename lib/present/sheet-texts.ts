import { nearestWord } from "../diagnostics/nearest-word.ts";
import { readWhenAsked } from "../kept/reads.ts";
import { figureEntries, figureEntry, type FigureEntry } from "../sheet/figure-entries.ts";
import { publishedSheet, type PublishedSheet } from "../sheet/publish-sheet.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { figureText } from "./figure-text.ts";
import { statementText } from "./statement-text.ts";
import type { Words } from "../words/words.ts";

/** A sheet with its finished texts: what pages, pictures, paper and sheet.json are all made from. */
export interface SheetTexts {
  readonly sheet: Sheet;
  readonly plain: PublishedSheet;
  /** @throws RangeError for a path that is no figure of this sheet, with the nearest. */
  readonly leaf: (path: string) => FigureEntry;
  readonly has: (path: string) => boolean;
}

/** The published texts are made when they are first asked for. */
export function sheetTexts(sheet: Sheet, words: Words): SheetTexts {
  const plain = readWhenAsked(() =>
    publishedSheet(sheet, {
      ruling: (ruling) => statementText(ruling, words),
      figure: (row, figure) => figureText(row, figure, words),
    }),
  );
  return {
    sheet,
    get plain() {
      return plain();
    },
    has: (path) => figureEntry(sheet, path) !== undefined,
    leaf: (path) => {
      const found = figureEntry(sheet, path);
      if (found !== undefined) return found;
      const near = nearestWord(
        path,
        figureEntries(sheet).map((one) => one.path),
      );
      throw new RangeError(
        `The figure path is ${path}; right would be a figure of ${sheet.slug}${near === undefined ? "" : `; nearest: ${near}`}`,
      );
    },
  };
}
