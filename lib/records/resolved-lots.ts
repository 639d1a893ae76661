import type { Spectrum } from "../quantities/spectrum.ts";
import type { Parsed } from "./parsed-record.ts";
import type { Lot, LotLetDown, Reading } from "./records.ts";
import type { ReadingResolver } from "./resolved-readings.ts";
import type { LotRecord } from "./schema/lot.ts";
import type { ReadingForm } from "./schema/reading-form.ts";
import type { RecordPath } from "./yaml-record.ts";

/** A lot with its readings, and each drawdown of one paint by itself where several are averaged. */
export function resolvedLot(
  { slug, file, record, yaml }: Parsed<LotRecord>,
  { resolve }: ReadingResolver,
): Lot {
  const replicates = (form: ReadingForm, path: RecordPath): Spectrum[] => {
    if (!("column" in form) || typeof form.column === "string") return [];
    return form.column.flatMap((column) => {
      const single = resolve({ ...form, column }, yaml, path);
      return single?.form === "spectrum" ? [single.spectrum] : [];
    });
  };
  const masstone = record.masstone && resolve(record.masstone, yaml, ["masstone"]);
  const letDowns = (record.letDowns ?? []).flatMap((letDown, i): LotLetDown[] => {
    const reading = resolve(letDown, yaml, ["letDowns", i]);
    const [colourParts = NaN, whiteParts = NaN] = letDown.massRatio.split(":").map(Number);
    return reading === undefined
      ? []
      : [
          {
            white: letDown.white,
            massRatio: letDown.massRatio,
            colourParts,
            whiteParts,
            ratioKind: letDown.ratioKind,
            reading,
            replicates: replicates(letDown, ["letDowns", i]),
          },
        ];
  });
  return {
    slug,
    file,
    record,
    place: yaml.place,
    letDowns,
    ...(masstone === undefined ? {} : { masstone }),
  };
}

/** The same with the noise that replicates show. */
export function lotWithNoise(lot: Lot, withNoise: <R extends Reading>(reading: R) => R): Lot {
  return {
    ...lot,
    ...(lot.masstone === undefined ? {} : { masstone: withNoise(lot.masstone) }),
    letDowns: lot.letDowns.map((one) => ({ ...one, reading: withNoise(one.reading) })),
  };
}
