import { domainError } from "../diagnostics/diagnostic.ts";
import { requirePositive } from "../quantities/positive.ts";
import { ends, type Interval, type Quantity } from "../quantities/interval.ts";

/** Both ends of a quantity. @throws RangeError unless each is a finite number above 0. */
export function positiveEnds(named: string, quantity: Quantity, unit: string): Interval {
  const both = ends(quantity);
  for (const end of both) requirePositive(named, end, unit);
  return both;
}

/** @throws RangeError unless the value lies in 0-1, both ends open: a concentration of nothing, or of nothing else, is no paint. */
export function requireOpenFraction(named: string, value: number): void {
  if (!(value > 0 && value < 1)) throw domainError(named, value, `0 < ${named} < 1`);
}

/** How far a sum of shares may stray from 1 by rounding alone. */
const SUM_TOLERANCE = 1e-6;

/** @throws RangeError unless every share is >= 0 and together they are 1. */
export function requireShares(named: string, shares: readonly number[]): void {
  for (const share of shares) {
    if (!(share >= 0 && share <= 1)) throw domainError(named, share, `0 <= ${named} <= 1`);
  }
  const sum = shares.reduce((total, share) => total + share, 0);
  if (!(Math.abs(sum - 1) <= SUM_TOLERANCE)) throw domainError(`sum of ${named}`, sum, "1");
}
