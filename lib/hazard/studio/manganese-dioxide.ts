/**
 * Manganese dioxide in umbers: what a natural earth's hazard hangs on. An umber
 * holds about 5 to 20 %, so the share decides.
 *
 * @source clp-annex-6-memory : H302 and H332, harmonised
 * @source reach-dossier-manganese-dioxide : STOT RE 2 by inhaled dust, proposed (read)
 * @source practice-hazard : the usual share in an umber
 */
import { ends, type Quantity, type Interval } from "../../quantities/interval.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import type { ClassificationForm } from "../classify/classification.ts";
import { dilutedIngredients, type Ingredient } from "../classify/composition.ts";

export const MANGANESE_DIOXIDE_CAS = "1313-13-9";

/** Manganese dioxide in umbers as they are dug, mass fraction. */
export const UMBER_MANGANESE_DIOXIDE: Interval = [0.05, 0.2];

/**
 * What an umber holds whose supplier does not say: told by its name, since PBr 7 is
 * a sienna's number as well.
 * @returns undefined for anything else.
 */
export function umberManganeseDioxide({
  name,
  colourIndexName,
}: Pick<Ingredient, "name" | "colourIndexName">): Interval | undefined {
  const isUmber =
    (colourIndexName === undefined || colourIndexName === "PBr 7") &&
    /\b(?:umber|umbra|ombre)\b/i.test(name);
  return isUmber ? UMBER_MANGANESE_DIOXIDE : undefined;
}

export const MANGANESE_DIOXIDE_CLASSIFICATIONS: readonly ClassificationForm[] = [
  { statement: "H302", source: "clp-annex-6-memory" },
  { statement: "H332", route: "dust", source: "clp-annex-6-memory" },
  { statement: "H373", route: "dust", source: "reach-dossier-manganese-dioxide" },
];

/**
 * A pigment taken apart into manganese dioxide and the rest, which keeps the
 * pigment's own classifications.
 *
 * @param manganeseDioxideFraction of the dry pigment, 0-1, or a range.
 * @throws RangeError for a fraction outside 0-1.
 */
export function withManganeseDioxide(
  pigment: Ingredient,
  manganeseDioxideFraction: Quantity,
): Ingredient[] {
  const [lower, upper] = ends(manganeseDioxideFraction);
  if (!(lower >= 0 && upper <= 1 && lower <= upper))
    throw domainError(
      "manganese dioxide fraction",
      lower >= 0 ? upper : lower,
      "0 <= fraction <= 1",
    );
  const rest: Quantity = lower === upper ? 1 - lower : [1 - upper, 1 - lower];
  const oxide: Ingredient = {
    slug: `${pigment.slug}-manganese-dioxide`,
    name: "manganese dioxide",
    casNumber: MANGANESE_DIOXIDE_CAS,
    massFraction: manganeseDioxideFraction,
    classifications: MANGANESE_DIOXIDE_CLASSIFICATIONS,
  };
  return dilutedIngredients([{ ...pigment, massFraction: rest }, oxide], pigment.massFraction);
}
