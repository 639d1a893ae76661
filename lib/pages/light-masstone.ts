import { isKnown, type Figure } from "../quantities/figure.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** L* at which strength is told: what a colour takes of white to come there. */
const MIDDLE_L = 50;

/** L* of a colour that was let down and is lighter by itself than any white could bring it to a middle tone. */
export function lightMasstone({
  tints,
  notations: { masstone },
}: Pick<Sheet, "tints" | "notations">): Figure | undefined {
  const L = masstone?.lab["D65/10"]?.L;
  return tints.length > 0 && L !== undefined && isKnown(L) && L.value >= MIDDLE_L ? L : undefined;
}
