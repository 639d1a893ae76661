import { domainError } from "../../diagnostics/diagnostic.ts";

const BASES = [2, 3, 5, 7, 11, 13, 17, 19] as const;

/**
 * A coordinate of a point of Halton's sequence, which spreads evenly over the unit cube and is the same in every run.
 * @param index which point, a whole number > 0.
 * @param dimension which coordinate of it, a whole number from 0 to 7.
 * @returns 0 < u < 1.
 * @throws RangeError when an argument is outside its domain, or NaN.
 * @source halton-1960
 * @example quasiRandom(1, 1) // 1/3
 */
export function quasiRandom(index: number, dimension: number): number {
  if (!(Number.isInteger(index) && index > 0))
    throw domainError("index of a point", index, "a whole number > 0");
  const base = BASES[dimension];
  if (base === undefined)
    throw domainError("dimension of a point", dimension, `0 to ${BASES.length - 1}`);
  // The digits of the index in that base, mirrored about the point.
  let [value, share] = [0, 1 / base];
  for (let rest = index; rest > 0; rest = Math.floor(rest / base)) {
    value += (rest % base) * share;
    share /= base;
  }
  return value;
}
