import type { Exposure } from "../../permanence/exposure.ts";
import type { FadingComponent } from "../../permanence/least-lightfast.ts";
import { isKnown, type RecordRoot, type RootStanding } from "../../quantities/figure.ts";
import { midpoint } from "../../quantities/interval.ts";
import type { Colour, Records } from "../../records/records.ts";
import { colourRecord, paintsOfPigment, pigmentRecord } from "../record-inputs.ts";
import { amountValue, recordedFigure } from "../recorded-figure.ts";
import type { PigmentPart } from "../pigments/pigment-figures.ts";

/** Pigments of a mixture with what is known of each in light: exposures of a paint of it alone count before what is stated of the pigment. */
export function fadingComponents(
  parts: readonly PigmentPart[],
  records: Records,
): FadingComponent[] {
  return parts.map(({ slug, name, colourIndexName }) => {
    const { category, form, source } = records.pigments.get(slug)?.record.lightfastness ?? {};
    const { exposures, lightfastness } = toldPaint(slug, records)?.record ?? {};
    return {
      name,
      pigments: [
        {
          name,
          colourIndexName,
          expected: records.knowledge.pigment(colourIndexName).lightfastness,
          ...(category !== undefined && { stated: { category, form, source } }),
        },
      ],
      exposures: (exposures ?? []).map(recordedExposure),
      ...(lightfastness !== undefined && { stated: lightfastness }),
    };
  });
}

/** An exposure as the record gives it, with whose finding it is. */
export function recordedExposure({
  deltaEab,
  form,
  standard,
  exposure,
}: NonNullable<Colour["record"]["exposures"]>[number]): Exposure {
  const found = recordedFigure(deltaEab, {
    unit: "1",
    wanting: "exposures",
    inputs: [],
    ownMethod: OWN_EXPOSURE,
  });
  return {
    deltaEab: midpoint(amountValue(deltaEab)),
    form,
    standard,
    exposure,
    ...(isKnown(found) && {
      standing: found.standing as RootStanding,
      ...(found.source !== undefined && { source: found.source }),
    }),
  };
}

/** How a colour change is found where the record names no method. */
export const OWN_EXPOSURE = "CIE 1976, exposed against kept dark";

/** The records that {@link fadingComponents} speaks of. */
export function fadingRecords(parts: readonly PigmentPart[], records: Records): RecordRoot[] {
  return parts.flatMap(({ slug }) => {
    const paint = toldPaint(slug, records);
    return [
      pigmentRecord(slug),
      ...(paint === undefined ? [] : colourRecord(paint, "exposures", "lightfastness")),
    ];
  });
}

/** The paint of one pigment alone that tells most of it in light. */
function toldPaint(pigment: string, { colours }: Records): Colour | undefined {
  const paints = paintsOfPigment(pigment, colours);
  return (
    paints.find(({ record }) => (record.exposures ?? []).length > 0) ??
    paints.find(({ record }) => record.lightfastness !== undefined)
  );
}
