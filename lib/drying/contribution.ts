import type { Interval } from "../quantities/interval.ts";
import type { DrierStatement } from "./added-drier-share.ts";
import type { FilmStatement, RoomStatement } from "./film-conditions.ts";
import type { PigmentStatement } from "./pigment-contributions.ts";
import type { OilStatement } from "./vehicle-drying.ts";

export const DRYING_SIGNS = ["faster", "none", "slower", "either way"] as const;
export type DryingSign = (typeof DRYING_SIGNS)[number];

export type ContributionStatement =
  OilStatement | PigmentStatement | DrierStatement | FilmStatement | RoomStatement;

/** One thing that moves the drying time, with what it multiplies the days by. */
export interface Contribution<S = ContributionStatement> {
  readonly sign: DryingSign;
  /** Days over days without it [1]. */
  readonly factor: Interval;
  readonly statement: S;
}

/** Which way a factor goes. */
export function signOf([least, most]: Interval): DryingSign {
  if (least === 1 && most === 1) return "none";
  if (least >= 1) return "slower";
  return most <= 1 ? "faster" : "either way";
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
