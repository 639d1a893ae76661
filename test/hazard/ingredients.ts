import type { LabelElements } from "../../lib/hazard/label/label-elements.ts";
import type { Ingredient, Composition } from "../../lib/hazard/classify/composition.ts";
import type { ClassificationForm } from "../../lib/hazard/classify/classification.ts";
import { labelElements, withMetals } from "./knowledge.ts";
import type { Quantity } from "../../lib/quantities/interval.ts";

/** Drying oil: its supplier states no hazard. Fills a mixture up to the whole. */
export function oil(massFraction: Quantity): Ingredient {
  return { slug: "linseed-oil", name: "linseed oil", massFraction, classifications: "none stated" };
}

/** CLP Annex VI, group entry of lead compounds (list read second-hand); specific limits from memory. */
export const LEAD_CLASSIFICATIONS: readonly (string | ClassificationForm)[] = [
  "H302",
  "H332",
  {
    statement: "H360Df",
    hazardClass: "Repr. 1A",
    specificLimits: [{ hazardClass: "Repr. 2", statement: "H361f", from: 0.025 }],
  },
  { statement: "H373", specificLimits: [{ hazardClass: "STOT RE 2", from: 0.005 }] },
  "H400",
  "H410",
];

export function leadCarbonate(massFraction: Quantity): Ingredient {
  return withMetals({
    slug: "lead-carbonate",
    name: "basic lead carbonate",
    casNumber: "1319-46-6",
    massFraction,
    classifications: LEAD_CLASSIFICATIONS,
  });
}

/** CLP Annex VI, zinc oxide (memory). */
export function zincOxide(massFraction: Quantity): Ingredient {
  return {
    slug: "zinc-oxide",
    name: "zinc oxide",
    casNumber: "1314-13-2",
    massFraction,
    classifications: ["H400", "H410"],
  };
}

/** A made-up substance with given classifications. */
export function substance(
  slug: string,
  massFraction: Quantity,
  ...classifications: readonly (string | ClassificationForm)[]
): Ingredient {
  return { slug, name: slug, massFraction, classifications };
}

/** Label elements of a paste in the EU frame, filled up with oil, unless said otherwise. */
export function label(
  ingredients: readonly Ingredient[],
  other: Partial<Composition> = {},
): LabelElements {
  const total = ingredients.reduce(
    (sum, { massFraction }) =>
      sum + (typeof massFraction === "number" ? massFraction : massFraction[1]),
    0,
  );
  const filled = total < 1 ? [...ingredients, oil(1 - total)] : ingredients;
  return labelElements({
    ingredients: filled.map(withMetals),
    form: "paste",
    frame: "EU CLP",
    publicSale: false,
    ...other,
  });
}

/** Statements of the classes, before one covers another. */
export function classStatements(found: LabelElements): string[] {
  return found.classes.map(({ statement }) => statement);
}
