import type { Range } from "../quantities/range.ts";
import type { Ruling, RulingValue } from "../quantities/ruling.ts";
import type { SourceKey } from "../sources/source.ts";

export type DryingSign = "faster" | "none" | "slower";

/** One thing that moves the drying time, with what it multiplies the days by. */
export interface Contribution extends Ruling {
  readonly sign: DryingSign;
  /** Days over days without it [1]. */
  readonly factor: Range;
}

export function contribution(
  rule: string,
  sign: DryingSign,
  factor: Range,
  values: Readonly<Record<string, RulingValue>>,
  source: SourceKey,
): Contribution {
  return { rule, sign, factor, values: { ...values, factor }, standing: "estimated", source };
}

/** A factor that acts in part: raised to the share, 0-1. */
export function inPart([lower, upper]: Range, share: number): Range {
  return [lower ** share, upper ** share];
}

/** Factors together. */
export function product(factors: readonly Range[]): Range {
  return factors.reduce<Range>(
    ([lower, upper], [less, more]) => [lower * less, upper * more],
    [1, 1],
  );
}

/** Range over a base range, end by end, lower end first. */
export function ratio([lower, upper]: Range, [baseLower, baseUpper]: Range): Range {
  const [one, other] = [lower / baseLower, upper / baseUpper];
  return [Math.min(one, other), Math.max(one, other)];
}
