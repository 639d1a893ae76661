import { readOnce, type RememberedReads } from "../../kept/reads.ts";
import type { Colour, Records } from "../../records/records.ts";
import { placeFigures } from "../figure-places.ts";
import { paintAsMade } from "../paint-as-made.ts";
import type { TintSection } from "./tint-figures.ts";
import { weighedAs } from "./paint-conversion.ts";
import type { Fits } from "./strength.ts";
import { tintSections } from "./tint-section.ts";

const TINTS: RememberedReads<Fits, readonly TintSection[]> = new WeakMap();

/** A colour's let-downs, the same for its own sheet and for the strength of another that is reckoned against it. */
export function tintsAsDrawn(colour: Colour, fits: Fits, records: Records): readonly TintSection[] {
  return readOnce(TINTS, fits, colour.slug, () => {
    const fit = fits.get(colour.slug) ?? { kind: "refused", reasons: [] };
    const tints = tintSections(colour, fit, weighedAs(paintAsMade(colour, records).oil), records);
    placeFigures(colour.slug, tints, "tints");
    return tints;
  });
}
