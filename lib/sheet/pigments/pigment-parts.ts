import { massFractions } from "../../formulation/mass-fractions.ts";
import { at } from "../../quantities/at.ts";
import { notStated, sourceFigure, type Figure } from "../../quantities/figure.ts";
import type { Checked, Colour, Records } from "../../records/records.ts";
import type { PigmentRecord } from "../../records/schema/pigment.ts";
import { filled } from "../found.ts";
import { colourRecord, pigmentRecord, restingOn, vehicleRecord } from "../record-inputs.ts";
import { pigmentShares, type KnownTube } from "./parts-of-paint.ts";
import {
  ADDITION,
  PIGMENT,
  VEHICLE,
  type AdditionPart,
  type PigmentPart,
  type VehiclePart,
} from "./pigment-figures.ts";

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
  { slug, record }: Checked<PigmentRecord>,
  massFraction: Figure<number>,
  records: Records,
): PigmentPart {
  const { name, colourIndexName, colourIndexNumber, casNumber } = record;
  return filled(PIGMENT, {
    slug,
    name,
    colourIndexName,
    colourIndexNumber,
    casNumber,
    massFraction,
    record,
    known: records.knowledge.pigment(colourIndexName),
    inputs: [pigmentRecord(slug)],
    records,
  });
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
  const record = slug === undefined ? undefined : records.vehicles.get(slug)?.record;
  if (slug === undefined || record === undefined) return undefined;
  const inputs = [...colourRecord(colour, "vehicle"), vehicleRecord(slug)];
  return filled(VEHICLE, { slug, name: record.name, record, inputs, records });
}

/** Driers, mediums and thinners that a colour's oil is given on top. */
export function additionParts(colour: Colour, records: Records): AdditionPart[] {
  const dose = colourRecord(colour, "additions");
  return (colour.record.additions ?? []).flatMap(({ vehicle: slug, percentOfOil }) => {
    const record = records.vehicles.get(slug)?.record;
    if (record === undefined) return [];
    const { name, kind } = record;
    const inputs = [...dose, vehicleRecord(slug)];
    return [
      filled(ADDITION, {
        slug,
        name,
        kind,
        recordedPercent: percentOfOil,
        record,
        inputs,
        dose,
        records,
      }),
    ];
  });
}
