import type { DrierMetal } from "../../drying/added-drier.ts";
import type { Oil } from "../../drying/oils.ts";
import type { RowStanding } from "../../knowledge/cells.ts";
import type { PigmentKnowledge } from "../../knowledge/pigment-knowledge.ts";
import { certain } from "../../quantities/at.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import {
  inputsOf,
  isKnown,
  notStated,
  sourceFigure,
  type Figure,
  type Input,
  type RecordRoot,
} from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import { drierMetals } from "../../records/drier-metals.ts";
import type { Records } from "../../records/records.ts";
import type { PigmentRecord } from "../../records/schema/pigment.ts";
import type { VehicleKind } from "../../records/schema/terms.ts";
import type { VehicleRecord } from "../../records/schema/vehicle.ts";
import * as d from "../declaration.ts";
import { found, type Amounts, type Found } from "../found.ts";
import { recordedFigure } from "../recorded-figure.ts";
import { vehicleRecord, WORKSHOP } from "../record-inputs.ts";
import { orHandbook } from "./handbook-figure.ts";
import type { SourceKey } from "../../sources/source.ts";

/** A pigment or vehicle of a colour as its own record has it. */
interface Recorded<R> {
  readonly slug: string;
  readonly record: R;
  /** What names it in the colour's record, and its own. */
  readonly inputs: readonly Input[];
}

export interface RecordedPigment extends Recorded<PigmentRecord> {
  readonly known: PigmentKnowledge;
}
export interface RecordedVehicle extends Recorded<VehicleRecord> {
  readonly records: Records;
}

/** A figure only where it is recorded, and the currency with it. */
const PRICE = found(
  d.workshopAlone(
    d.optional(d.number({ unit: "currency/kg", kind: "decimal", digits: 2, word: "price" })),
  ),
  ({
    record: { pricePerKg },
    inputs,
    records: {
      workshop: { currency },
    },
  }: Recorded<{ readonly pricePerKg?: number | undefined }> & { readonly records: Records }) =>
    pricePerKg === undefined || currency === undefined
      ? undefined
      : sourceFigure("stated", pricePerKg, {
          unit: `${currency}/kg`,
          method: "as recorded",
          inputs: [...inputs, WORKSHOP],
        }),
);

/** What a pigment's record says, else what a handbook expects of it. */
function recordedOr<D extends d.Declared<Figure<Quantity>>>(
  part: D,
  key:
    | "densityGPerCm3"
    | "oilAbsorptionGPer100g"
    | "bulkDensityLooseGPerMl"
    | "bulkDensityTappedGPerMl",
  handbook: "densities" | "oilAbsorptions" | "looseDensities" | "tappedDensities",
): Found<D, RecordedPigment> {
  const { unit } = d.figureForm(part);
  const how = ({ slug, record, known, inputs }: RecordedPigment): Figure<Quantity> =>
    orHandbook(
      recordedFigure(record[key], { unit, wanting: `pigments.${slug}.${key}`, inputs }),
      known[handbook],
      record.colourIndexName,
      unit,
    );
  return { ...part, found: how };
}

/** What the tables know of a pigment by its Colour Index name. */
function told<V extends string | number>(
  value: V | undefined,
  unit: string,
  row: { readonly source: SourceKey; readonly standing: RowStanding } | undefined,
  inputs: readonly Input[],
): Figure<V> | undefined {
  return value === undefined || row === undefined
    ? undefined
    : sourceFigure<V>(row.standing === "published" ? "stated" : "estimated", value, {
        unit,
        method: "by its Colour Index name",
        source: row.source,
        inputs,
      });
}

/** What a pigment's record tells of it, or what the tables expect of one of its Colour Index name. */
export const PIGMENT_FACTS = d.section({
  densityGPerCm3: recordedOr(
    d.quantity({ unit: "g/cm3", kind: "significant", digits: 3, word: "density" }),
    "densityGPerCm3",
    "densities",
  ),
  oilAbsorptionGPer100g: recordedOr(
    d.quantity({ unit: "g/100 g", kind: "significant", digits: 3, word: "oilAbsorption" }),
    "oilAbsorptionGPer100g",
    "oilAbsorptions",
  ),
  bulkDensityLooseGPerMl: recordedOr(
    d.quantity({ unit: "g/ml", kind: "significant", digits: 2, word: "bulkDensityLoose" }),
    "bulkDensityLooseGPerMl",
    "looseDensities",
  ),
  bulkDensityTappedGPerMl: recordedOr(
    d.quantity({ unit: "g/ml", kind: "significant", digits: 2, word: "bulkDensityTapped" }),
    "bulkDensityTappedGPerMl",
    "tappedDensities",
  ),
  /** Only where the record tells no chemistry. */
  formula: found(
    d.optional(d.notation("formula")),
    ({ record, known: { identity }, inputs }: RecordedPigment) =>
      record.chemistry === undefined
        ? told<string>(identity?.formula, "", identity, inputs)
        : undefined,
  ),
  mineral: found(
    d.optional(d.notation("mineral")),
    ({ record: { mineral }, known: { identity }, inputs }: RecordedPigment) =>
      mineral === undefined
        ? told<string>(identity?.mineral, "", identity, inputs)
        : sourceFigure<string>("stated", mineral, { unit: "", method: "as recorded", inputs }),
    [
      "titanium-white.pigments.titanium-dioxide.mineral",
      "its row of pigments.csv",
      "rutile or anatase",
    ],
  ),
  introduced: found(
    d.optional(d.number({ unit: "1", kind: "decimal", digits: 0, word: "introduced" })),
    ({ known: { identity }, inputs }: RecordedPigment) =>
      told(identity?.year, "1", identity, inputs),
    ["titanium-white.pigments.titanium-dioxide.introduced", "its row of pigments.csv", 1920],
  ),
  expectedOpacity: found(
    d.optional(d.word("expectedOpacity")),
    ({ known: { opacity }, inputs }: RecordedPigment) =>
      told<string>(opacity?.opacity, "", opacity, inputs),
  ),
  particleSizeUm: found(
    d.quantity({ unit: "um", kind: "significant", digits: 2, word: "particleSize" }),
    ({ slug, record, inputs }: RecordedPigment) =>
      recordedFigure(record.particle?.sizeUm, {
        unit: "um",
        wanting: `pigments.${slug}.particle.sizeUm`,
        inputs,
      }),
    ["lamp-black.pigments.lamp-black.particleSizeUm", "as recorded", [0.06, 0.12]],
  ),
});
export type PigmentFacts = d.SectionOf<typeof PIGMENT_FACTS>;

