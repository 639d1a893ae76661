import { nearestWord } from "../diagnostics/nearest-word.ts";
import { readWhenAsked } from "../kept/reads.ts";
import { figureEntries, figureEntry, type FigureEntry } from "../sheet/figure-entries.ts";
import { publishedSheet, type PublishedSheet } from "../sheet/publish-sheet.ts";
import type { SheetPath } from "../sheet/sheet-path.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { figureText } from "./figure-text.ts";
import { statementText } from "./statement-text.ts";
import type { Words } from "../words/words.ts";

/** What pages of the whole range ask of each sheet's published texts. */
export interface SheetInShort {
  /** Keys of the bibliography, each once. */
  readonly sources: readonly string[];
  /** How many of its figures are not stated. */
  readonly notStatedCount: number;
}

/** A sheet with its finished texts: what pages, pictures, paper and sheet.json are all made from. */
export interface SheetTexts {
  readonly sheet: Sheet;
  readonly plain: PublishedSheet;
  readonly inShort: SheetInShort;
  /** @throws RangeError for a path that is no figure of this sheet, with the nearest. */
  readonly leaf: (path: SheetPath) => FigureEntry;
  readonly has: (path: string) => path is SheetPath;
}

/** Holds published texts for a while; they can be made again. */
export type HoldTexts = (made: () => PublishedSheet) => PublishedSheet;

/**
 * The published texts are made when they are first asked for.
 * @param hold how long they are held; without it for as long as the sheet's texts are.
 */
export function sheetTexts(sheet: Sheet, words: Words, hold?: HoldTexts): SheetTexts {
  let short: SheetInShort | undefined;
  const made = (): PublishedSheet => {
    const published = publishedSheet(sheet, {
      ruling: (ruling) => statementText(ruling, words),
      figure: (row, figure) => figureText(row, figure, words),
    });
    // Told now, since whoever asks for it later would have all of it made again.
    short ??= inShort(published);
    return published;
  };
  const plain = hold === undefined ? readWhenAsked(made) : () => hold(made);
  return {
    sheet,
    get plain() {
      return plain();
    },
    get inShort() {
      return short ?? inShort(plain());
    },
    has: (path): path is SheetPath => figureEntry(sheet, path) !== undefined,
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

function inShort({ evidence, notStated }: PublishedSheet): SheetInShort {
  const sources = evidence.flatMap(({ source }) => (typeof source === "string" ? [source] : []));
  return { sources: [...new Set(sources)], notStatedCount: notStated.length };
}
