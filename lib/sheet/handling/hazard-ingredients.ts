import type { ClassificationForm } from "../../hazard/classify/classification.ts";
import {
  earthManganeseDioxide,
  MANGANESE_DIOXIDE_CAS,
  withManganeseDioxide,
} from "../../hazard/studio/manganese-dioxide.ts";
import { dilutedIngredients, type Ingredient } from "../../hazard/classify/composition.ts";
import { isKnown, type Figure } from "../../quantities/figure.ts";
import { ends, type Quantity, type Interval } from "../../quantities/interval.ts";
import { substancesOf } from "../../hazard/classify/substance.ts";
import { metalShares } from "../../hazard/studio/metal-content.ts";
import { hazardMetals } from "../../records/hazard-metals.ts";
import type { Colour, Records } from "../../records/records.ts";
import type { ComponentForm, HazardForm, HazardRecord } from "../../records/schema/hazard-form.ts";
import type { PigmentRecord } from "../../records/schema/pigment.ts";
import {
  substanceName,
  type NamedSubstance,
  type NamesByLanguage,
} from "../../hazard/texts/substance-name.ts";
import { recordLanguage } from "../../records/label-languages.ts";
import type { Language } from "../../quantities/languages.ts";
import { mainOil } from "../oil/main-oil.ts";
import type { OilSection } from "../oil/oil-figures.ts";
import type { PigmentPart, VehiclePart } from "../pigments/pigment-figures.ts";

/**
 * What a paint is made of, as hazard rules see it: pigments, oil and additions,
 * each as the substances that its record lists. Where parts or oil are not known
 * a fraction spans all that it can be: the rules then count its upper end.
 */
export function paintIngredients(
  colour: Colour,
  parts: readonly PigmentPart[],
  vehicle: VehiclePart | undefined,
  oil: OilSection,
  records: Records,
): Ingredient[] {
  const oilShare = oilPerPigment(mainOil(oil));
  const additions = colour.record.additions ?? [];
  const addedShare = additions.reduce((sum, { percentOfOil }) => sum + percentOfOil / 100, 0);
  const [lightest, heaviest] = [
    1 + oilShare[0] * (1 + addedShare),
    1 + oilShare[1] * (1 + addedShare),
  ];
  const pigments = parts.flatMap(({ slug, massFraction }) => {
    const whole: Interval = isKnown(massFraction)
      ? [massFraction.value, massFraction.value]
      : [0, 1];
    return pigmentIngredients(slug, tidy([whole[0] / heaviest, whole[1] / lightest]), records);
  });
  const ofOil = (share: number): Quantity =>
    tidy([(oilShare[0] * share) / lightest, (oilShare[1] * share) / heaviest]);
  return [
    ...pigments,
    ...(vehicle === undefined
      ? [{ ...UNRECORDED_OIL, massFraction: ofOil(1) }]
      : vehicleIngredients(vehicle.slug, ofOil(1), records)),
    ...additions.flatMap(({ vehicle: slug, percentOfOil }) =>
      vehicleIngredients(slug, ofOil(percentOfOil / 100), records),
    ),
  ];
}

/** Stands for a vehicle that no record names: nobody knows what is in it. */
const UNRECORDED_OIL = { slug: "vehicle-not-recorded", name: "the vehicle, which is not recorded" };

/** Grams of oil to a gram of pigment; from nothing to as much as any pigment takes where it is not known. */
const UNKNOWN_OIL: Interval = [0, 3];

function oilPerPigment(gPer100g: Figure<Quantity>): Interval {
  if (!isKnown(gPer100g)) return UNKNOWN_OIL;
  const [least, most] = ends(gPer100g.value);
  return [least / 100, most / 100];
}

function tidy([lower, upper]: Interval): Quantity {
  return Math.abs(upper - lower) < 1e-12
    ? lower
    : [Math.min(lower, upper), Math.min(1, Math.max(lower, upper))];
}

