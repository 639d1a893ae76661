import { labelLanguages } from "../../records/label-languages.ts";
import { labelElements, type LabelElements } from "../../hazard/label/label-elements.ts";
import {
  marketRulings,
  mayBeSold,
  type MarketRuling,
} from "../../hazard/markets/market-statements.ts";
import type { Ingredient, Composition } from "../../hazard/classify/composition.ts";
import { labelDifferences } from "../../hazard/label/stated-label.ts";
import { studioCautions } from "../../hazard/studio/studio-cautions.ts";
import type { RecordRoot } from "../../quantities/figure.ts";
import type { Colour, Records } from "../../records/records.ts";
import type { StatedLabelForm } from "../../records/schema/hazard-form.ts";
import { dryPigmentPart, vehiclePartHandled } from "./handled-part.ts";
import { paintIngredients } from "./hazard-ingredients.ts";
import { labelPart, printedElements, rulingsNamed, type PrintedElements } from "./label-part.ts";
import type { OilSection } from "../oil/oil-figures.ts";
import type { CautionsSection, LabelPart } from "./handling-sections.ts";
import type { PaintOfColour } from "../paint-as-made.ts";
import type { PigmentPart, VehiclePart } from "../pigments/pigment-figures.ts";
import {
  colourRecord,
  ingredientRecords,
  recordsUnder,
  restingOn,
  WORKSHOP,
} from "../record-inputs.ts";
import { studioPigment } from "./studio-pigment.ts";
import { given } from "../../quantities/given.ts";

/** Label elements as the maker states them, else worked out; markets; cautions of the studio by operation. */
export function cautionsSection({
  colour,
  pigments: parts,
  vehicle,
  oil,
  records,
}: PaintOfColour): CautionsSection {
  const { workshop } = records;
  const ingredients = paintIngredients(colour, parts, vehicle, oil, records);
  const mixture = paintMixture(colour, ingredients, records);
  const workedOut = labelElements(mixture, records.hazardKnowledge.precautions);
  const { label, legalBasis = [], additions = [] } = colour.record;
  const ufi = label?.ufi ?? colour.record.ufi;
  const shown = labelPart(
    label === undefined ? printedElements(workedOut) : statedElements(label),
    workedOut,
    ingredients,
    labelLanguages(workshop),
    records.hazardKnowledge,
  );
  const dryPigment = parts.map(({ slug }) => dryPigmentPart(slug, records));
  const handled = [...new Set(given([vehicle?.slug, ...additions.map((one) => one.vehicle)]))].map(
    (slug) => vehiclePartHandled(slug, records),
  );
  const markets = (workshop.markets ?? []).map((market) => ({
    market,
    rulings: marketRulings(
      {
        ingredients,
        form: "paste",
        hazardStatements: shown.hazardStatements,
        legalBasis,
        publicSale: !legalBasis.some((basis) => basis.market === market),
        reviewed: label?.review !== undefined,
        hasFormulaIdentifier: ufi !== undefined,
      },
      market,
      records.hazardKnowledge.acts,
    ),
  }));
  const named = rulingsNamed([...parts, ...ingredients]);
  return restingOn(cautionRecords(colour, parts, oil, records), {
    frame: label?.frame ?? workedOut.frame,
    edition: label?.date ?? workedOut.edition,
    basis: label === undefined ? "worked out" : "stated by the maker",
    ...shown,
    checks:
      label === undefined
        ? []
        : labelDifferences(label, workedOut, records.hazardKnowledge.precautions).map(named),
    ...smallPackageOf(shown, workedOut),
    restrictions: markets.flatMap(({ rulings }) => rulings.map(publishedRuling)),
    notForSale: markets.filter(({ rulings }) => !mayBeSold(rulings)).map(({ market }) => market),
    onLegalBasis: markets
      .filter(
        ({ rulings }) =>
          mayBeSold(rulings) && rulings.some(({ effect }) => effect === "forbidden unless"),
      )
      .map(({ market }) => market),
    studio: studioCautions(
      parts.map((part, i) => studioPigment(part, dryPigment[i]?.hazardStatements ?? [], records)),
      {
        ingredients,
        hazardStatements: shown.hazardStatements,
        ofDust: workedOut.leftOut
          .filter(({ rule }) => rule === "dust-not-from-a-paste")
          .map(({ statement }) => statement),
        sensitisers: workedOut.sensitisers,
        dryingOil: mayDry(vehicle, records),
      },
      records.hazardKnowledge,
    ).map((caution) => ({ ...named(caution), reason: named(caution.reason) })),
    dryPigment,
    additions: handled.filter(
      (one) =>
        one.gaps.length > 0 || one.hazardStatements.length > 0 || one.supplemental.length > 0,
    ),
    ...(ufi !== undefined && { ufi }),
    ...(label !== undefined && { maker: makerWords(label) }),
  });
}