/** A pigment of the colour, with the figures that everything else starts from. */
export const PIGMENT = d.headed("pigmentSection", {
  slug: d.text,
  name: d.text,
  colourIndexName: d.optional(d.text),
  colourIndexNumber: d.optional(d.text),
  casNumber: d.optional(d.text),
  massFraction: d.number({ ...d.SHARE, word: "massFraction" }),
  ...PIGMENT_FACTS.shape.members,
  /** Only where the record has one. */
  pricePerKg: PRICE,
});
export type PigmentPart = d.SectionOf<typeof PIGMENT>;

const OIL = found(
  d.orUndefined(d.plain<Oil>({ type: "string" })),
  ({ record }: RecordedVehicle) => record.oil,
);

/** As recorded, else what is usual of the oil that it is. */
function oilDensity({ slug, record, inputs, records }: RecordedVehicle): Figure<Quantity> {
  const { densityGPerCm3, oil } = record;
  const unit = "g/cm3";
  const wanting = `vehicles.${slug}.densityGPerCm3`;
  const recorded = recordedFigure(densityGPerCm3, { unit, wanting, inputs });
  if (isKnown(recorded) || oil === undefined) return recorded;
  const { gPerCm3, source } = certain(
    records.knowledge.tables.oilDensities.find((row) => row.oil === oil),
  );
  const method = `usual range of ${oil} oil`;
  return sourceFigure<Quantity>("estimated", gPerCm3, {
    unit,
    method,
    source,
    inputs: inputsOf(recorded),
  });
}
const OIL_DENSITY = { unit: "g/cm3", kind: "significant", digits: 3 } as const;

/** The oil that the colour is made in. */
export const VEHICLE = d.section({
  slug: d.text,
  name: d.text,
  oil: OIL,
  densityGPerCm3: found(d.quantity({ ...OIL_DENSITY, word: "oilDensity" }), oilDensity),
  pricePerKg: PRICE,
});
export type VehiclePart = d.SectionOf<typeof VEHICLE>;

export interface RecordedAddition extends RecordedVehicle {
  /** Its share of the oil, and where the record says it. */
  readonly recordedPercent: number;
  readonly dose: readonly RecordRoot[];
}

/** How much of a drier's metal is on the oil [%], by how much of it is in the drier. */
function metalOnOil(
  percentOfOil: Figure<Quantity>,
  percent: number | undefined,
  slug: string,
): Figure<Quantity> {
  const drier = vehicleRecord(slug);
  if (percent === undefined)
    return notStated(
      "how much metal is in it is not recorded",
      [`vehicles.${slug}.metals`],
      [percentOfOil, drier],
    );
  return derivedFigure(
    { name: `${percent} % of metal in it, as recorded`, unit: "%", beside: [drier] },
    { percentOfOil },
    (v) => (v.percentOfOil * percent) / 100,
  );
}

/** A drier, medium or thinner on top of pigment and oil. */
export const ADDITION = d.section({
  slug: d.text,
  name: d.text,
  kind: d.plain<VehicleKind>({ type: "string" }),
  oil: OIL,
  /** Of a drier, each metal that bears on drying, by mass on the oil [%]. */
  metals: found(
    d.list(
      d.section({
        slug: d.plain<DrierMetal>({ type: "string" }),
        percentOfOil: d.quantity({
          unit: "%",
          kind: "significant",
          digits: 2,
          word: "metalPercentOfOil",
        }),
      }),
    ),
    ({ slug, record, percentOfOil }: RecordedAddition & Amounts<"percentOfOil">) =>
      drierMetals(record).map(({ metal, percent }) => ({
        slug: metal,
        percentOfOil: metalOnOil(percentOfOil, percent, slug),
      })),
  ),
  /** By mass on the oil [%]. */
  percentOfOil: found(
    d.number({ unit: "%", kind: "significant", digits: 2, word: "percentOfOil" }),
    ({ recordedPercent, dose: inputs }: RecordedAddition) =>
      sourceFigure("stated", recordedPercent, { unit: "%", method: "as recorded", inputs }),
    ["lamp-black.additions.cobalt-zirconium-drier.percentOfOil", "as recorded", 0.4],
  ),
  densityGPerCm3: found(d.quantity({ ...OIL_DENSITY, word: "additionDensity" }), oilDensity),
  pricePerKg: PRICE,
});
export type AdditionPart = d.SectionOf<typeof ADDITION>;
