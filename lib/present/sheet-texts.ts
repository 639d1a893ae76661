import { nearestWord } from "../diagnostics/nearest-word.ts";
import { readWhenAsked } from "../kept/reads.ts";
import { figureEntries, type FigureEntry } from "../sheet/figure-entries.ts";
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

/** Each made when it is first asked for. */
export function sheetTexts(sheet: Sheet, words: Words): SheetTexts {
  const byPath = readWhenAsked(
    () => new Map(figureEntries(sheet).map((leaf) => [leaf.path, leaf])),
  );
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
    has: (path) => byPath().has(path),
    leaf: (path) => {
      const found = byPath().get(path);
      if (found !== undefined) return found;
      const near = nearestWord(path, byPath().keys());
      throw new RangeError(
        `The figure path is ${path}; right would be a figure of ${sheet.slug}${near === undefined ? "" : `; nearest: ${near}`}`,
      );
    },
  };
}