/** An oil that the record of the vehicle does not name is handled as one that dries. */
function mayDry(vehicle: VehiclePart | undefined, { vehicles }: Records): boolean {
  const kind = vehicles.get(vehicle?.slug ?? "")?.record.kind;
  return vehicle?.oil !== undefined || kind === "oil" || kind === "medium";
}

/** The maker's label, the ingredients with the sources of their hazards, what tells how much of each there is, and where it is sold. */
function cautionRecords(
  colour: Colour,
  parts: readonly PigmentPart[],
  oil: OilSection,
  records: Records,
): RecordRoot[] {
  const ingredients = ingredientRecords(colour, records);
  const sources = ingredients.flatMap(({ kind, slug }) =>
    (
      (kind === "pigment" ? records.pigments : records.vehicles).get(slug)?.record.hazards ?? []
    ).flatMap((hazard) =>
      typeof hazard === "string" || hazard.source === undefined ? [] : [hazard.source],
    ),
  );
  return [
    ...colourRecord(colour, "label", "ufi", "legalBasis", "pigments", "vehicle", "additions"),
    ...recordsUnder([oil.oilIndexGPer100g, ...parts.map(({ massFraction }) => massFraction)]),
    ...ingredients,
    WORKSHOP,
    ...sources.map((slug): RecordRoot => ({ kind: "source", slug })),
  ];
}

function paintMixture(
  { sizes, record: { legalBasis = [] } }: Colour,
  ingredients: readonly Ingredient[],
  { workshop: { frame, markets = [] } }: Records,
): Composition {
  const bound = new Set(legalBasis.map(({ market }) => market));
  return {
    ingredients,
    form: "paste",
    frame: frame ?? "EU CLP",
    // One label goes to all markets: it is for the public as soon as the public can buy it in one of them.
    publicSale:
      markets.length === 0 ? bound.size === 0 : markets.some((market) => !bound.has(market)),
    // The largest that it is sold in: reductions for small packages then hold for every size.
    ...(sizes.length > 0 && { packageMl: Math.max(...sizes.map(({ ml }) => ml)) }),
  };
}

function statedElements({
  classification = [],
  signalWord,
  pictograms,
  hazardStatements,
  precautionaryStatements = [],
  supplemental = [],
  sensitisers = [],
}: StatedLabelForm): PrintedElements {
  return {
    classification,
    signalWord,
    pictograms,
    hazardStatements,
    precautionaryStatements,
    supplemental,
    sensitisers,
  };
}

function makerWords({
  date,
  safetyDataSheet,
  review,
  ufi,
}: StatedLabelForm): NonNullable<CautionsSection["maker"]> {
  return {
    date,
    ...(safetyDataSheet !== undefined && {
      dataSheet: typeof safetyDataSheet === "string" ? { url: safetyDataSheet } : safetyDataSheet,
    }),
    ...(review !== undefined && {
      review: {
        by: review.by,
        date: review.date,
        ...(review.wording !== undefined && { wording: review.wording }),
      },
    }),
    ...(ufi !== undefined && { ufi }),
  };
}

/** Of what may be left out only what the label that is printed carries: the maker's may have other statements. */
function smallPackageOf(
  { hazardStatements, precautionaryStatements }: LabelPart,
  { smallPackage }: LabelElements,
): Pick<CautionsSection, "smallPackage"> {
  if (smallPackage === undefined) return {};
  const { rule, values, source } = smallPackage;
  const carried = new Set([...hazardStatements, ...precautionaryStatements]);
  const statements = values.statements.filter((code) => carried.has(code));
  return statements.length === 0
    ? {}
    : {
        smallPackage: {
          rule,
          values: { ...values, statements },
          ...(source !== undefined && { source }),
        },
      };
}

/** A ruling of a market without what only the build needs of it. */
function publishedRuling(ruling: MarketRuling): CautionsSection["restrictions"][number] {
  return Object.fromEntries(
    Object.entries(ruling).filter(([key]) => key !== "act" && key !== "legalBasis"),
  ) as unknown as CautionsSection["restrictions"][number];
}
