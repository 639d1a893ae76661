/** Lists of numbers as whole steps, each told by its difference from the one before: short once compressed, and exact to half a step. */

/** How a list is stepped: evenly, or evenly in its logarithm where only shares of a value matter. */
export interface Steps {
  readonly scale: "linear" | "log";
  readonly step: number;
}

/** Reflectance factors [1]: a fifth of the last digit that moves L* of a deep black by .001. */
export const REFLECTANCE_STEPS: Steps = { scale: "linear", step: 1e-6 };
/** Coefficients and internal reflectances, to 1 part in 100,000. */
export const RELATIVE_STEPS: Steps = { scale: "log", step: 2e-5 };
/** Uncertainties, to 1 part in 4,000. */
export const UNCERTAINTY_STEPS: Steps = { scale: "log", step: 5e-4 };

/** Below this a coefficient is none [1]. */
const LEAST = 1e-12;

export function packedNumbers(values: readonly number[], { scale, step }: Steps): number[] {
  const whole = values.map((value) =>
    Math.round((scale === "log" ? Math.log(Math.max(value, LEAST)) : value) / step),
  );
  return whole.map((value, i) => value - (whole[i - 1] ?? 0));
}

/** Inverse of {@link packedNumbers}, to half a step. */
export function unpackedNumbers(packed: readonly number[], { scale, step }: Steps): number[] {
  let at = 0;
  return packed.map((difference) => {
    at += difference;
    return scale === "log" ? Math.exp(at * step) : at * step;
  });
}
