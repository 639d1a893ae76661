import type { Spectrum } from "../quantities/spectrum.ts";
import type { Parsed } from "./parsed-record.ts";
import type { Colour, Lot, LotLetDown, Reading, TintReading } from "./records.ts";
import type { ReadingResolver } from "./resolved-readings.ts";
import type { LotRecord } from "./schema/lot.ts";
import type { ReadingForm } from "./schema/reading-form.ts";
import type { RecordPath } from "./yaml-record.ts";
import { weighedInG } from "./made-of.ts";

type LetDownForm = NonNullable<LotRecord["tints"]>[number];

/** What of a lot is read of files of readings. */
export type LotReadings = Pick<Lot, "masstone" | "letDowns" | "standard">;

/** A lot's readings, and each drawdown of one paint by itself where several are averaged. */
export function resolvedLot(
  { record, yaml }: Pick<Parsed<LotRecord>, "record" | "yaml">,
  { resolve }: Pick<ReadingResolver, "resolve">,
): LotReadings {
  const replicates = (form: ReadingForm, path: RecordPath): Spectrum[] => {
    if (!("column" in form) || typeof form.column === "string") return [];
    return form.column.flatMap((column) => {
      const single = resolve({ ...form, column }, yaml, path);
      return single?.form === "spectrum" ? [single.spectrum] : [];
    });
  };
  const letDowns = (forms: readonly LetDownForm[] = [], path: RecordPath): LotLetDown[] =>
    forms.flatMap((letDown, i): LotLetDown[] => {
      const own = [...path, i];
      const reading = resolve(letDown, yaml, own);
      return reading === undefined
        ? []
        : [{ ...tintReading(letDown, reading), replicates: replicates(letDown, own) }];
    });
  const masstone = record.masstone && resolve(record.masstone, yaml, ["masstone"]);
  const { standard } = record;
  const standardMasstone =
    standard?.masstone && resolve(standard.masstone, yaml, ["standard", "masstone"]);
  return {
    letDowns: letDowns(record.tints, ["tints"]),
    ...(masstone !== undefined && { masstone }),
    ...(standard !== undefined && {
      standard: {
        letDowns: letDowns(standard.tints, ["standard", "tints"]),
        ...(standardMasstone !== undefined && { masstone: standardMasstone }),
      },
    }),
  };
}

/** A lot with its readings. */
export function lotAsRead(
  { slug, file, record, yaml }: Parsed<LotRecord>,
  readings: LotReadings,
): Lot {
  return { slug, file, record, place: yaml.place, ...readings };
}

/** A let-down as it was read. */
export function tintReading(
  { white, massRatio, ratioKind }: LetDownForm,
  reading: Reading,
): TintReading {
  const [colourParts = NaN, whiteParts = NaN] = massRatio.split(":").map(Number);
  return { white, massRatio, colourParts, whiteParts, ratioKind, reading };
}

/** The same with the noise that replicates show. */
export function lotWithNoise(lot: Lot, withNoise: <R extends Reading>(reading: R) => R): Lot {
  const read = <L extends TintReading>(of: {
    readonly masstone?: Reading;
    readonly letDowns: readonly L[];
  }) => ({
    ...(of.masstone !== undefined && { masstone: withNoise(of.masstone) }),
    letDowns: of.letDowns.map((one) => ({ ...one, reading: withNoise(one.reading) })),
  });
  return {
    ...lot,
    ...read(lot),
    ...(lot.standard !== undefined && { standard: read(lot.standard) }),
  };
}

/** What the lots of a colour came out as: a part of the colour, so that what is worked out of it goes by nothing else of them. */
export function lotWeights(
  colour: string,
  lots: readonly Lot[],
): Pick<Colour, "lotDensities" | "lotYields"> {
  const made = lots.filter(({ record }) => record.colour === colour && record.planned !== true);
  return {
    lotDensities: made.flatMap(({ slug, record: { densityGPerCm3 } }) =>
      densityGPerCm3 === undefined ? [] : [{ lot: slug, densityGPerCm3 }],
    ),
    lotYields: made.flatMap(({ slug, record }) => {
      const weighedG = weighedInG(record);
      return record.yieldG === undefined
        ? []
        : [{ lot: slug, weighedG, yieldG: Math.min(record.yieldG, weighedG) }];
    }),
  };
}
