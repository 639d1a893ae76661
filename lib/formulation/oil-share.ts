import { domainError } from "../diagnostics/diagnostic.ts";

/**
 * The oil index [g/100 g] of a paint of which oil is such a share by mass, to two digits.
 * @param percent of the whole paint, 0 < percent < 100.
 * @throws RangeError outside that.
 * @example oilIndexOfShare(31) // 45
 */
export function oilIndexOfShare(percent: number): number {
  if (!(percent > 0 && percent < 100))
    throw domainError("share of oil", percent, "0 < share < 100 %");
  return Number(((100 * percent) / (100 - percent)).toPrecision(2));
}
