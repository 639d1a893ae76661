import type { Json } from "./published.ts";

/** One plain value of a sheet.json with its place. */
export interface SheetLeaf {
  /** `tints.titanium-white.atL.50.b` */
  readonly path: string;
  /** The same with `*` for what is one of many alike: `tints.*.atL.*.b`. */
  readonly pattern: string;
  readonly value: unknown;
}

/** Keys below which every key is one of many alike. */
const MAPS = new Set(["xyz", "lab", "atL"]);

/**
 * Every leaf of a sheet.json but its evidence and what is not stated. Members of
 * a list go by their slug, a tint by its white's, a step by its ratio, a glaze by
 * its film, others by number; a list of numbers alone is one leaf: a range or a series.
 */
export function sheetLeaves(sheet: Json): SheetLeaf[] {
  return leavesOf(
    Object.fromEntries(
      Object.entries(sheet).filter(([key]) => key !== "evidence" && key !== "notStated"),
    ),
    [],
    [],
  );
}

function leavesOf(
  value: unknown,
  path: readonly string[],
  pattern: readonly string[],
): SheetLeaf[] {
  if (
    Array.isArray(value) &&
    !(value.length > 0 && value.every((one) => typeof one === "number"))
  ) {
    return value.flatMap((member: unknown, i) =>
      leavesOf(member, [...path, memberName(member) ?? String(i)], [...pattern, "*"]),
    );
  }
  if (typeof value !== "object" || value === null || Array.isArray(value))
    return [{ path: path.join("."), pattern: pattern.join("."), value }];
  return Object.entries(value).flatMap(([key, inner]) =>
    leavesOf(inner, [...path, key], [...pattern, MAPS.has(pattern.at(-1) ?? "") ? "*" : key]),
  );
}

function memberName(member: unknown): string | undefined {
  if (typeof member !== "object" || member === null) return undefined;
  const { slug, massRatio, filmUm, white } = member as {
    slug?: string;
    massRatio?: string;
    filmUm?: number;
    white?: unknown;
  };
  return slug ?? massRatio ?? filmUm?.toString() ?? memberName(white);
}
