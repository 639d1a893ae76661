/**
 * Sinking-in: a film that loses its gloss, in patches, to what lies below it.
 *
 * @source practice-drying
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import { ends, type Quantity } from "../quantities/interval.ts";
import type { Statement } from "../quantities/statement.ts";

export interface SinkingLimit {
  /** Largest reduced PVC [1] of the row, inclusive. */
  readonly reducedPvcMax: number;
  readonly rule: string;
}

/** How easily a paint loses its gloss to what lies below. */
export const SINKING_LIMITS = [
  { reducedPvcMax: 0.9, rule: "sinks-in-on-absorbent-ground-alone" },
  { reducedPvcMax: 1, rule: "sinks-in-easily" },
  { reducedPvcMax: Infinity, rule: "dull-of-itself" },
] as const satisfies readonly SinkingLimit[];

/**
 * @param reducedPvc PVC over effective CPVC [1], > 0; an estimate is judged by its drier end.
 * @returns the row's ruling, and oiling out where that mends it: what is dull of itself it does not mend.
 * @throws RangeError when the drier end is not above 0.
 */
export function sinkingInRulings(reducedPvc: Quantity): Statement[] {
  const decidedAt = ends(reducedPvc)[1];
  if (!(decidedAt > 0)) throw domainError("reduced PVC", decidedAt, "0 < reduced PVC");
  const { rule } =
    SINKING_LIMITS.find((row) => decidedAt <= row.reducedPvcMax) ?? SINKING_LIMITS[2];
  const ruling: Statement = {
    rule,
    values: { reducedPvc, decidedAt },
    standing: "estimated",
    source: "practice-drying",
  };
  if (rule === "dull-of-itself") return [ruling];
  return [
    ruling,
    { rule: "oiling-out", values: {}, standing: "estimated", source: "practice-drying" },
  ];
}
