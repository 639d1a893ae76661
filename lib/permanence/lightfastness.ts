/**
 * Lightfastness category of an exposed specimen from its colour change.
 *
 * @source astm-d4303 : ASTM D4303-10(2022). Standard Test Methods for
 *   Lightfastness of Colorants Used in Artists' Materials. ASTM International.
 *   Limits are from memory of the standard, and are shown as such.
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import { certain } from "../quantities/at.ts";

export type LightfastnessCategory = "I" | "II" | "III" | "IV" | "V";

interface LightfastnessLimit {
  readonly category: LightfastnessCategory;
  /** Largest Delta-E*ab (CIE 1976) [1] still in this category, inclusive. */
  readonly deltaEabMax: number;
}

/**
 * The table as the standard prints it, best first. Each row is closed at its
 * upper limit, and the last is open, so every colour change has one category.
 */
export const LIGHTFASTNESS_LIMITS = [
  { category: "I", deltaEabMax: 4 },
  { category: "II", deltaEabMax: 8 },
  { category: "III", deltaEabMax: 16 },
  { category: "IV", deltaEabMax: 24 },
  { category: "V", deltaEabMax: Infinity },
] as const satisfies readonly LightfastnessLimit[];

/** A verdict with the row that gave it, so that a sheet can print its reason. */
export interface LightfastnessRuling {
  readonly category: LightfastnessCategory;
  readonly limit: LightfastnessLimit;
}

/**
 * Category for a mean colour change after the exposure the standard prescribes.
 *
 * @param deltaEab Delta-E*ab (CIE 1976) between unexposed and exposed specimen
 *   [1], finite and >= 0. Not Delta-E00: the limits were set for CIE 1976.
 * @returns the ruling; a value on a limit belongs to the better category.
 * @throws RangeError when the colour change is negative, NaN or infinite.
 * @source astm-d4303
 * @example lightfastnessRuling(4).category // "I"
 */
export function lightfastnessRuling(deltaEab: number): LightfastnessRuling {
  if (!(deltaEab >= 0 && deltaEab < Infinity)) {
    throw domainError("colour change Delta-E*ab", deltaEab, "0 <= Delta-E*ab < Infinity");
  }
  const limit = certain(LIGHTFASTNESS_LIMITS.find(({ deltaEabMax }) => deltaEab <= deltaEabMax));
  return { category: limit.category, limit };
}

/**
 * The least lightfast of several categories, as a mixture takes it.
 * @throws RangeError for none.
 */
export function worstCategory(categories: readonly LightfastnessCategory[]): LightfastnessCategory {
  const worst = LIGHTFASTNESS_LIMITS.map((row) => row.category).findLast((category) =>
    categories.includes(category),
  );
  if (worst === undefined)
    throw new RangeError("The list of categories is empty; right would be at least one");
  return worst;
}

/** How many categories one lies below another; negative of one that lies above it. */
export function categoriesBelow(one: LightfastnessCategory, other: LightfastnessCategory): number {
  const step = (of: LightfastnessCategory): number =>
    LIGHTFASTNESS_LIMITS.findIndex(({ category }) => category === of);
  return step(one) - step(other);
}
