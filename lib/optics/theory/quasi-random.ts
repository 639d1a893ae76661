import { domainError } from "../../diagnostics/diagnostic.ts";

const BASES = [2, 3, 5, 7, 11, 13, 17, 19] as const;

/**
 * A point of Halton's sequence: spreads evenly over the unit cube, and is the same in every run.
 * @param index which point, a whole number > 0.
 * @param dimensions how many coordinates, 1-8.
 * @returns shape (dimensions), each 0 < u < 1.
 * @throws RangeError when an argument is outside its domain, or NaN.
 * @source halton-1960
 * @example quasiRandomPoint(1, 2) // [1/2, 1/3]
 */
export function quasiRandomPoint(index: number, dimensions: number): number[] {
  if (!(Number.isInteger(index) && index > 0))
    throw domainError("index of a point", index, "a whole number > 0");
  if (!(Number.isInteger(dimensions) && dimensions > 0 && dimensions <= BASES.length))
    throw domainError("count of dimensions", dimensions, `1 to ${BASES.length}`);
  return BASES.slice(0, dimensions).map((base) => radicalInverse(index, base));
}

/** The digits of a whole number in a base, mirrored about the point. */
function radicalInverse(index: number, base: number): number {
  let [value, share] = [0, 1 / base];
  for (let rest = index; rest > 0; rest = Math.floor(rest / base)) {
    value += (rest % base) * share;
    share /= base;
  }
  return value;
}
