import type { ClassificationForm } from "../hazard/classification.ts";
import type { Ingredient } from "../hazard/mixture.ts";
import { isKnown, type Figure } from "../quantities/figure.ts";
import { ends, type Quantity, type Range } from "../quantities/range.ts";
import type { Colour, Records } from "../records/records.ts";
import type { HazardForm } from "../records/schema/hazard-form.ts";
import type { OilSection } from "./paint-sections.ts";
import type { PigmentPart, VehiclePart } from "./sheet.ts";

/**
 * What a paint is made of, as hazard rules see it. Where parts or oil are not
 * known a fraction spans all that it can be: the rules then count its upper end.
 */
export function paintIngredients(colour: Colour, parts: readonly PigmentPart[], vehicle: VehiclePart | undefined, oil: OilSection, records: Records): Ingredient[] {
  const oilShare = oilPerPigment(oil.oilIndexGPer100g);
  const addedShare = (colour.record.additions ?? []).reduce((sum, { percentOfOil }) => sum + percentOfOil / 100, 0);
  const total = ([least, most]: Range): Range => [1 + least * (1 + addedShare), 1 + most * (1 + addedShare)];
  const [lightest, heaviest] = total(oilShare);
  const pigments = parts.map(({ slug, massFraction }) => {
    const whole: Range = isKnown(massFraction) ? [massFraction.value, massFraction.value] : [0, 1];
    return pigmentIngredient(slug, tidy([whole[0] / heaviest, whole[1] / lightest]), records);
  });
  const oilFraction = (share: number): Quantity => tidy([(oilShare[0] * share) / lightest, (oilShare[1] * share) / heaviest]);
  const added = (colour.record.additions ?? []).map(({ vehicle: slug, percentOfOil }) => vehicleIngredient(slug, oilFraction(percentOfOil / 100), records));
  return [...pigments, ...(vehicle === undefined ? [] : [vehicleIngredient(vehicle.slug, oilFraction(1), records)]), ...added];
}

/** Grams of oil to a gram of pigment; from nothing to as much as any pigment takes where it is not known. */
const UNKNOWN_OIL: Range = [0, 3];

function oilPerPigment(oilIndex: Figure<Quantity>): Range {
  if (!isKnown(oilIndex)) return UNKNOWN_OIL;
  const [least, most] = ends(oilIndex.value);
  return [least / 100, most / 100];
}

function tidy([lower, upper]: Range): Quantity {
  return Math.abs(upper - lower) < 1e-12 ? lower : [Math.min(lower, upper), Math.min(1, Math.max(lower, upper))];
}

export function pigmentIngredient(slug: string, massFraction: Quantity, records: Records): Ingredient {
  const record = records.pigments.get(slug)?.record;
  const manganese = record?.manganeseDioxideFraction;
  const manganeseValue = manganese === undefined ? undefined : ends(typeof manganese === "number" ? manganese : manganese.value)[1];
  return {
    slug, name: record?.name ?? slug, casNumber: record?.casNumber, colourIndexName: record?.colourIndexName, massFraction,
    classifications: classifications(record?.hazards),
    ...(manganeseValue === undefined ? {} : { metals: { manganese: manganeseValue * MANGANESE_IN_DIOXIDE } }),
  };
}

/** Atomic weights: 54.938 / (54.938 + 2 x 15.999). @source iupac-atomic-weights */
const MANGANESE_IN_DIOXIDE = 0.6319;

function vehicleIngredient(slug: string, massFraction: Quantity, records: Records): Ingredient {
  const record = records.vehicles.get(slug)?.record;
  return { slug, name: record?.name ?? slug, casNumber: record?.casNumber, massFraction, classifications: classifications(record?.hazards) };
}

/** An empty list says that the supplier states none; no list, that nothing is known. */
function classifications(hazards: readonly HazardForm[] | undefined): Ingredient["classifications"] {
  if (hazards === undefined) return undefined;
  if (hazards.length === 0) return "none stated";
  return hazards.map((hazard): string | ClassificationForm => {
    if (typeof hazard === "string") return hazard;
    const { limits, ...rest } = hazard;
    return { ...rest, ...(limits === undefined ? {} : { specificLimits: limits }) };
  });
}
