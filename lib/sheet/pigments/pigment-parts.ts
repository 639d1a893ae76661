import { massFractions } from "../../formulation/mass-fractions.ts";
import { at, certain } from "../../quantities/at.ts";
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
import { derivedFigure } from "../../quantities/derived-figure.ts";
import { drierMetals } from "../../records/drier-metals.ts";
import type { Checked, Colour, Records } from "../../records/records.ts";
import type { AmountRecord } from "../../records/schema/amount.ts";
import type { PigmentRecord } from "../../records/schema/pigment.ts";
import { knownFacts } from "./known-facts.ts";
import { orHandbook } from "./handbook-figure.ts";
import {
  colourRecord,
  pigmentRecord,
  restingOn,
  vehicleRecord,
  WORKSHOP,
} from "../record-inputs.ts";
import { recordedFigure } from "../recorded-figure.ts";
import { pigmentShares, type KnownTube } from "./parts-of-paint.ts";
import type { AdditionPart, PigmentPart, VehiclePart } from "./pigment-figures.ts";

/** The pigments of a colour with the figures that everything else starts from. */
export function pigmentParts(
  colour: Colour,
  tubes: readonly KnownTube[] | undefined,
  records: Records,
): PigmentPart[] {
  const fractions = tubes === undefined ? recordedShares(colour) : pigmentShares(colour, tubes);
  const parts = colour.record.pigments.flatMap(({ pigment: slug }, i) => {
    const pigment = records.pigments.get(slug);
    return pigment === undefined ? [] : [pigmentPart(pigment, at(fractions, i), records)];
  });
  return restingOn(colourRecord(colour, "pigments"), parts);
}

/** One dry pigment, in whatever share of a colour. */
export function pigmentPart(
  { slug, record: pigment }: Checked<PigmentRecord>,
  share: Figure<number>,
  records: Records,
): PigmentPart {
  const { colourIndexName, colourIndexNumber, casNumber } = pigment;
  const known = records.knowledge.pigment(colourIndexName);
  const inputs = [pigmentRecord(slug)];
  const recorded = (amount: AmountRecord | undefined, unit: string, field: string) =>
    recordedFigure(amount, { unit, wanting: `pigments.${slug}.${field}`, inputs });
  return {
    slug,
    name: pigment.name,
    ...(colourIndexName === undefined ? {} : { colourIndexName }),
    ...(colourIndexNumber === undefined ? {} : { colourIndexNumber }),
    ...(casNumber === undefined ? {} : { casNumber }),
    massFraction: share,
    densityGPerCm3: orHandbook(
      recorded(pigment.densityGPerCm3, "g/cm3", "densityGPerCm3"),
      known.densities,
      colourIndexName,
      "g/cm3",
    ),
    oilAbsorptionGPer100g: orHandbook(
      recorded(pigment.oilAbsorptionGPer100g, "g/100 g", "oilAbsorptionGPer100g"),
      known.oilAbsorptions,
      colourIndexName,
      "g/100 g",
    ),
    bulkDensityLooseGPerMl: orHandbook(
      recorded(pigment.bulkDensityLooseGPerMl, "g/ml", "bulkDensityLooseGPerMl"),
      known.looseDensities,
      colourIndexName,
      "g/ml",
    ),
    bulkDensityTappedGPerMl: orHandbook(
      recorded(pigment.bulkDensityTappedGPerMl, "g/ml", "bulkDensityTappedGPerMl"),
      known.tappedDensities,
      colourIndexName,
      "g/ml",
    ),
    ...knownFacts(pigment, known, inputs),
    particleSizeUm: recorded(pigment.particle?.sizeUm, "um", "particle.sizeUm"),
    ...priced(pigment.pricePerKg, inputs, records),
  };
}

