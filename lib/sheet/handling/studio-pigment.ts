import { pigmentNature } from "../../hazard/studio/pigment-nature.ts";
import type { StudioPigment } from "../../hazard/studio/studio-cautions.ts";
import { knownValue } from "../../quantities/figure.ts";
import type { Records } from "../../records/records.ts";
import { pigmentIngredients } from "./hazard-ingredients.ts";
import type { PigmentPart } from "../pigments/pigment-figures.ts";

/**
 * A dry pigment as the cautions of the studio see it.
 * @param hazardStatements on the label of the dry pigment.
 */
export function studioPigment(
  part: PigmentPart,
  hazardStatements: readonly string[],
  records: Records,
): StudioPigment {
  const {
    slug,
    name,
    colourIndexName,
    colourIndexNumber,
    casNumber,
    bulkDensityLooseGPerMl,
    bulkDensityTappedGPerMl,
    particleSizeUm,
  } = part;
  const known = records.knowledge.pigment(colourIndexName);
  return {
    slug,
    name,
    colourIndexName,
    colourIndexNumber,
    casNumber,
    hazardStatements,
    nature: pigmentNature(part, known.nature),
    givesOff: known.givesOff,
    ingredients: pigmentIngredients(slug, 1, records),
    respirableQuartzPercent: records.pigments.get(slug)?.record.respirableQuartzPercent,
    bulkDensityLooseGPerMl: knownValue(bulkDensityLooseGPerMl),
    bulkDensityTappedGPerMl: knownValue(bulkDensityTappedGPerMl),
    particleSizeUm: knownValue(particleSizeUm),
  };
}
