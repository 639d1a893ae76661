import { ends, isRange, type Quantity } from "../quantities/range.ts";

/** A number to fixed places, with a true minus sign and no "-0.0". */
export function decimalText(value: number, places: number): string {
  const text = value.toFixed(places);
  return Number(text) === 0 ? text.replace("-", "") : text.replace("-", "\u2212");
}

/** A number to significant digits, never in powers of ten: 1240, 0.034. */
export function significantText(value: number, digits: number): string {
  if (value === 0) return "0";
  const places = Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(Number(value.toPrecision(digits))))));
  return decimalText(Number(value.toPrecision(digits)), places);
}

/** Places that an uncertainty leaves sense in: one digit of it. */
export function placesWithin(uncertainty: number | undefined, places: number): number {
  if (uncertainty === undefined || !(uncertainty > 0)) return places;
  return Math.min(places, Math.max(0, -Math.floor(Math.log10(uncertainty))));
}

/** One number, or an estimate as its two ends; ends that read alike are "about" one. */
export function quantityText(quantity: Quantity, numberText: (value: number) => string, about: string): string {
  if (!isRange(quantity)) return numberText(quantity);
  if (quantity[0] === quantity[1]) return numberText(quantity[0]);
  const [lower, upper] = ends(quantity).map(numberText);
  return lower === upper ? `${about} ${lower ?? ""}` : `${lower ?? ""}\u2013${upper ?? ""}`;
}
