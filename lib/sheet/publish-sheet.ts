import {
  isFigure,
  isKnown,
  type Amount,
  type Figure,
  type FigurePath,
  type Known,
} from "../quantities/figure.ts";
import { isStatement, type Statement } from "../quantities/statement.ts";
import { partsOf, WHOLE_SHEET, type DeclaredPlace } from "./figure-entries.ts";
import { pathBelow } from "./figure-path.ts";
import { inputPathsOn } from "./figure-places.ts";
import type { FigureRow } from "./figure-table.ts";
import type { Sheet } from "./sheet.ts";

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

/** A sheet as other programs read it, without what is the workshop's alone: plain values at their paths, and beside them the evidence of each figure. */
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
  const inputPaths = inputPathsOn(sheet.slug);
  const values = published(WHOLE_SHEET, sheet, "") as Record<string, unknown>;
  return { values, evidence, notStated: missing };

  function published(place: DeclaredPlace, node: unknown, path: FigurePath): unknown {
    if (isFigure(node)) return figureValue(node, path, place.row());
    const { form } = place.declared.shape;
    if (form === "plain" || node === undefined || node === null) return plain(node);
    const values: unknown[] = [];
    const byKey: Record<string, unknown> = {};
    for (const { key, name, part, value } of partsOf(place, node, path)) {
      if (part.declared.isPrivate) continue;
      const inner = published(part, value, pathBelow(path, name));
      if (inner === undefined) continue;
      if (form === "list") values.push(inner);
      else byKey[key] = inner;
    }
    return form === "list" ? values : byKey;
  }

  function plain(node: unknown): unknown {
    if (isStatement(node)) return wordedRuling(node);
    if (Array.isArray(node)) return node.map(plain);
    if (typeof node === "number") return sixDigits(node);
    if (typeof node !== "object" || node === null) return node;
    return Object.fromEntries(
      Object.entries(node).flatMap(([key, value]) => {
        const inner = plain(value);
        return inner === undefined ? [] : [[key, inner]];
      }),
    );
  }

  function figureValue(figure: Figure, path: FigurePath, row: FigureRow): unknown {
    if (!isKnown(figure)) {
      missing.push({ figure: path, reason: figure.reason, wanting: figure.wanting });
      return undefined;
    }
    const value = publishedValue(row, figure);
    const { standing, unit, restsOn, method, source, uncertainty, bound, reaches } = figure;
    evidence.push({
      figure: path,
      value,
      unit,
      text: wording.figure(row, figure),
      standing,
      restsOn,
      method,
      inputs: inputPaths(figure),
      ...(source !== undefined && { source }),
      ...(uncertainty !== undefined && { uncertainty: sixDigits(uncertainty) }),
      ...(bound !== undefined && { bound }),
      ...(reaches !== undefined && { reaches }),
    });
    return value;
  }

  /** A bare sentence; a ruling that belongs to a statement, market or operation keeps that beside its text. */
  function wordedRuling(ruling: Statement): unknown {
    const belongsTo = Object.fromEntries(
      Object.entries(ruling)
        .filter(([key]) => !["rule", "values", "standing", "source"].includes(key))
        .map(([key, value]) => [key, plain(value)]),
    );
    const text = wording.ruling(ruling);
    return Object.keys(belongsTo).length === 0
      ? text
      : {
          ...belongsTo,
          rule: ruling.rule,
          text,
          ...(ruling.source !== undefined && { source: ruling.source }),
        };
  }
}

/** As sheet.json has it. */
export function publishedValue({ kind }: FigureRow, { value }: Known<Amount>): Amount {
  return kind === "share" ? value : sixDigits(value);
}

function sixDigits<V>(value: V): V {
  if (typeof value === "number") return Number(value.toPrecision(6)) as V;
  return Array.isArray(value) ? (value.map(sixDigits) as V) : value;
}
