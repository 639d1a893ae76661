import { coinDigits } from "../quantities/coin-digits.ts";
import type { WorkshopRecord } from "./schema/workshop.ts";

/** Digits past which a price is arithmetic's noise and no money. */
const FINEST = 6;

/**
 * A price by the workshop's rule: so many per cent put on, then rounded to a step, which is
 * the smallest coin where the rule names none.
 *
 * @param price as written, 0 or more.
 * @param rule of workshop.yaml; without one the price stands as written.
 * @param currency its three letters, by ISO 4217; two decimals without one.
 * @example roundedPrice(8.3, { addPercent: 5, roundTo: 0.5, rounding: "up" }) // 9
 */
export function roundedPrice(
  price: number,
  rule: WorkshopRecord["prices"],
  currency?: string,
): number {
  const { addPercent = 0, rounding = "nearest" } = rule ?? {};
  if (addPercent === 0 && rule?.roundTo === undefined) return price;
  const roundTo = rule?.roundTo ?? 10 ** -coinDigits(currency);
  const raised = Number((price * (1 + addPercent / 100)).toFixed(FINEST));
  // A step that a price already stands on is not left for the sake of the last binary digit.
  const steps = Number((raised / roundTo).toFixed(FINEST));
  const whole =
    rounding === "up"
      ? Math.ceil(steps)
      : rounding === "down"
        ? Math.floor(steps)
        : Math.round(steps);
  return Number((whole * roundTo).toFixed(FINEST));
}
