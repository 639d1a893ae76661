import type { FadingComponent } from "../../permanence/least-lightfast.ts";
import type { RecordRoot } from "../../quantities/figure.ts";
import { midpoint } from "../../quantities/interval.ts";
import type { Colour, Records } from "../../records/records.ts";
import { colourRecord, pigmentRecord } from "../record-inputs.ts";
import { amountValue } from "../recorded-figure.ts";
import type { PigmentPart } from "../sheet.ts";

/** Pigments of a mixture with what is known of each in light: exposures of a paint of it alone count before what is stated of the pigment. */
export function fadingComponents(
  parts: readonly PigmentPart[],
  records: Records,
): FadingComponent[] {
  return parts.map(({ slug, name, colourIndexName }) => {
    const { category, form } = records.pigments.get(slug)?.record.lightfastness ?? {};
    const { exposures, lightfastness } = toldPaint(slug, records)?.record ?? {};
    return {
      name,
      pigments: [
        {
          name,
          colourIndexName,
          expected: records.knowledge.pigment(colourIndexName).lightfastness,
          ...(category === undefined ? {} : { stated: { category, form } }),
        },
      ],
      exposures: (exposures ?? []).map(({ deltaEab, ...rest }) => ({
        ...rest,
        deltaEab: midpoint(amountValue(deltaEab)),
      })),
      ...(lightfastness === undefined ? {} : { stated: lightfastness }),
    };
  });
}

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
  const paints = [...colours.values()].filter(
    ({ record }) => record.pigments.length === 1 && record.pigments[0]?.pigment === pigment,
  );
  return (
    paints.find(({ record }) => (record.exposures ?? []).length > 0) ??
    paints.find(({ record }) => record.lightfastness !== undefined)
  );
}