/** One pigment is the whole of it; the parts of several are never invented. */
function recordedShares(colour: Colour): Figure<number>[] {
  const { pigments } = colour.record;
  const inputs = colourRecord(colour, "pigments");
  const fractions = massFractions(pigments.map(({ parts }) => parts));
  return pigments.map(({ pigment }, i) => {
    const fraction = fractions?.[i];
    return fraction === undefined
      ? notStated(
          "the parts of its pigments are not in the record",
          [`pigments.${pigment}.parts`],
          inputs,
        )
      : sourceFigure("stated", fraction, {
          unit: "1",
          method: pigments.length === 1 ? "the only pigment" : "parts by mass, as recorded",
          inputs,
        });
  });
}

/** The oil that a colour is made in: its own, else the workshop's. */
export function vehiclePart(colour: Colour, records: Records): VehiclePart | undefined {
  const slug = colour.record.vehicle ?? records.workshop.vehicle;
  const vehicle = slug === undefined ? undefined : records.vehicles.get(slug)?.record;
  if (slug === undefined || vehicle === undefined) return undefined;
  const inputs = [...colourRecord(colour, "vehicle"), vehicleRecord(slug)];
  return {
    slug,
    name: vehicle.name,
    oil: vehicle.oil,
    densityGPerCm3: oilDensity(
      recordedFigure(vehicle.densityGPerCm3, {
        unit: "g/cm3",
        wanting: `vehicles.${slug}.densityGPerCm3`,
        inputs,
      }),
      vehicle.oil,
      records,
    ),
    ...priced(vehicle.pricePerKg, inputs, records),
  };
}

/** Driers, mediums and thinners that a colour's oil is given on top. */
export function additionParts(colour: Colour, records: Records): AdditionPart[] {
  return (colour.record.additions ?? []).flatMap(({ vehicle: slug, percentOfOil }) => {
    const added = records.vehicles.get(slug)?.record;
    if (added === undefined) return [];
    const { name, kind, oil } = added;
    const dose = colourRecord(colour, "additions");
    const share = sourceFigure("stated", percentOfOil, {
      unit: "%",
      method: "as recorded",
      inputs: dose,
    });
    const inputs = [...dose, vehicleRecord(slug)];
    return [
      {
        slug,
        name,
        kind,
        oil,
        metals: drierMetals(added).map(({ metal, percent }) => ({
          slug: metal,
          percentOfOil: metalOnOil(share, percent, `vehicles.${slug}.metals`, vehicleRecord(slug)),
        })),
        percentOfOil: share,
        densityGPerCm3: oilDensity(
          recordedFigure(added.densityGPerCm3, {
            unit: "g/cm3",
            wanting: `vehicles.${slug}.densityGPerCm3`,
            inputs,
          }),
          oil,
          records,
        ),
        ...priced(added.pricePerKg, inputs, records),
      },
    ];
  });
}

function metalOnOil(
  share: Figure<Quantity>,
  percent: number | undefined,
  wanting: string,
  drier: RecordRoot,
): Figure<Quantity> {
  if (percent === undefined)
    return notStated("how much metal is in it is not recorded", [wanting], [share, drier]);
  return derivedFigure(
    { name: `${percent} % of metal in it, as recorded`, unit: "%", beside: [drier] },
    { share },
    (v) => (v.share * percent) / 100,
  );
}

/** A price is a figure only where it is recorded, and the currency with it. */
function priced(
  pricePerKg: number | undefined,
  inputs: readonly Input[],
  { workshop: { currency } }: Records,
): { readonly pricePerKg?: Figure<number> } {
  if (pricePerKg === undefined || currency === undefined) return {};
  return {
    pricePerKg: sourceFigure("stated", pricePerKg, {
      unit: `${currency}/kg`,
      method: "as recorded",
      inputs: [...inputs, WORKSHOP],
    }),
  };
}

function oilDensity(
  recorded: Figure<Quantity>,
  oil: VehiclePart["oil"],
  { knowledge }: Records,
): Figure<Quantity> {
  if (isKnown(recorded) || oil === undefined) return recorded;
  const { gPerCm3, source } = certain(knowledge.tables.oilDensities.find((row) => row.oil === oil));
  return sourceFigure<Quantity>("estimated", gPerCm3, {
    unit: "g/cm3",
    method: `usual range of ${oil} oil`,
    source,
    inputs: inputsOf(recorded),
  });
}
