import { domainError } from "../diagnostics/diagnostic.ts";

/** Round values along an axis, and the decimals that tell them apart. */
export interface Ticks {
  readonly values: readonly number[];
  readonly decimals: number;
}

/**
 * Ticks at a step of 1, 2 or 5 times a power of ten, about `wanted` intervals, inside the domain.
 * @throws RangeError when the domain is empty or `wanted` is below 1.
 * @example roundTicks([0, 1], 5) // values 0, .2, .4, .6, .8, 1; one decimal
 */
export function roundTicks([low, high]: readonly [number, number], wanted: number): Ticks {
  if (!(high > low && Number.isFinite(high - low)))
    throw domainError("length of an axis", high - low, "0 < length < Infinity");
  if (!(wanted >= 1)) throw domainError("count of intervals", wanted, "count >= 1");
  const rough = (high - low) / wanted;
  const decade = 10 ** Math.floor(Math.log10(rough) + 1e-9);
  // Halfway between steps by ratio, so that neither too many nor too few is preferred.
  const factor =
    [1, 2, 5, 10].find(
      (step, i, steps) => rough <= decade * Math.sqrt(step * (steps[i + 1] ?? 20)),
    ) ?? 10;
  return ticksEvery(decade * factor, [low, high]);
}

/** Ticks at every multiple of a step inside the domain. */
export function ticksEvery(step: number, [low, high]: readonly [number, number]): Ticks {
  if (!(step > 0)) throw domainError("step between ticks", step, "step > 0");
  const decimals = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
  const [first, last] = [Math.ceil(low / step - 1e-9), Math.floor(high / step + 1e-9)];
  const values = Array.from(
    { length: last - first + 1 },
    (_, i) => Number(((first + i) * step).toFixed(decimals + 2)) + 0,
  );
  return { values, decimals: values.every((value) => Number.isInteger(value)) ? 0 : decimals };
}

/** A tick's number as printed: fixed decimals, so that the column lines up; a true minus sign. */
export function tickText(value: number, decimals: number, decimalMark: "." | "," = "."): string {
  const digits = Math.abs(value).toFixed(decimals).replace(".", decimalMark);
  return value < 0 && /[1-9]/.test(digits) ? `\u2212${digits}` : digits;
}
