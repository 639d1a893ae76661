/**
 * Finish of a dry oil-colour film, as expected from its reduced PVC.
 *
 * House-paint class edges (gloss below .5) do not fit oil pastes, which sit at
 * .6-.95: these are for a well opened oil paste, judged by PVC over *effective* CPVC.
 *
 * @source practice-formulation : the limits are an estimate.
 * @source hansen-lowinger-sadoff-1993 : matte and paler, abruptly, once voids open.
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import { ends, midpoint, type Quantity } from "../quantities/interval.ts";
import type { Statement } from "../quantities/statement.ts";

/** Glossiest first. */
export const FINISHES = ["gloss", "semi-gloss", "satin", "matte"] as const;
export type Finish = (typeof FINISHES)[number];

export interface FinishLimit {
  readonly finish: Finish;
  /** Reduced PVC [1] at which the next row begins. */
  readonly reducedPvcTo: number;
  /** Whether `reducedPvcTo` itself still belongs to this row. */
  readonly inclusive: boolean;
  readonly rule: string;
}

export const FINISH_LIMITS: readonly FinishLimit[] = [
  { finish: "gloss", reducedPvcTo: 0.9, inclusive: false, rule: "oil-in-excess" },
  { finish: "semi-gloss", reducedPvcTo: 0.97, inclusive: false, rule: "oil-little-in-excess" },
  { finish: "satin", reducedPvcTo: 1, inclusive: true, rule: "oil-just-fills" },
  { finish: "matte", reducedPvcTo: Infinity, inclusive: false, rule: "film-holds-voids" },
];

export interface FinishRuling {
  readonly finish: Finish;
  readonly limit: FinishLimit;
  /** Every finish that the estimate reaches into, glossiest first. */
  readonly spans: readonly Finish[];
  readonly reason: Statement;
}

/**
 * @param lambda reduced PVC [1], > 0; an estimate's two ends are judged at their middle.
 * @throws RangeError when an end is not a finite number above 0.
 * @example finishRuling(0.86).finish // "gloss"
 */
export function finishRuling(lambda: Quantity): FinishRuling {
  const [lower, upper] = ends(lambda);
  for (const end of [lower, upper]) {
    if (!(end > 0 && end < Infinity))
      throw domainError("reduced PVC", end, "0 < reduced PVC < Infinity");
  }
  const decidedAt = midpoint(lambda);
  const limit = limitOf(decidedAt);
  const spans = FINISHES.slice(
    FINISHES.indexOf(limitOf(lower).finish),
    FINISHES.indexOf(limitOf(upper).finish) + 1,
  );
  return {
    finish: limit.finish,
    limit,
    spans,
    reason: {
      rule: limit.rule,
      values: { finish: limit.finish, reducedPvc: lambda, decidedAt, spans },
      standing: "estimated",
      source: limit.finish === "matte" ? "hansen-lowinger-sadoff-1993" : "practice-formulation",
    },
  };
}

function limitOf(lambda: number): FinishLimit {
  for (const limit of FINISH_LIMITS) {
    if (lambda < limit.reducedPvcTo || (limit.inclusive && lambda === limit.reducedPvcTo))
      return limit;
  }
  throw new Error("Unreachable: the last finish limit is open");
}
