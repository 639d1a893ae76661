import { domainError } from "../diagnostics/diagnostic.ts";

/** How far the same paint, drawn down or read again, comes out otherwise. */
export interface ReplicateSpread {
  /** Pooled standard deviation, in the unit of the values. */
  readonly standardDeviation: number;
  /** Degrees of freedom that it rests on. */
  readonly degrees: number;
}

/** Fewer tell less than the usual noise of an instrument does. Our own limit. */
export const TELLING_DEGREES = 6;

/**
 * Pooled standard deviation of replicates.
 *
 *     s^2 = Sum Sum (x - mean of its set)^2 / Sum (n - 1)
 *
 * @param sets values of one lot each; a set of fewer than two says nothing.
 * @returns undefined when no set has two values.
 * @throws RangeError when a value is NaN or infinite.
 * @source nist-handbook
 */
export function replicateSpread(sets: readonly (readonly number[])[]): ReplicateSpread | undefined {
  let [squares, degrees] = [0, 0];
  for (const values of sets) {
    for (const value of values)
      if (!Number.isFinite(value)) throw domainError("replicate", value, "a finite number");
    if (values.length < 2) continue;
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    squares += values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    degrees += values.length - 1;
  }
  return degrees === 0 ? undefined : { standardDeviation: Math.sqrt(squares / degrees), degrees };
}
