import { domainError } from "../diagnostics/diagnostic.ts";

/**
 * @param subject of the sentence that refuses it.
 * @param symbol what the sentence calls the value in its limits.
 * @throws RangeError unless the value is a finite number above 0.
 */
export function requirePositive(subject: string, value: number, unit = "", symbol = subject): void {
  if (!(value > 0 && value < Infinity))
    throw domainError(subject, value, `0 < ${symbol} < Infinity ${unit}`.trim());
}
