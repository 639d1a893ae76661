import { at } from "./at.ts";

/**
 * The middle of values in any order: of an even count, the mean of the two in the middle.
 * @param values one or more, none NaN.
 * @throws RangeError for none.
 * @example median([3, 1, 2, 10]) // 2.5
 */
export function median(values: ArrayLike<number>): number {
  const sorted = Float64Array.from(values).sort();
  const half = sorted.length / 2;
  return (at(sorted, Math.ceil(half) - 1) + at(sorted, Math.floor(half))) / 2;
}
