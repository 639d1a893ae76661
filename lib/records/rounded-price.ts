import type { WorkshopRecord } from "./schema/workshop.ts";

/** The step of a price that was raised and has no step of its own. */
const LEAST_COIN = 0.01;
/** Digits past which a price is arithmetic's noise and no money. */
const FINEST = 6;

/**
 * A price by the workshop's rule: so many per cent put on, then rounded to a step.
 *
 * @param price as written, in any currency, 0 or more.
 * @param rule of workshop.yaml; without one the price stands as written.
 * @example roundedPrice(8.3, { addPercent: 5, roundTo: 0.5, rounding: "up" }) // 9
 */
export function roundedPrice(price: number, rule: WorkshopRecord["prices"]): number {
  const { addPercent = 0, roundTo = LEAST_COIN, rounding = "nearest" } = rule ?? {};
  if (addPercent === 0 && rule?.roundTo === undefined) return price;
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
