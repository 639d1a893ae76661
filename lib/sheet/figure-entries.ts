import { certain } from "../quantities/at.ts";
import { isFigure, type Figure, type FigurePath } from "../quantities/figure.ts";
import type { Declared, Shape } from "./declaration.ts";
import { figureRow, type FigureRow } from "./figure-table.ts";
import { memberName, pathBelow } from "./figure-path.ts";
import { SHEET, type Sheet } from "./sheet.ts";

/** One figure of a sheet with its place and the row of the figure table that it fills. */
export interface FigureEntry {
  readonly path: FigurePath;
  readonly row: FigureRow;
  readonly figure: Figure;
}

/** A sheet as far as it is worked out. */
export type PartsOfSheet = {
  readonly [Part in keyof Sheet]?: Sheet[Part] extends readonly unknown[] | undefined
    ? Sheet[Part]
    : Partial<Sheet[Part]>;
};

/** Every figure of a sheet, known or not, with its path and row. */
export function figureEntries(sheet: PartsOfSheet): FigureEntry[] {
  const found: FigureEntry[] = [];
  visit(WHOLE_SHEET, sheet, "");
  return found;

  function visit(place: DeclaredPlace, node: unknown, path: FigurePath): void {
    if (isFigure(node)) found.push({ path, row: place.row(), figure: node });
    else
      for (const { name, part, value } of partsOf(place, node, path))
        visit(part, value, pathBelow(path, name));
  }
}

/** The figure at a path of a sheet, where it has one there; found without going through all of them. */
export function figureEntry(sheet: PartsOfSheet, path: FigurePath): FigureEntry | undefined {
  return found(WHOLE_SHEET, sheet, path);

  function found(place: DeclaredPlace, node: unknown, rest: string): FigureEntry | undefined {
    if (isFigure(node)) return rest === "" ? { path, row: place.row(), figure: node } : undefined;
    const leadsOn = (name: string): boolean => rest === name || rest.startsWith(`${name}.`);
    for (const { name, part, value } of partsOf(place, node, path, leadsOn)) {
      const below = found(part, value, rest.slice(name.length + 1));
      if (below !== undefined) return below;
    }
    return undefined;
  }
}

/** What is declared at a place of a sheet: places are gone through again and again, and each looks up its row once. */
export interface DeclaredPlace {
  readonly declared: Declared;
  /** Of a figure. @throws RangeError for what is none. */
  readonly row: () => FigureRow;
  /** Of a part by its key, of a list by none; undefined where none is declared. */
  readonly below: (key?: string) => DeclaredPlace | undefined;
}

const ONE_OF_MANY = "*";
export const WHOLE_SHEET: DeclaredPlace = declaredPlace(SHEET, "");

function declaredPlace(declared: Declared, pattern: string): DeclaredPlace {
  const { shape } = declared;
  const known = new Map<string, DeclaredPlace>();
  let row: FigureRow | undefined;
  return {
    declared,
    row: () => (row ??= figureRow(pattern)),
    below: (key = ONE_OF_MANY) => {
      const before = known.get(key);
      if (before !== undefined) return before;
      const part = partOf(shape, key);
      if (part === undefined) return undefined;
      const place = declaredPlace(
        part,
        pathBelow(pattern, shape.form === "members" ? key : ONE_OF_MANY),
      );
      known.set(key, place);
      return place;
    },
  };
}

function partOf(shape: Shape, key: string): Declared | undefined {
  if (shape.form === "members") return shape.members[key];
  if (shape.form === "list") return shape.member;
  return shape.form === "map" && shape.keys.includes(key) ? shape.member : undefined;
}

export interface Part {
  /** Its key in sheet.json, and how a path calls it. */
  readonly key: string;
  readonly name: string;
  readonly part: DeclaredPlace;
  readonly value: unknown;
}

/**
 * What a sheet has at a place, by what is declared there.
 * @param isWanted of all that it has there, by name.
 * @throws RangeError for what is not declared.
 */
export function partsOf(
  { declared: { shape }, below }: DeclaredPlace,
  node: unknown,
  path: string,
  isWanted: (name: string) => boolean = () => true,
): Part[] {
  if (node === undefined || node === null || shape.form === "plain") return [];
  const parts: Part[] = [];
  if (shape.form === "list" && Array.isArray(node)) {
    const part = certain(below());
    for (const [i, value] of (node as readonly unknown[]).entries()) {
      const name = memberName(value, i);
      if (isWanted(name)) parts.push({ key: String(i), name, part, value });
    }
    return parts;
  }
  if (shape.form === "figure" || shape.form === "list" || typeof node !== "object")
    throw new RangeError(`${path} is no ${shape.form}, as it is declared`);
  const own = node as Readonly<Record<string, unknown>>;
  for (const key of Object.keys(own)) {
    if (!isWanted(key)) continue;
    const part = below(key);
    if (part === undefined)
      throw new RangeError(`${pathBelow(path, key)} is not declared in its section`);
    parts.push({ key, name: key, part, value: own[key] });
  }
  return parts;
}
