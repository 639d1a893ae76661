/** What a handbook expects of a pigment, by Colour Index generic name and, where that is not enough, by kind. */
import { spanning, type Quantity, type Interval } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";
import type { SourceKey } from "../sources/source.ts";

export interface HandbookRow {
  /** What the trade calls it: parts raw umber from burnt sienna, both PBr 7. */
  readonly kind: string;
  /** Colour Index names, or chemical classes, that the figure holds for. */
  readonly pigments: readonly string[];
  /** As the source gives it: one figure or a range. */
  readonly figure: Quantity;
  readonly source: SourceKey;
}

/** How far lots of a pigment stray from a handbook's single figure, either way [1]: an estimate. */
const LOT_SPREAD = 0.05;

export type HandbookStatement = StatementOf<
  "handbook-range",
  {
    readonly colourIndexName: string;
    readonly kinds: readonly string[];
    readonly range: Interval;
  }
>;

export interface HandbookEstimate {
  readonly estimate: Interval;
  readonly rows: readonly HandbookRow[];
  readonly reason: HandbookStatement;
}

export interface PigmentIdentity {
  readonly colourIndexName: string;
  /** Narrows a name that covers several pigments; a kind the table lacks narrows nothing. */
  readonly kind?: string | undefined;
}

/**
 * The range that handbooks' rows for one pigment span, a single figure widened by {@link LOT_SPREAD}.
 *
 * @param known rows for this pigment alone.
 * @returns undefined when there is none.
 * @example handbookEstimate([{ kind: "lamp black", figure: [1.7, 1.8], ... }], { colourIndexName: "PBk 6" })?.estimate // [1.7, 1.8]
 */
export function handbookEstimate(
  known: readonly HandbookRow[],
  pigment: PigmentIdentity,
): HandbookEstimate | undefined {
  const rows = ofKind(known, pigment.kind);
  const [first] = rows;
  if (first === undefined) return undefined;
  const estimate = spanning(
    rows.map(({ figure }): Interval =>
      typeof figure === "number" ? [figure * (1 - LOT_SPREAD), figure * (1 + LOT_SPREAD)] : figure,
    ),
  );
  return {
    estimate,
    rows,
    reason: {
      rule: "handbook-range",
      standing: "estimated",
      // A recalled row makes the whole range recalled.
      source: (rows.find(({ source }) => source === "memory-formulation") ?? first).source,
      values: {
        colourIndexName: pigment.colourIndexName,
        kinds: rows.map((row) => row.kind),
        range: estimate,
      },
    },
  };
}

function ofKind(rows: readonly HandbookRow[], kind: string | undefined): readonly HandbookRow[] {
  const narrowed = rows.filter((row) => row.kind === kind);
  return narrowed.length === 0 ? rows : narrowed;
}
