import { nearestWord } from "../diagnostics/nearest-word.ts";
import { readWhenAsked } from "../kept/reads.ts";
import { certain } from "../quantities/at.ts";
import { FIGURE_TABLE } from "../sheet/figure-table.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { figureEntries, figureEntry, type FigureEntry } from "../sheet/figure-entries.ts";
import type { SheetPath } from "../sheet/sheet-path.ts";

/** A figure of one colour of the range. */
export interface RangeFigure {
  readonly sheet: Sheet;
  readonly leaf: FigureEntry;
}

/** Why a path leads to no figure: no such colour, no such figure anywhere, or one that this colour's sheet does not have. */
export interface LostPath {
  readonly lost: "colour" | "figure" | "member";
  readonly nearest?: string;
  /** Of a path that leads to several: these. */
  readonly within?: readonly string[];
  /** Where nothing is near: what its part of the sheet has. */
  readonly beside?: readonly string[];
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

/** Figures of one sheet by their paths. */
export interface FiguresOfSheet {
  readonly sheet: Sheet;
  readonly has: (path: string) => path is SheetPath;
  readonly leaf: (path: SheetPath) => FigureEntry;
}

/** @param texts that know their figures by themselves, so that one figure is no reading of a whole sheet. */
export function figureIndex(
  sheets: readonly Sheet[],
  texts: readonly FiguresOfSheet[] = sheets.map(figuresOf),
): FigureIndex {
  const bySlug = new Map(
    texts.map((own) => [
      own.sheet.slug,
      {
        sheet: own.sheet,
        has: own.has,
        leaf: own.leaf,
        paths: readWhenAsked(() => figureEntries(own.sheet).map(({ path }) => path)),
      },
    ]),
  );
  const figureIfAny = (path: string): RangeFigure | undefined => {
    const { colour, figure } = pathParts(path);
    const entry = bySlug.get(colour);
    return entry?.has(figure) === true
      ? { sheet: entry.sheet, leaf: entry.leaf(figure) }
      : undefined;
  };
  return {
    sheets,
    figureIfAny,
    sheet: (slug) => bySlug.get(slug)?.sheet,
    paths: (slug) => bySlug.get(slug)?.paths() ?? [],
    figure: (path) => {
      const found = figureIfAny(path);
      if (found !== undefined) return found;
      const { colour, figure } = pathParts(path);
      const entry = bySlug.get(colour);
      if (entry === undefined) return lost("colour", meantColour(path));
      const within = entry.paths().filter((path) => path.startsWith(`${figure}.`));
      if (within.length > 0)
        return { lost: "figure", within: within.map((path) => `${colour}.${path}`) };
      const near = nearestWord(figure, entry.paths());
      const what = isPattern(figure) ? "member" : "figure";
      if (near !== undefined) return lost(what, `${colour}.${near}`);
      const part = figure.slice(0, figure.lastIndexOf(".") + 1);
      return {
        lost: what,
        beside:
          what === "figure"
            ? pathsBeside(figure, entry.paths())
            : entry.paths().filter((path) => part !== "" && path.startsWith(part)),
      };
    },
  };

  /** A colour's name misspelt, or left out before the figure. */
  function meantColour(path: string): string | undefined {
    const near = nearestWord(pathParts(path).colour, bySlug.keys());
    const [owner] = [...bySlug].find(([, { has }]) => near === undefined && has(path)) ?? [];
    return owner === undefined ? near : `${owner}.${path}`;
  }
}

/** Those that share as much of its path as any does; where none shares its section, the sections. */
function pathsBeside(figure: string, paths: readonly string[]): readonly string[] {
  const parts = figure.split(".").slice(0, -1);
  for (; parts.length > 0; parts.pop()) {
    const beside = paths.filter((path) => path.startsWith(`${parts.join(".")}.`));
    if (beside.length > 0) return beside;
  }
  return [...new Set(paths.map((path) => path.split(".")[0] ?? path))];
}

function figuresOf(sheet: Sheet): FiguresOfSheet {
  return {
    sheet,
    has: (path): path is SheetPath => figureEntry(sheet, path) !== undefined,
    leaf: (path) => certain(figureEntry(sheet, path)),
  };
}

/** `lamp-black` and `oil.oilIndexGPer100g` of `lamp-black.oil.oilIndexGPer100g`. */
export function pathParts(path: string): { readonly colour: string; readonly figure: string } {
  const dot = path.indexOf(".");
  return dot < 0
    ? { colour: path, figure: "" }
    : { colour: path.slice(0, dot), figure: path.slice(dot + 1) };
}

/** @param nearest path or member that there is. */
export function lost(what: LostPath["lost"], nearest: string | undefined): LostPath {
  return { lost: what, ...(nearest !== undefined && { nearest }) };
}

/** Of what a path leads to several of, so many are named. */
const NAMED = 6;

/** What a lost path may have been meant to be, for the hint of a complaint. */
export function lostHint({ nearest, within = [], beside = [] }: LostPath): string | undefined {
  const named = within.length > 0 ? within : beside;
  if (named.length === 0) return nearest === undefined ? undefined : `nearest: ${nearest}`;
  const more = named.length - NAMED;
  return `${within.length > 0 ? "it holds" : "there are"} ${named.slice(0, NAMED).join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
}

/** Whether a row of the figure table has this form, whatever its members are called. */
function isPattern(figure: string): boolean {
  return PATTERNS.some((pattern) => pattern.test(figure));
}

const PATTERNS = FIGURE_TABLE.map(
  ({ pattern }) => new RegExp(`^${pattern.replaceAll(".", "\\.").replaceAll("*", "[^.]+")}$`),
);
