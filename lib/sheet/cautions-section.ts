import { labelElements, type LabelElements } from "../hazard/label-elements.ts";
import { marketRulings, mayBeSold, type MarketRuling } from "../hazard/market-rulings.ts";
import type { Ingredient, Mixture } from "../hazard/mixture.ts";
import { labelDifferences } from "../hazard/stated-label.ts";
import { studioCautions, type StudioPigment } from "../hazard/studio-cautions.ts";
import { isKnown, type Figure } from "../quantities/figure.ts";
import { midpoint, type Quantity } from "../quantities/range.ts";
import type { Colour, Records } from "../records/records.ts";
import type { StatedLabelForm } from "../records/schema/hazard-form.ts";
import { paintIngredients, pigmentIngredient } from "./hazard-ingredients.ts";
import type { OilSection } from "./paint-sections.ts";
import type { CautionsSection, PigmentPart, VehiclePart } from "./sheet.ts";

/** Label elements as the maker states them, else worked out; markets; cautions of the studio by operation. */
export function cautionsSection(colour: Colour, parts: readonly PigmentPart[], vehicle: VehiclePart | undefined, oil: OilSection, records: Records): CautionsSection {
  const ingredients = paintIngredients(colour, parts, vehicle, oil, records);
  const mixture = paintMixture(colour, ingredients, records);
  const workedOut = labelElements(mixture);
  const { label } = colour.record;
  const dry = parts.map((part) => ({ part, label: labelElements({ ...mixture, ingredients: [pigmentIngredient(part.slug, 1, records)], form: "powder" }) }));
  const shown = label === undefined ? workedOutElements(workedOut) : statedElements(label);
  const markets = (records.workshop.markets ?? []).map((market) => ({
    market,
    rulings: marketRulings({
      ingredients, form: "paste", hazardStatements: shown.hazardStatements, publicSale: mixture.publicSale, legalBasis: colour.record.legalBasis ?? [],
      reviewed: label?.review !== undefined, hasFormulaIdentifier: label?.ufi !== undefined,
    }, market),
  }));
  return {
    ...shown,
    traces: workedOut.traces,
    unknown: workedOut.gaps.flatMap(({ rule, values }) => (rule === "no-hazard-data" ? [String(values["name"])] : [])),
    checks: label === undefined ? [] : labelDifferences(label, workedOut),
    unknownAcuteToxicity: workedOut.unknownAcuteToxicity,
    restrictions: markets.flatMap(({ rulings }) => rulings.map(publishedRuling)),
    notForSale: markets.filter(({ rulings }) => !mayBeSold(rulings)).map(({ market }) => market),
    studio: studioCautions(
      dry.map(({ part, label: own }) => studioPigment(part, own, records)),
      { ingredients, hazardStatements: shown.hazardStatements, sensitisers: workedOut.sensitisers, dryingOil: vehicle?.oil !== undefined },
    ),
    dryPigment: dry.map(({ part, label: own }) => ({
      slug: part.slug, known: records.pigments.get(part.slug)?.record.hazards !== undefined,
      signalWord: own.signalWord, pictograms: own.pictograms, hazardStatements: own.hazardStatements,
    })),
    ...(label === undefined ? {} : { dataSheet: { ...(label.safetyDataSheet === undefined ? {} : { url: label.safetyDataSheet }), date: label.date } }),
  };
}

function paintMixture({ record }: Colour, ingredients: readonly Ingredient[], { workshop }: Records): Mixture {
  const sizes = (record.sizes ?? []).map(({ ml }) => ml);
  return {
    ingredients, form: "paste", frame: workshop.frame ?? "EU CLP",
    publicSale: (record.legalBasis ?? []).length === 0,
    // The largest that it is sold in: reductions for small packages then hold for every size.
    ...(sizes.length === 0 ? {} : { packageMl: Math.max(...sizes) }),
  };
}

type ShownElements = Pick<CautionsSection, "frame" | "edition" | "basis" | "signalWord" | "pictograms" | "hazardStatements" | "precautionaryStatements" | "supplemental" | "sensitisers">;

function workedOutElements({ frame, edition, signalWord, pictograms, hazardStatements, precautionaryStatements, supplemental, sensitisers }: LabelElements): ShownElements {
  return { frame, edition, basis: "worked out", signalWord, pictograms, hazardStatements, precautionaryStatements: precautionaryStatements.map(({ statement }) => statement), supplemental, sensitisers };
}

function statedElements({ frame, date, signalWord, pictograms, hazardStatements, precautionaryStatements = [], supplemental = [] }: StatedLabelForm): ShownElements {
  return { frame, edition: date, basis: "stated by the maker", signalWord, pictograms, hazardStatements, precautionaryStatements, supplemental, sensitisers: [] };
}

/** A ruling of a market without what only the build needs of it. */
function publishedRuling({ market, effect, met, rule, values, source }: MarketRuling): CautionsSection["restrictions"][number] {
  return { market, effect, met, rule, values, ...(source === undefined ? {} : { source }) };
}

function studioPigment({ slug, name, colourIndexName, colourIndexNumber, casNumber, bulkDensityLooseGPerMl, bulkDensityTappedGPerMl }: PigmentPart, label: LabelElements, records: Records): StudioPigment {
  const sizeUm = records.pigments.get(slug)?.record.particle?.sizeUm;
  return {
    slug, name, colourIndexName, colourIndexNumber, casNumber,
    ingredients: [pigmentIngredient(slug, 1, records)], hazardStatements: label.hazardStatements,
    ...known("bulkDensityLooseGPerMl", bulkDensityLooseGPerMl), ...known("bulkDensityTappedGPerMl", bulkDensityTappedGPerMl),
    ...(sizeUm === undefined ? {} : { particleSizeUm: midpoint(typeof sizeUm === "number" ? sizeUm : sizeUm.value) }),
  };
}

function known<K extends string>(name: K, figure: Figure<Quantity>): Partial<Record<K, Quantity>> {
  return isKnown(figure) ? ({ [name]: figure.value } as Record<K, Quantity>) : {};
}
