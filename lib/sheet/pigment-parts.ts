import { HANDBOOK_LOOSE_G_PER_ML, HANDBOOK_TAPPED_G_PER_ML } from "../formulation/handbook-bulk-density.ts";
import { HANDBOOK_DENSITY_G_PER_CM3 } from "../formulation/handbook-density.ts";
import { HANDBOOK_OIL_ABSORPTION_G_PER_100G } from "../formulation/handbook-oil-absorption.ts";
import { massFractions } from "../formulation/parts.ts";
import { OIL_DENSITY_G_PER_CM3 } from "../formulation/vehicle-density.ts";
import { isKnown, notStated, rootFigure, type Figure } from "../quantities/figure.ts";
import type { Quantity } from "../quantities/range.ts";
import type { Colour, Records } from "../records/records.ts";
import { orHandbook } from "./handbook-figure.ts";
import { recordedFigure } from "./recorded-figure.ts";
import type { PigmentPart, VehiclePart } from "./sheet.ts";

/** The pigments of a colour with the figures that everything else starts from. */
export function pigmentParts(colour: Colour, records: Records): PigmentPart[] {
  const fractions = massFractions(colour.record.pigments.map(({ parts }) => parts));
  return colour.record.pigments.flatMap(({ pigment: slug }, i) => {
    const pigment = records.pigments.get(slug)?.record;
    if (pigment === undefined) return [];
    const { colourIndexName, colourIndexNumber, casNumber } = pigment;
    const wanting = (field: string): string => `pigments.${slug}.${field}`;
    return [{
      slug, name: pigment.name,
      ...(colourIndexName === undefined ? {} : { colourIndexName }),
      ...(colourIndexNumber === undefined ? {} : { colourIndexNumber }),
      ...(casNumber === undefined ? {} : { casNumber }),
      massFraction: massFraction(fractions?.[i], colour.record.pigments.length, wanting("parts")),
      densityGPerCm3: orHandbook(recordedFigure(pigment.densityGPerCm3, "g/cm3", wanting("densityGPerCm3")), HANDBOOK_DENSITY_G_PER_CM3, colourIndexName, "g/cm3"),
      oilAbsorptionGPer100g: orHandbook(recordedFigure(pigment.oilAbsorptionGPer100g, "g/100 g", wanting("oilAbsorptionGPer100g")), HANDBOOK_OIL_ABSORPTION_G_PER_100G, colourIndexName, "g/100 g"),
      bulkDensityLooseGPerMl: orHandbook(recordedFigure(pigment.bulkDensityLooseGPerMl, "g/ml", wanting("bulkDensityLooseGPerMl")), HANDBOOK_LOOSE_G_PER_ML, colourIndexName, "g/ml"),
      bulkDensityTappedGPerMl: orHandbook(recordedFigure(pigment.bulkDensityTappedGPerMl, "g/ml", wanting("bulkDensityTappedGPerMl")), HANDBOOK_TAPPED_G_PER_ML, colourIndexName, "g/ml"),
    }];
  });
}

/** One pigment is the whole of it; the parts of several are never invented. */
function massFraction(fraction: number | undefined, count: number, wanting: string): Figure<number> {
  if (fraction === undefined) return notStated("the parts of its pigments are not in the record", [wanting]);
  return rootFigure("stated", fraction, { unit: "1", method: count === 1 ? "the only pigment" : "parts by mass, as recorded" });
}

/** The oil that a colour is made in: its own, else the workshop's. */
export function vehiclePart(colour: Colour, records: Records): VehiclePart | undefined {
  const slug = colour.record.vehicle ?? records.workshop.vehicle;
  const vehicle = slug === undefined ? undefined : records.vehicles.get(slug)?.record;
  if (slug === undefined || vehicle === undefined) return undefined;
  return { slug, name: vehicle.name, oil: vehicle.oil, densityGPerCm3: oilDensity(recordedFigure(vehicle.densityGPerCm3, "g/cm3", `vehicles.${slug}.densityGPerCm3`), vehicle.oil) };
}

function oilDensity(recorded: Figure<Quantity>, oil: VehiclePart["oil"]): Figure<Quantity> {
  if (isKnown(recorded) || oil === undefined) return recorded;
  return rootFigure<Quantity>("estimated", OIL_DENSITY_G_PER_CM3[oil], { unit: "g/cm3", method: `usual range of ${oil} oil`, source: "memory-formulation" });
}
