import { nearestWord } from "../diagnostics/nearest-word.ts";
import { leaves, plainSheet, type Leaf, type PlainSheet } from "../sheet/walk.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { figureText } from "./figure-text.ts";
import { rulingText } from "./ruling-text.ts";
import type { Words } from "./words/words.ts";

/** A sheet with its finished texts: what pages, pictures, paper and sheet.json are all made from. */
export interface WordedSheet {
  readonly sheet: Sheet;
  readonly plain: PlainSheet;
  /** @throws RangeError for a path that is no figure of this sheet, with the nearest. */
  readonly leaf: (path: string) => Leaf;
  readonly has: (path: string) => boolean;
}

export function wordedSheet(sheet: Sheet, words: Words): WordedSheet {
  const byPath = new Map(leaves(sheet).map((leaf) => [leaf.path, leaf]));
  return {
    sheet,
    plain: plainSheet(sheet, {
      ruling: (ruling) => rulingText(ruling, words),
      figure: (row, figure) => figureText(row, figure, words),
    }),
    has: (path) => byPath.has(path),
    leaf: (path) => {
      const found = byPath.get(path);
      if (found !== undefined) return found;
      const near = nearestWord(path, byPath.keys());
      throw new RangeError(
        `Unexpected figure path \`${path}\`, expected \`a figure of ${sheet.slug}\`${near === undefined ? "" : `; nearest \`${near}\``}`,
      );
    },
  };
}
