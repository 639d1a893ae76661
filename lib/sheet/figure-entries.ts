import { isFigure, type Figure, type FigurePath } from "../quantities/figure.ts";
import type { Declared, Shape } from "./declaration.ts";
import { figureRow, type FigureRow } from "./figure-table.ts";
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
  visit(SHEET, sheet, "", "");
  return found;

  function visit(declared: Declared, node: unknown, path: FigurePath, pattern: string): void {
    if (isFigure(node)) found.push({ path, row: figureRow(pattern), figure: node });
    else
      for (const { name, star, part, value } of partsOf(declared, node, path))
        visit(part, value, pathBelow(path, name), pathBelow(pattern, star));
  }
}

/** The figure at a path of a sheet, where it has one there; found without going through all of them. */
export function figureEntry(sheet: PartsOfSheet, path: FigurePath): FigureEntry | undefined {
  return found(SHEET, sheet, path, "");

  function found(
    declared: Declared,
    node: unknown,
    rest: string,
    pattern: string,
  ): FigureEntry | undefined {
    if (isFigure(node))
      return rest === "" ? { path, row: figureRow(pattern), figure: node } : undefined;
    for (const { name, star, part, value } of partsOf(declared, node, path)) {
      if (rest !== name && !rest.startsWith(`${name}.`)) continue;
      const below = found(part, value, rest.slice(name.length + 1), pathBelow(pattern, star));
      if (below !== undefined) return below;
    }
    return undefined;
  }
}

/** Of a part by its name; the path of the sheet itself is empty. */
export function pathBelow(path: string, name: string): string {
  return path === "" ? name : `${path}.${name}`;
}

export interface Part {
  /** Its key in sheet.json, and how a path and a pattern call it. */
  readonly key: string;
  readonly name: string;
  readonly star: string;
  readonly part: Declared;
  readonly value: unknown;
}

/** What a sheet has at a place, by what is declared there. @throws RangeError for what is not declared. */
export function partsOf({ shape }: Declared, node: unknown, path: string): Part[] {
  if (node === undefined || node === null || shape.form === "plain") return [];
  if (shape.form === "list" && Array.isArray(node))
    return node.map((value: unknown, i) => ({
      key: String(i),
      name: memberName(value, i),
      star: "*",
      part: shape.member,
      value,
    }));
  if (shape.form === "figure" || shape.form === "list" || typeof node !== "object")
    throw new RangeError(`${path} is no ${shape.form}, as it is declared`);
  const values = new Map(Object.entries(node));
  const parts = declaredParts(shape).flatMap(({ key, ...of }) =>
    values.has(key) ? [{ key, name: key, ...of, value: values.get(key) as unknown }] : [],
  );
  if (parts.length === values.size) return parts;
  const told = new Set(parts.map(({ key }) => key));
  const stranger = [...values.keys()].find((key) => !told.has(key)) ?? "";
  throw new RangeError(`${pathBelow(path, stranger)} is not declared in its section`);
}

/** In the order of the declaration, whatever order a section was put together in. */
function declaredParts(
  shape: Extract<Shape, { form: "members" | "map" }>,
): readonly Pick<Part, "key" | "star" | "part">[] {
  return shape.form === "members"
    ? Object.entries(shape.members).map(([key, part]) => ({ key, star: key, part }))
    : shape.keys.map((key) => ({ key, star: "*", part: shape.member }));
}

/** An array's member goes by its slug, a tint by its white's, a step by its ratio, a film by its micrometres: paths then survive a new neighbour. */
export function memberName(member: unknown, index: number): string {
  if (typeof member === "object" && member !== null) {
    if ("slug" in member && typeof member.slug === "string") return member.slug;
    if ("massRatio" in member && typeof member.massRatio === "string") return member.massRatio;
    if ("filmUm" in member && typeof member.filmUm === "number") return String(member.filmUm);
    if ("white" in member) return memberName(member.white, index);
  }
  return String(index);
}
