/** Cost of what was weighed, where prices are given. */
import { domainError } from "../diagnostics/diagnostic.ts";

export interface Weighing {
  readonly name: string;
  readonly massG: number;
}

export interface PricedWeighing extends Weighing {
  readonly pricePerKg?: number | undefined;
}

export interface BatchCost {
  /** Of the priced ingredients, in the prices' currency; absent when none is priced. */
  readonly cost?: number;
  /** Ingredients without a price, which the cost leaves out. */
  readonly unpriced: readonly string[];
}

/** @throws RangeError when a price is negative, NaN or infinite. */
export function batchCost(weighings: readonly PricedWeighing[]): BatchCost {
  const unpriced = weighings
    .filter(({ pricePerKg }) => pricePerKg === undefined)
    .map(({ name }) => name);
  if (unpriced.length === weighings.length) return { unpriced };
  const cost = weighings.reduce((total, { massG, pricePerKg = 0 }) => {
    if (!(pricePerKg >= 0 && pricePerKg < Infinity))
      throw domainError("price", pricePerKg, "0 <= price < Infinity per kg");
    return total + (massG / 1000) * pricePerKg;
  }, 0);
  return { cost, unpriced };
}
