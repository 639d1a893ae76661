import { requirePositive } from "../quantities/positive.ts";
import { domainError } from "../diagnostics/diagnostic.ts";

/**
 * What one unit of measurement of a paint costs, p * u / V.
 *
 * @param price p, of the package, in any currency, 0 or more.
 * @param ml V, what the package holds [ml], above 0.
 * @param unitMl u [ml].
 * @param digits decimals of the currency's smallest coin, to which it is rounded.
 * @throws RangeError for a price below 0 and for contents of 0 or less.
 * @source price-indication-98-6-ec Article 2(b)
 * @example unitPrice(8, 40, 1000, 2) // 200
 */
export function unitPrice(price: number, ml: number, unitMl: number, digits: number): number {
  if (!(price >= 0 && price < Infinity))
    throw domainError("price", price, "0 <= price < Infinity of a package");
  requirePositive("contents", ml, "ml", "V");
  // What lies halfway between two coins is not to fall to the lower for the sake of a last binary digit.
  const coins = Number(((price * unitMl * 10 ** digits) / ml).toFixed(6));
  return Math.round(coins) / 10 ** digits;
}
