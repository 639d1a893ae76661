import { massFractions } from "../../formulation/mass-fractions.ts";
import { OIL_DENSITY_G_PER_CM3 } from "../../formulation/vehicle-density.ts";
import {
  isKnown,
  notStated,
  sourceFigure,
  type Figure,
  type FigureRef,
} from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import { drierMetals } from "../../records/drier-metals.ts";
import type { Checked, Colour, Records } from "../../records/records.ts";
import type { PigmentRecord } from "../../records/schema/pigment.ts";
import { orHandbook } from "./handbook-figure.ts";
import { recordedFigure } from "../recorded-figure.ts";
import type { AdditionPart, PigmentPart, VehiclePart } from "../sheet.ts";

/** The pigments of a colour with the figures that everything else starts from. */
export function pigmentParts(colour: Colour, records: Records): PigmentPart[] {
  const fractions = massFractions(colour.record.pigments.map(({ parts }) => parts));
  return colour.record.pigments.flatMap(({ pigment: slug }, i) => {
    const pigment = records.pigments.get(slug);
    return pigment === undefined
      ? []
      : [
          pigmentPart(
            pigment,
            massFraction(fractions?.[i], colour.record.pigments.length, `pigments.${slug}.parts`),
            records,
          ),
        ];
  });
}

/** One dry pigment, in whatever share of a colour. */
export function pigmentPart(
  { slug, record: pigment }: Checked<PigmentRecord>,
  share: Figure<number>,
  records: Records,
): PigmentPart {
  const { colourIndexName, colourIndexNumber, casNumber } = pigment;
  const known = records.knowledge.pigment(colourIndexName);
  const wanting = (field: string): string => `pigments.${slug}.${field}`;
  return {
    slug,
    name: pigment.name,
    ...(colourIndexName === undefined ? {} : { colourIndexName }),
    ...(colourIndexNumber === undefined ? {} : { colourIndexNumber }),
    ...(casNumber === undefined ? {} : { casNumber }),
    massFraction: share,
    densityGPerCm3: orHandbook(
      recordedFigure(pigment.densityGPerCm3, "g/cm3", wanting("densityGPerCm3")),
      known.densities,
      colourIndexName,
      "g/cm3",
    ),
    oilAbsorptionGPer100g: orHandbook(
      recordedFigure(pigment.oilAbsorptionGPer100g, "g/100 g", wanting("oilAbsorptionGPer100g")),
      known.oilAbsorptions,
      colourIndexName,
      "g/100 g",
    ),
    bulkDensityLooseGPerMl: orHandbook(
      recordedFigure(pigment.bulkDensityLooseGPerMl, "g/ml", wanting("bulkDensityLooseGPerMl")),
      known.looseDensities,
      colourIndexName,
      "g/ml",
    ),
    bulkDensityTappedGPerMl: orHandbook(
      recordedFigure(pigment.bulkDensityTappedGPerMl, "g/ml", wanting("bulkDensityTappedGPerMl")),
      known.tappedDensities,
      colourIndexName,
      "g/ml",
    ),
    particleSizeUm: recordedFigure(pigment.particle?.sizeUm, "um", wanting("particle.sizeUm")),
    ...priced(pigment.pricePerKg, records),
  };
}

/** One pigment is the whole of it; the parts of several are never invented. */
function massFraction(
  fraction: number | undefined,
  count: number,
  wanting: string,
): Figure<number> {
  if (fraction === undefined)
    return notStated("the parts of its pigments are not in the record", [wanting]);
  return sourceFigure("stated", fraction, {
    unit: "1",
    method: count === 1 ? "the only pigment" : "parts by mass, as recorded",
  });
}

/** The oil that a colour is made in: its own, else the workshop's. */
export function vehiclePart(colour: Colour, records: Records): VehiclePart | undefined {
  const slug = colour.record.vehicle ?? records.workshop.vehicle;
  const vehicle = slug === undefined ? undefined : records.vehicles.get(slug)?.record;
  if (slug === undefined || vehicle === undefined) return undefined;
  return {
    slug,
    name: vehicle.name,
    oil: vehicle.oil,
    densityGPerCm3: oilDensity(
      recordedFigure(vehicle.densityGPerCm3, "g/cm3", `vehicles.${slug}.densityGPerCm3`),
      vehicle.oil,
    ),
    ...priced(vehicle.pricePerKg, records),
  };
}

/** Driers, mediums and thinners that a colour's oil is given on top. */
export function additionParts(colour: Colour, records: Records): AdditionPart[] {
  return (colour.record.additions ?? []).flatMap(({ vehicle: slug, percentOfOil }) => {
    const added = records.vehicles.get(slug)?.record;
    if (added === undefined) return [];
    const { name, kind, oil } = added;
    const share: FigureRef<Quantity> = {
      path: `additions.${slug}.percentOfOil`,
      figure: sourceFigure<Quantity>("stated", percentOfOil, { unit: "%", method: "as recorded" }),
    };
    return [
      {
        slug,
        name,
        kind,
        oil,
        metals: drierMetals(added).map(({ metal, percent }) => ({
          slug: metal,
          percentOfOil: metalOnOil(share, percent, `vehicles.${slug}.metals`),
        })),
        percentOfOil: sourceFigure("stated", percentOfOil, { unit: "%", method: "as recorded" }),
        densityGPerCm3: oilDensity(
          recordedFigure(added.densityGPerCm3, "g/cm3", `vehicles.${slug}.densityGPerCm3`),
          oil,
        ),
        ...priced(added.pricePerKg, records),
      },
    ];
  });
}

function metalOnOil(
  share: FigureRef<Quantity>,
  percent: number | undefined,
  wanting: string,
): Figure<Quantity> {
  if (percent === undefined) return notStated("how much metal is in it is not recorded", [wanting]);
  return derivedFigure(
    { name: `${percent} % of metal in it, as recorded`, unit: "%" },
    { share },
    (v) => (v.share * percent) / 100,
  );
}

/** A price is a figure only where it is recorded, and the currency with it. */
function priced(
  pricePerKg: number | undefined,
  { workshop: { currency } }: Records,
): { readonly pricePerKg?: Figure<number> } {
  if (pricePerKg === undefined || currency === undefined) return {};
  return {
    pricePerKg: sourceFigure("stated", pricePerKg, {
      unit: `${currency}/kg`,
      method: "as recorded",
    }),
  };
}

function oilDensity(recorded: Figure<Quantity>, oil: VehiclePart["oil"]): Figure<Quantity> {
  if (isKnown(recorded) || oil === undefined) return recorded;
  return sourceFigure<Quantity>("estimated", OIL_DENSITY_G_PER_CM3[oil], {
    unit: "g/cm3",
    method: `usual range of ${oil} oil`,
    source: "memory-formulation",
  });
}
