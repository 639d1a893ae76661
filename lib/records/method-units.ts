import type { Fault } from "./fault.ts";

/** Units that a method may name, each with the ways in which it is written. */
const UNITS: readonly (readonly [unit: string, written: RegExp])[] = [
  ["g/100 g", /(g|grams?)\s*(\/|per)\s*100\s*(g|grams?)/],
  ["ml/100 g", /(ml|cm3|cm³|cc)\s*(\/|per)\s*100\s*(g|grams?)/],
  ["%", /(wt\.?-?|vol\.?-?|mass|weight)?\s*(%|percent)/],
  ["g/cm3", /g\s*\/\s*(cm3|cm³|ml|cc)|kg\s*\/\s*(l|dm3|dm³)/],
  ["g/l", /g\s*\/\s*l|kg\s*\/\s*(m3|m³)/],
  ["lb/gal", /lbs?\s*\/\s*gal(lon)?/],
  ["um", /[uµμ]m|microns?/],
  ["nm", /nm/],
  ["mm", /mm/],
  ["mil", /mils?/],
  ["h", /h|hrs?|hours?/],
  ["d", /d|days?/],
  ["weeks", /weeks?/],
];

/** The unit that a figure is taken in, by the end of its key; as messages name it. */
const OWN: readonly (readonly [key: RegExp, unit: string, words: string])[] = [
  [/GPer100g$/, "g/100 g", "g to 100 g of pigment"],
  [/GPerCm3$|GPerMl$/, "g/cm3", "g/cm3"],
  [/Um$/, "um", "um"],
  [/Days$/, "d", "days"],
  [/Fraction$/, "1", "a share of 1"],
];

/** A unit by itself in a part of a method, or at its end after "in": a number before it belongs to how it was done. */
const NAMED = UNITS.map(
  ([unit, written]) =>
    [unit, new RegExp(`(^|\\b(in|en|as)\\s+)(${written.source})$`, "i")] as const,
);

/**
 * A method that names another unit than its figure is taken in: free words, of which no more is known than that.
 * @param key of the figure in its record.
 */
export function methodUnitFault(key: PropertyKey, method: string): Fault | undefined {
  const own = OWN.find(([ending]) => ending.test(String(key)));
  if (own === undefined) return undefined;
  const [, unit, words] = own;
  const parts = method.split(/[,;:()[\]]/).map((part) => part.trim());
  const named = parts.flatMap((part) => NAMED.find(([, written]) => written.test(part))?.[0] ?? []);
  const [other] = named.filter((one) => one !== unit);
  if (other === undefined || named.includes(unit)) return undefined;
  return {
    severity: "warning",
    rule: "records/method-unit",
    message: `The method "${method}" names ${other}, and ${String(key)} is taken in ${words}`,
    actual: other,
    expected: words,
    hint: "the figure in the unit of its key, and no unit in the method",
  };
}