/** A dry pigment as the substances in it; of an umber the manganese dioxide apart, since its hazard hangs on it. */
export function pigmentIngredients(
  slug: string,
  massFraction: Quantity,
  records: Records,
): Ingredient[] {
  const record = records.pigments.get(slug)?.record;
  const whole: Ingredient = {
    ...substance(slug, record?.name ?? slug, record ?? {}, massFraction, records),
    colourIndexName: record?.colourIndexName,
  };
  const components = record?.components ?? [];
  const listsManganese = [
    record?.casNumber,
    ...components.map(({ casNumber }) => casNumber),
  ].includes(MANGANESE_DIOXIDE_CAS);
  const recorded = record?.manganeseDioxideFraction;
  const manganese =
    recorded === undefined
      ? earthManganeseDioxide(record?.colourIndexName, record?.earth)
      : typeof recorded === "number"
        ? recorded
        : recorded.value;
  if (manganese === undefined || listsManganese) return taken(whole, components, records);
  const [rest, ...oxides] = withManganeseDioxide(whole, manganese, manganeseShare(records));
  const dioxide = oxides.map((oxide) => ({ ...oxide, name: nameOnPage(oxide, records) }));
  return rest === undefined ? dioxide : [...taken(rest, components, records), ...dioxide];
}

/**
 * An oil, drier or thinner as the substances in it. On its own it is what its
 * supplier classifies as a whole (`as supplied`), where the record has that.
 */
export function vehicleIngredients(
  slug: string,
  massFraction: Quantity,
  records: Records,
  by: "components" | "as supplied" = "components",
): Ingredient[] {
  const record = records.vehicles.get(slug)?.record;
  const whole = substance(slug, record?.name ?? slug, record ?? {}, massFraction, records);
  return by === "as supplied" && record?.hazards !== undefined
    ? [whole]
    : taken(whole, record?.components ?? [], records);
}

/** What is bought as a mixture, taken apart into its components; what they leave open stays unaccounted for. */
function taken(
  whole: Ingredient,
  components: readonly ComponentForm[],
  records: Records,
): Ingredient[] {
  if (components.length === 0) return [whole];
  const listed = components.map((one) =>
    substance(
      componentSlug(one.name),
      nameOnPage({ ...one, names: { [recordLanguage(records.workshop)]: one.name } }, records),
      { ...one, translations: { [recordLanguage(records.workshop)]: { name: one.name } } },
      typeof one.massFraction === "number" ? one.massFraction : one.massFraction.value,
      records,
    ),
  );
  return dilutedIngredients(listed, whole.massFraction);
}

/** One substance in two driers goes by one slug, and so counts once. */
function componentSlug(name: string): string {
  return (
    name
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, "-")
      .replace(/^-|-$/g, "") || "component"
  );
}

function substance(
  slug: string,
  name: string,
  record: Partial<HazardRecord> & {
    readonly casNumber?: string | undefined;
    readonly colourIndexName?: string | undefined;
    readonly translations?: PigmentRecord["translations"];
  },
  massFraction: Quantity,
  { hazardKnowledge, language }: Records,
): Ingredient {
  const { casNumber, hazards, acuteToxicity, workplaceLimit } = record;
  return {
    slug,
    name,
    names: recordedNames({ ...record, name }, language),
    casNumber,
    massFraction,
    classifications: classifications(hazards),
    ...(acuteToxicity !== undefined && { acuteToxicity }),
    metals: hazardMetals(record, hazardKnowledge.metals),
    substances: substancesOf(record, hazardKnowledge.substances),
    ...(workplaceLimit !== undefined && { workplaceLimit }),
  };
}

/** A substance in the language of the page: as the record has it, unless the tables name it in that language. */
function nameOnPage(
  substance: NamedSubstance,
  { language, hazardKnowledge: { substanceNames } }: Records,
): string {
  return substanceName(substance, language, substanceNames) ?? substance.name;
}

/** What a record calls itself, in its own language and in others. @param language that its name stands in. */
export function recordedNames(
  { name, translations = {} }: Pick<PigmentRecord, "name" | "translations">,
  language: Language,
): NamesByLanguage {
  return {
    [language]: name,
    ...Object.fromEntries(Object.entries(translations).map(([each, texts]) => [each, texts.name])),
  };
}

function manganeseShare({ hazardKnowledge: { metals } }: Records): number {
  const share = metalShares({ casNumber: MANGANESE_DIOXIDE_CAS }, metals).manganese;
  if (typeof share !== "number")
    throw new RangeError("The table of metals has no formula for manganese dioxide.");
  return share;
}

/** An empty list says that the supplier states none; no list, that nothing is known. */
function classifications(
  hazards: readonly HazardForm[] | undefined,
): Ingredient["classifications"] {
  if (hazards === undefined) return undefined;
  if (hazards.length === 0) return "none stated";
  return hazards.map((hazard): string | ClassificationForm => {
    if (typeof hazard === "string") return hazard;
    const { limits, ...rest } = hazard;
    return { ...rest, ...(limits !== undefined && { specificLimits: limits }) };
  });
}
