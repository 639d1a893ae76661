import {
  isFigure,
  isKnown,
  type Amount,
  type Figure,
  type FigurePath,
  type Known,
} from "../quantities/figure.ts";
import { isStatement, type Statement } from "../quantities/statement.ts";
import { figureRow, type FigureRow } from "./figure-table.ts";
import type { Sheet } from "./sheet.ts";

/** One figure of a sheet with its place and the row of the figure table that it fills. */
export interface FigureEntry {
  readonly path: FigurePath;
  readonly row: FigureRow;
  readonly figure: Figure;
}

/** How the walk puts rulings and figures into words; lib/present knows. */
export interface Wording {
  readonly ruling: (ruling: Statement) => string;
  readonly figure: (row: FigureRow, figure: Known<Amount>) => string;
}

export interface Wanting {
  readonly figure: FigurePath;
  readonly reason: string;
  readonly wanting: readonly FigurePath[];
}

/** A sheet as other programs read it: plain values at their paths, and beside them the evidence of each figure. */
export interface PublishedSheet {
  readonly values: Readonly<Record<string, unknown>>;
  readonly evidence: readonly Record<string, unknown>[];
  readonly notStated: readonly Wanting[];
}

/**
 * The one walk over a sheet: it writes each figure's plain value at its path and
 * its evidence in the same step, so that neither can be there without the other.
 */
export function publishedSheet(sheet: Sheet, wording: Wording): PublishedSheet {
  const evidence: Record<string, unknown>[] = [];
  const missing: Wanting[] = [];
  const values = plain(sheet, [], []) as Record<string, unknown>;
  return { values, evidence, notStated: missing };

  function plain(node: unknown, path: readonly string[], pattern: readonly string[]): unknown {
    if (isFigure(node)) return figureValue(node, path.join("."), figureRow(pattern.join(".")));
    if (isStatement(node)) return wordedRuling(node);
    if (Array.isArray(node))
      return node.map((member, i) =>
        plain(member, [...path, memberName(member, i)], [...pattern, "*"]),
      );
    if (typeof node === "number") return sixDigits(node);
    if (typeof node !== "object" || node === null) return node;
    return Object.fromEntries(
      Object.entries(node).flatMap(([key, value]) => {
        const inner = plain(value, [...path, key], [...pattern, patternKey(pattern, key)]);
        return inner === undefined ? [] : [[key, inner]];
      }),
    );
  }

  function figureValue(figure: Figure, path: FigurePath, row: FigureRow): unknown {
    if (!isKnown(figure)) {
      missing.push({ figure: path, reason: figure.reason, wanting: figure.wanting });
      return undefined;
    }
    const value = row.kind === "share" ? figure.value : sixDigits(figure.value);
    const { standing, unit, restsOn, method, inputs, source, uncertainty } = figure;
    evidence.push({
      figure: path,
      value,
      unit,
      text: wording.figure(row, figure),
      standing,
      restsOn,
      method,
      inputs,
      ...(source === undefined ? {} : { source }),
      ...(uncertainty === undefined ? {} : { uncertainty: sixDigits(uncertainty) }),
    });
    return value;
  }

  /** A bare sentence; a ruling that belongs to a statement, market or operation keeps that beside its text. */
  function wordedRuling(ruling: Statement): unknown {
    const belongsTo = Object.fromEntries(
      Object.entries(ruling)
        .filter(([key]) => !["rule", "values", "standing", "source"].includes(key))
        .map(([key, value]) => [key, plain(value, [], [])]),
    );
    const text = wording.ruling(ruling);
    return Object.keys(belongsTo).length === 0
      ? text
      : {
          ...belongsTo,
          rule: ruling.rule,
          text,
          ...(ruling.source === undefined ? {} : { source: ruling.source }),
        };
  }
}

/** Every figure of a sheet, known or not, with its path and row. */
export function figureEntries(sheet: Sheet): FigureEntry[] {
  const found: FigureEntry[] = [];
  visit(sheet, [], []);
  return found;

  function visit(node: unknown, path: readonly string[], pattern: readonly string[]): void {
    if (isFigure(node))
      found.push({ path: path.join("."), row: figureRow(pattern.join(".")), figure: node });
    else if (Array.isArray(node))
      node.forEach((member, i) =>
        visit(member, [...path, memberName(member, i)], [...pattern, "*"]),
      );
    else if (typeof node === "object" && node !== null && !isStatement(node)) {
      for (const [key, value] of Object.entries(node))
        visit(value, [...path, key], [...pattern, patternKey(pattern, key)]);
    }
  }
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

/** Keys that name one of many alike stand as `*` in a pattern: viewings and equal lightnesses. */
function patternKey(pattern: readonly string[], key: string): string {
  const parent = pattern.at(-1);
  return parent === "lab" || parent === "xyz" || parent === "atL" ? "*" : key;
}

function sixDigits<V>(value: V): V {
  if (typeof value === "number") return Number(value.toPrecision(6)) as V;
  return Array.isArray(value) ? (value.map(sixDigits) as V) : value;
}
