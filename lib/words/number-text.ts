import type { Bound } from "../quantities/figure.ts";
import { ends, isInterval, type Quantity } from "../quantities/interval.ts";

/** A number to fixed places, with a true minus sign and no "-0.0". @throws RangeError for NaN and Infinity, which are never print. */
export function decimalText(value: number, places: number): string {
  if (!Number.isFinite(value))
    throw new RangeError(`The number to print is ${value}; right would be a finite one`);
  const text = value.toFixed(places);
  return Number(text) === 0 ? text.replace("-", "") : text.replace("-", "\u2212");
}

/** Nearer to nought [1] than anything that a workshop weighs, reads or sells. */
const NOUGHT_WITHIN = 1e-12;

/**
 * A number to significant digits, never in powers of ten: 1240, 0.034. A whole
 * number as recorded gains no decimals, and an uncertainty takes away its own.
 * What differs from nought by nothing that counts is 0.
 */
export function significantText(value: number, digits: number, uncertainty?: number): string {
  if (Math.abs(value) < NOUGHT_WITHIN) return "0";
  const rounded = Number(value.toPrecision(digits));
  const places = Number.isInteger(value) ? 0 : Math.max(0, significantPlaces(rounded, digits));
  return decimalText(rounded, placesWithin(uncertainty, places));
}

/**
 * A bound as it may be printed: "at least" is rounded down and "at most" up, so that what is printed
 * holds as well. Without a bound the number itself.
 *
 * @param places decimals that are printed; below nought, noughts before the point.
 * @source outward rounding, as IEEE 1788 has it for the ends of an interval (from memory)
 * @example outward(327.379, "at least", -1) // 320
 */
export function outward(value: number, bound: Bound | undefined, places: number): number {
  if (bound === undefined) return value;
  // Of twelve digits: 0.29 times 100 would be 28.999999999999996.
  const scaled = Number((value * 10 ** places).toPrecision(12));
  return Number(`${bound === "at least" ? Math.floor(scaled) : Math.ceil(scaled)}e${-places}`);
}

/** Decimals of a number to significant digits; below nought, noughts before the point. */
export function significantPlaces(value: number, digits: number): number {
  return value === 0 ? digits - 1 : digits - 1 - Math.floor(Math.log10(Math.abs(value)));
}

/** Days as a film is looked at: whole, and under three to the half. */
export function daysText(value: number): string {
  const step = value < 3 ? 0.5 : 1;
  return String(Math.max(step, Math.round(value / step) * step));
}

/** Whether these are printed as one day at most: "1 day", and no "days". */
export function isOneDay(days: Quantity): boolean {
  return daysText(ends(days)[1]) === "1";
}

/** Places that an uncertainty leaves sense in: one digit of it. */
export function placesWithin(uncertainty: number | undefined, places: number): number {
  if (uncertainty === undefined || !(uncertainty > 0)) return places;
  return Math.min(places, Math.max(0, -Math.floor(Math.log10(uncertainty))));
}

/** What stands between the whole of a number and its decimals. */
export type DecimalMark = "." | ",";

/** From five digits on in threes with a narrow space, as ISO 80000-1 has it in every language: 11 000, but 1240. */
function inThrees(text: string): string {
  return text.replace(/^(\D*)(\d{5,})/, (_, before: string, whole: string) => {
    return before + whole.replace(/\B(?=(?:\d{3})+$)/g, "\u202f");
  });
}

/** Numbers as a language prints them; those of data keep their point. */
export function printedNumbers(mark: DecimalMark) {
  const marked = (text: string): string => inThrees(text).replace(".", mark);
  return {
    mark,
    decimal: (value: number, places: number): string => marked(decimalText(value, places)),
    significant: (value: number, digits: number, uncertainty?: number): string =>
      marked(significantText(value, digits, uncertainty)),
    days: (value: number): string => marked(daysText(value)),
    /** One that is printed as it was written down. */
    plain: (value: number): string => marked(String(value)),
  };
}

export type PrintedNumbers = ReturnType<typeof printedNumbers>;

/** One number, or an estimate as its two ends; ends that read alike are "about" one. */
export function quantityText(
  quantity: Quantity,
  numberText: (value: number) => string,
  about: string,
): string {
  if (!isInterval(quantity)) return numberText(quantity);
  if (quantity[0] === quantity[1]) return numberText(quantity[0]);
  const [lower, upper] = ends(quantity).map(numberText);
  return lower === upper ? `${about} ${lower ?? ""}` : `${lower ?? ""}\u2013${upper ?? ""}`;
}
