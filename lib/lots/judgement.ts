/** A lot held against its standard, criterion by criterion. */
import type { StatementOf } from "../quantities/statement.ts";
import type { Interval } from "../quantities/interval.ts";

export type Criterion =
  "masstone" | "letDown" | "strength" | "residual" | "fineness" | "oilIndex" | "density";
export type Verdict = "pass" | "near" | "fail";

/** What may differ, by criterion: Delta-E00 [1] at most, strength [%] from and to, fineness [um] at most, the others in percent of the standard. */
export interface Tolerances {
  readonly masstoneDeltaE00: number;
  readonly letDownDeltaE00: number;
  readonly residualDeltaE00: number;
  readonly strengthPercent: Interval;
  /** Without it a fineness is recorded and not judged. */
  readonly finenessUm?: number;
  readonly oilIndexPercent: number;
  readonly densityPercent: number;
}

/** Where a workshop names none. Our own choice: no standard sets them, buyer and maker agree on theirs. */
export const CUSTOMARY_TOLERANCES: Tolerances = {
  masstoneDeltaE00: 1,
  letDownDeltaE00: 1,
  residualDeltaE00: 0.7,
  strengthPercent: [95, 105],
  oilIndexPercent: 5,
  densityPercent: 2,
};

export interface Judged {
  readonly criterion: Criterion;
  readonly verdict: Verdict;
  readonly value: number;
  /** Expanded, coverage factor 2, in the unit of the value; 0 where nobody stated it. */
  readonly uncertainty: number;
  readonly limits: Interval;
  readonly reason: JudgementStatement;
}

export type JudgementStatement = StatementOf<
  "within-tolerance" | "near-its-tolerance" | "out-of-tolerance",
  {
    readonly criterion: Criterion;
    readonly value: number;
    readonly limits: Interval;
    readonly uncertainty: number;
  }
>;

/**
 * A figure against its limits: it passes, or fails, when that holds over its whole uncertainty,
 * and is near where the uncertainty reaches across a limit.
 *
 * @param uncertainty expanded [unit of the value], >= 0.
 * @throws RangeError for a value, limit or uncertainty that is NaN.
 * @source iso-14253-1 : the rule of deciding with uncertainty, in spirit
 */
export function judged(
  criterion: Criterion,
  value: number,
  limits: Interval,
  uncertainty: number,
): Judged {
  if (!(Number.isFinite(value) && uncertainty >= 0 && limits[0] <= limits[1]))
    throw new RangeError(
      `A figure of ${value} \u00b1 ${uncertainty} can't be held against ${limits.join(" to ")}`,
    );
  // A difference is never below nought: an uncertainty that reaches there leaves no doubt.
  const least = limits[0] === 0 ? Math.max(value - uncertainty, 0) : value - uncertainty;
  const [low, high] = [least, value + uncertainty];
  const verdict: Verdict =
    low >= limits[0] && high <= limits[1]
      ? "pass"
      : high < limits[0] || low > limits[1]
        ? "fail"
        : "near";
  const rule = (
    { pass: "within-tolerance", near: "near-its-tolerance", fail: "out-of-tolerance" } as const
  )[verdict];
  return {
    criterion,
    verdict,
    value,
    uncertainty,
    limits,
    reason: {
      rule,
      values: { criterion, value, limits, uncertainty },
      standing: "derived",
    },
  };
}

/** The worst of several verdicts; a lot of which nothing was judged has none. */
export function worstVerdict(verdicts: readonly Verdict[]): Verdict | undefined {
  return (["fail", "near", "pass"] as const).find((verdict) => verdicts.includes(verdict));
}
