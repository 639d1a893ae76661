import { GENERIC_LIMITS } from "./cut-offs.ts";
import { REPRODUCTION_LIMITS } from "./reproduction.ts";

/**
 * Mass fraction from which a mixture takes on a class by one ingredient of that class [1].
 * @returns undefined for a class that is reckoned otherwise, as irritation and acute toxicity are,
 *   and whose substances have limits on either side of it.
 */
export function genericLimit(hazardClass: string): number | undefined {
  if (/^Repr\. /.test(hazardClass)) return REPRODUCTION_LIMITS[hazardClass === "Repr. 2" ? 2 : 1];
  return GENERIC_LIMITS.find(({ of, gives }) => of === hazardClass && gives === hazardClass)?.from;
}
