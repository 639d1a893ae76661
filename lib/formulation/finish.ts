/**
 * Finish of a dry oil-colour film, as expected from its reduced PVC.
 *
 * House-paint class edges (gloss below .5) do not fit oil pastes, which sit at
 * .6-.95: these are for a well opened oil paste, judged by PVC over *effective* CPVC.
 *
 * @source practice-formulation : the limits are an estimate.
 * @source hansen-lowinger-sadoff-1993 : matte and paler, abruptly, once voids open.
 */
import { midpoint, type Quantity } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";
import { certain } from "../quantities/at.ts";
import { positiveEnds } from "./required-domain.ts";

/** Glossiest first. */
export const FINISHES = ["gloss", "semi-gloss", "satin", "matte"] as const;
export type Finish = (typeof FINISHES)[number];

type PackingRule = "oil-in-excess" | "oil-little-in-excess" | "oil-just-fills" | "film-holds-voids";

export type FinishStatement =
  | StatementOf<
      PackingRule,
      {
        readonly finish: Finish;
        /** PVC over effective CPVC [1]. */
        readonly reducedPvc: Quantity;
        /** Every finish that the estimate reaches into, glossiest first. */
        readonly spans: readonly Finish[];
      }
    >
  | StatementOf<
      "clumps-make-voids",
      {
        readonly finish: Finish;
        readonly reducedPvc: Quantity;
        /** PVC over the CPVC of a well opened paste [1]. */
        readonly reducedPvcOpened: Quantity;
      }
    >
  | StatementOf<"finish-not-told", { readonly reducedPvc: Quantity }>;

export interface FinishLimit {
  readonly finish: Finish;
  /** Reduced PVC [1] at which the next row begins. */
  readonly reducedPvcTo: number;
  /** Whether `reducedPvcTo` itself still belongs to this row. */
  readonly inclusive: boolean;
  readonly rule: PackingRule;
}

export const FINISH_LIMITS: readonly FinishLimit[] = [
  { finish: "gloss", reducedPvcTo: 0.9, inclusive: false, rule: "oil-in-excess" },
  { finish: "semi-gloss", reducedPvcTo: 0.97, inclusive: false, rule: "oil-little-in-excess" },
  { finish: "satin", reducedPvcTo: 1, inclusive: true, rule: "oil-just-fills" },
  { finish: "matte", reducedPvcTo: Infinity, inclusive: false, rule: "film-holds-voids" },
];

export interface FinishRuling {
  /** Undefined where the estimate reaches from gloss to matte, and so tells nothing. */
  readonly finish: Finish | undefined;
  /** Every finish that the estimate reaches into, glossiest first. */
  readonly spans: readonly Finish[];
  readonly reason: FinishStatement;
}

/**
 * @param lambda PVC over effective CPVC [1], > 0; an estimate's two ends are judged at their middle.
 * @param lambdaOpened PVC over the CPVC of a well opened paste [1]: tells whether it is the clumps that make voids.
 * @throws RangeError when an end is not a finite number above 0.
 * @example finishRuling(0.86).finish // "gloss"
 */
export function finishRuling(lambda: Quantity, lambdaOpened: Quantity = lambda): FinishRuling {
  const [lower, upper] = positiveEnds("reduced PVC", lambda, "");
  const [, upperOpened] = positiveEnds("reduced PVC", lambdaOpened, "");
  const { finish, rule } = limitOf(midpoint(lambda));
  const spans = FINISHES.slice(
    FINISHES.indexOf(limitOf(lower).finish),
    FINISHES.indexOf(limitOf(upper).finish) + 1,
  );
  const evidence = {
    standing: "estimated",
    source: finish === "matte" ? "hansen-lowinger-sadoff-1993" : "practice-formulation",
  } as const;
  if (spans.length === FINISHES.length)
    return {
      finish: undefined,
      spans,
      reason: { rule: "finish-not-told", values: { reducedPvc: lambda }, ...evidence },
    };
  const opened = limitOf(upperOpened);
  return {
    finish,
    spans,
    reason:
      finish === "matte" && opened.finish !== "matte"
        ? {
            rule: "clumps-make-voids",
            values: { finish, reducedPvc: lambda, reducedPvcOpened: lambdaOpened },
            ...evidence,
          }
        : { rule, values: { finish, reducedPvc: lambda, spans }, ...evidence },
  };
}

function limitOf(lambda: number): FinishLimit {
  return certain(
    FINISH_LIMITS.find(
      (limit) => lambda < limit.reducedPvcTo || (limit.inclusive && lambda === limit.reducedPvcTo),
    ),
  );
}
