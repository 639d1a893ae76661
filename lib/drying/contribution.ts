import type { Interval } from "../quantities/interval.ts";
import type { Statement, StatementValue } from "../quantities/statement.ts";
import type { SourceKey } from "../sources/source.ts";

export type DryingSign = "faster" | "none" | "slower";

/** One thing that moves the drying time, with what it multiplies the days by. */
export interface Contribution extends Statement {
  readonly sign: DryingSign;
  /** Days over days without it [1]. */
  readonly factor: Interval;
}

export function contribution(
  rule: string,
  sign: DryingSign,
  factor: Interval,
  values: Readonly<Record<string, StatementValue>>,
  source: SourceKey,
): Contribution {
  return { rule, sign, factor, values: { ...values, factor }, standing: "estimated", source };
}

/** A factor that acts in part: raised to the share, 0-1. */
export function inPart([lower, upper]: Interval, share: number): Interval {
  return [lower ** share, upper ** share];
}

/** Factors together. */
export function product(factors: readonly Interval[]): Interval {
  return factors.reduce<Interval>(
    ([lower, upper], [less, more]) => [lower * less, upper * more],
    [1, 1],
  );
}

/** Range over a base range, end by end, lower end first. */
export function ratio([lower, upper]: Interval, [baseLower, baseUpper]: Interval): Interval {
  const [one, other] = [lower / baseLower, upper / baseUpper];
  return [Math.min(one, other), Math.max(one, other)];
}
