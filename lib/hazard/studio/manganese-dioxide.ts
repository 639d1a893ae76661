/**
 * Manganese dioxide in brown earths: what their hazard hangs on. An umber holds
 * about 5 to 20 %, a sienna about 1 %, and both are PBr 7.
 *
 * @source clp-annex-6-memory : H302 and H332, harmonised
 * @source reach-dossier-manganese-dioxide : STOT RE 2 by inhaled dust, proposed (read)
 * @source practice-hazard : the usual shares
 */
import { ends, type Quantity, type Interval } from "../../quantities/interval.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import type { ClassificationForm } from "../classify/classification.ts";
import { dilutedIngredients, type Ingredient } from "../classify/composition.ts";

export const MANGANESE_DIOXIDE_CAS = "1313-13-9";

export const BROWN_EARTHS = ["umber", "sienna"] as const;
export type BrownEarth = (typeof BROWN_EARTHS)[number];

/** Manganese dioxide in brown earths as they are dug, mass fraction. */
export const EARTH_MANGANESE_DIOXIDE: Readonly<Record<BrownEarth, Interval>> = {
  umber: [0.05, 0.2],
  sienna: [0.002, 0.02],
};

/**
 * What a brown earth holds whose supplier does not give the share: by its kind, as
 * the record states it, else anything from a sienna to an umber.
 * @returns undefined for what is no brown earth.
 */
export function earthManganeseDioxide(
  colourIndexName: string | undefined,
  earth: BrownEarth | undefined,
): Interval | undefined {
  if (earth !== undefined) return EARTH_MANGANESE_DIOXIDE[earth];
  return colourIndexName === "PBr 7"
    ? [EARTH_MANGANESE_DIOXIDE.sienna[0], EARTH_MANGANESE_DIOXIDE.umber[1]]
    : undefined;
}

const MANGANESE_DIOXIDE_CLASSIFICATIONS: readonly ClassificationForm[] = [
  { statement: "H302", source: "clp-annex-6-memory" },
  { statement: "H332", route: "dust", source: "clp-annex-6-memory" },
  { statement: "H373", route: "dust", source: "reach-dossier-manganese-dioxide" },
];

/**
 * A pigment taken apart into manganese dioxide and the rest, which keeps the
 * pigment's own classifications.
 *
 * @param manganeseDioxideFraction of the dry pigment, 0-1, or a range.
 * @param manganeseShare of manganese in the dioxide, mass fraction.
 * @throws RangeError for a fraction outside 0-1.
 */
export function withManganeseDioxide(
  pigment: Ingredient,
  manganeseDioxideFraction: Quantity,
  manganeseShare: number,
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
    metals: { manganese: manganeseShare },
  };
  return dilutedIngredients([{ ...pigment, massFraction: rest }, oxide], pigment.massFraction);
}
