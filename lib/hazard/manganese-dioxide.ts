/**
 * Manganese dioxide in umbers: what a natural earth's hazard hangs on. An umber
 * holds about 5 to 20 %, so the share decides.
 *
 * @source clp-annex-6-memory : H302 and H332, harmonised
 * @source reach-dossier-manganese-dioxide : STOT RE 2 by inhaled dust, proposed (read)
 */
import { ends, type Quantity } from "../quantities/range.ts";
import { domainError } from "../diagnostics/diagnostic.ts";
import type { ClassificationForm } from "./classification.ts";
import { dilutedIngredients, type Ingredient } from "./mixture.ts";

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
export function withManganeseDioxide(pigment: Ingredient, manganeseDioxideFraction: Quantity): Ingredient[] {
  const [lower, upper] = ends(manganeseDioxideFraction);
  if (!(lower >= 0 && upper <= 1 && lower <= upper)) throw domainError("manganese dioxide fraction", lower >= 0 ? upper : lower, "0 <= fraction <= 1");
  const rest: Quantity = lower === upper ? 1 - lower : [1 - upper, 1 - lower];
  const oxide: Ingredient = {
    slug: `${pigment.slug}-manganese-dioxide`, name: "manganese dioxide", casNumber: "1313-13-9", massFraction: manganeseDioxideFraction,
    classifications: MANGANESE_DIOXIDE_CLASSIFICATIONS,
  };
  return dilutedIngredients([{ ...pigment, massFraction: rest }, oxide], pigment.massFraction);
}
