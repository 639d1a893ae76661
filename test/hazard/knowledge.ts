import { hazardKnowledge } from "../../lib/knowledge/hazard-tables.ts";
import { loadedTables } from "../../lib/knowledge/tables.ts";
import type { HazardKnowledge } from "../../lib/hazard/hazard-knowledge.ts";
import type { HazardFault } from "../../lib/hazard/classify/classification.ts";
import type { Composition, Ingredient } from "../../lib/hazard/classify/composition.ts";
import {
  labelElements as elementsByTables,
  type LabelElements,
} from "../../lib/hazard/label/label-elements.ts";
import {
  labelDifferences as differencesByTables,
  statedLabelFaults as faultsByTables,
  type LabelDifference,
  type StatedLabel,
} from "../../lib/hazard/label/stated-label.ts";
import {
  marketRulings as rulingsByActs,
  type MarketRuling,
  type Sale,
} from "../../lib/hazard/markets/market-statements.ts";
import type { HazardMarket } from "../../lib/hazard/classify/legislation.ts";
import { substancesOf } from "../../lib/hazard/classify/substance.ts";
import { metalShares } from "../../lib/hazard/studio/metal-content.ts";
import {
  studioCautions as cautionsByTables,
  type StudioCaution,
  type StudioPaint,
  type StudioPigment,
} from "../../lib/hazard/studio/studio-cautions.ts";

const { tables, diagnostics } = loadedTables();
if (tables === undefined) throw new Error(diagnostics.map(({ actual }) => actual).join("; "));

/** The tables as the engine reads them. */
export const KNOWLEDGE: HazardKnowledge = hazardKnowledge(tables);

/** An ingredient with the metals and substances that its numbers tell, as a record's ingredients have them. */
export function withMetals(ingredient: Ingredient): Ingredient {
  return {
    ...ingredient,
    metals: ingredient.metals ?? metalShares(ingredient, KNOWLEDGE.metals),
    substances: substancesOf(ingredient, KNOWLEDGE.substances),
  };
}

export function labelElements(mixture: Composition): LabelElements {
  return elementsByTables(mixture, KNOWLEDGE.precautions);
}

export function labelDifferences(stated: StatedLabel, workedOut: LabelElements): LabelDifference[] {
  return differencesByTables(stated, workedOut, KNOWLEDGE.precautions);
}

export function statedLabelFaults(label: StatedLabel): HazardFault[] {
  return faultsByTables(label, KNOWLEDGE);
}

export function marketRulings(sale: Sale, market: HazardMarket): MarketRuling[] {
  return rulingsByActs(
    { ...sale, ingredients: sale.ingredients.map(withMetals) },
    market,
    KNOWLEDGE.acts,
  );
}

export function studioCautions(
  pigments: readonly StudioPigment[],
  paint: StudioPaint,
): StudioCaution[] {
  return cautionsByTables(
    pigments.map((one) => ({ ...one, ingredients: one.ingredients.map(withMetals) })),
    { ...paint, ingredients: paint.ingredients.map(withMetals) },
    KNOWLEDGE,
  );
}
