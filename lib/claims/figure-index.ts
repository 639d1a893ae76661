import { nearestWord } from "../diagnostics/nearest-word.ts";
import { FIGURE_TABLE } from "../sheet/figure-table.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { figureEntries, type FigureEntry } from "../sheet/figure-entries.ts";

/** A figure of one colour of the range. */
export interface RangeFigure {
  readonly sheet: Sheet;
  readonly leaf: FigureEntry;
}

/** Why a path leads to no figure: no such colour, no such figure anywhere, or one that this colour's sheet does not have. */
export interface LostPath {
  readonly lost: "colour" | "figure" | "member";
  readonly nearest?: string;
}

/** Every figure of a range, by colour and path: `lamp-black.oil.oilIndexGPer100g`. */
export interface FigureIndex {
  readonly sheets: readonly Sheet[];
  readonly sheet: (slug: string) => Sheet | undefined;
  /** The figure at a path, or why there is none: that looks for the nearest path, which takes its time. */
  readonly figure: (path: string) => RangeFigure | LostPath;
  /** The same, without a reason. */
  readonly figureIfAny: (path: string) => RangeFigure | undefined;
  /** Paths of one colour's figures, without the colour. */
  readonly paths: (slug: string) => readonly string[];
}

export function figureIndex(sheets: readonly Sheet[]): FigureIndex {
  const bySlug = new Map(
    sheets.map((sheet) => [
      sheet.slug,
      { sheet, byPath: new Map(figureEntries(sheet).map((leaf) => [leaf.path, leaf])) },
    ]),
  );
  const figureIfAny = (path: string): RangeFigure | undefined => {
    const { colour, figure } = pathParts(path);
    const entry = bySlug.get(colour);
    const leaf = entry?.byPath.get(figure);
    return entry && leaf && { sheet: entry.sheet, leaf };
  };
  return {
    sheets,
    figureIfAny,
    sheet: (slug) => bySlug.get(slug)?.sheet,
    paths: (slug) => [...(bySlug.get(slug)?.byPath.keys() ?? [])],
    figure: (path) => {
      const found = figureIfAny(path);
      if (found !== undefined) return found;
      const { colour, figure } = pathParts(path);
      const entry = bySlug.get(colour);
      if (entry === undefined) return lost("colour", nearestWord(colour, bySlug.keys()));
      const near = nearestWord(figure, entry.byPath.keys());
      return lost(
        isPattern(figure) ? "member" : "figure",
        near === undefined ? undefined : `${colour}.${near}`,
      );
    },
  };
}

/** `lamp-black` and `oil.oilIndexGPer100g` of `lamp-black.oil.oilIndexGPer100g`. */
export function pathParts(path: string): { readonly colour: string; readonly figure: string } {
  const dot = path.indexOf(".");
  return dot < 0
    ? { colour: path, figure: "" }
    : { colour: path.slice(0, dot), figure: path.slice(dot + 1) };
}

function lost(what: LostPath["lost"], nearest: string | undefined): LostPath {
  return { lost: what, ...(nearest === undefined ? {} : { nearest }) };
}

/** Whether a row of the figure table has this form, whatever its members are called. */
function isPattern(figure: string): boolean {
  return PATTERNS.some((pattern) => pattern.test(figure));
}

const PATTERNS = FIGURE_TABLE.map(
  ({ pattern }) => new RegExp(`^${pattern.replaceAll(".", "\\.").replaceAll("*", "[^.]+")}$`),
);
