import { labelLanguages } from "../../records/label-languages.ts";
import { suppliersTraces } from "../../hazard/label/supplier-label.ts";
import type { HazardFrame, PaintForm } from "../../hazard/classify/frame.ts";
import { labelElements, type LabelElements } from "../../hazard/label/label-elements.ts";
import type { Ingredient, Composition } from "../../hazard/classify/composition.ts";
import type { Records } from "../../records/records.ts";
import { pigmentIngredients, vehicleIngredients } from "./hazard-ingredients.ts";
import { labelPart, printedElements } from "./label-part.ts";
import type { HandledPart } from "./handling-sections.ts";

/** Label elements of a dry pigment, as whoever weighs and mulls it meets it. */
export function dryPigmentPart(slug: string, records: Records): HandledPart {
  return handledPart(
    slug,
    records.pigments.get(slug)?.record,
    pigmentIngredients(slug, 1, records),
    "powder",
    {},
    records,
  );
}

/** Label elements of an oil, drier or thinner on its own, as its supplier classifies it; else worked out from its components. */
export function vehiclePartHandled(slug: string, records: Records): HandledPart {
  const record = records.vehicles.get(slug)?.record;
  const { flashPointC, initialBoilingPointC, kinematicViscosityMm2PerS } = record ?? {};
  return handledPart(
    slug,
    record,
    vehicleIngredients(slug, 1, records, "as supplied"),
    "liquid",
    { flashPointC, initialBoilingPointC, kinematicViscosityMm2PerS },
    records,
    vehicleIngredients(slug, 1, records),
  );
}

type Liquid = Pick<
  Composition,
  "flashPointC" | "initialBoilingPointC" | "kinematicViscosityMm2PerS"
>;

function handledPart(
  slug: string,
  record: { readonly name: string; readonly safetyDataSheet?: string | undefined } | undefined,
  ingredients: readonly Ingredient[],
  form: PaintForm,
  liquid: Liquid,
  { workshop, hazardKnowledge }: Records,
  components: readonly Ingredient[] = ingredients,
): HandledPart {
  const frame: HazardFrame = workshop.frame ?? "EU CLP";
  // Whoever works with it here is at work: what only a public sale calls for stays away.
  const reckonedFrom = (of: readonly Ingredient[]): LabelElements =>
    labelElements(
      { ingredients: of, form, frame, publicSale: false, ...liquid },
      hazardKnowledge.precautions,
    );
  const reckoned = reckonedFrom(ingredients);
  const [only, ...others] = ingredients;
  const elements =
    only === undefined || others.length > 0
      ? reckoned
      : {
          ...reckoned,
          traces: suppliersTraces(reckoned.traces, only.slug),
          // The line on ingredients of unknown toxicity is a mixture's.
          unknownAcuteToxicity: [],
        };
  const printed = printedElements(elements);
  // That a data sheet can be had is for those whom it is sold to.
  const supplemental = printed.supplemental.filter((code) => code !== "EUH210");
  const part = labelPart(
    { ...printed, supplemental },
    elements,
    ingredients,
    labelLanguages(workshop),
    hazardKnowledge,
    // Whoever reads its label is told of substances, which a trade name is not.
    { elements: reckonedFrom(components), ingredients: components },
  );
  return {
    slug,
    name: record?.name ?? slug,
    ...(record?.safetyDataSheet !== undefined && { dataSheet: record.safetyDataSheet }),
    known: part.unknown.length === 0,
    frame,
    edition: elements.edition,
    ...part,
  };
}
