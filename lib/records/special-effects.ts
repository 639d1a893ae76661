import { specialEffect } from "../optics/special-effect.ts";
import { remembered } from "../quantities/remembered.ts";
import { isFaulty, type ParsedFiles } from "./parsed-files.ts";
import type { ReadingResolver } from "./resolved-readings.ts";
import type { ColourRecord } from "./schema/colour.ts";
import type { PigmentRecord } from "./schema/pigment.ts";

/** Whether a pigment of a colour fluoresces or is made of flakes: its readings then pass what an ordinary paint's can be. */
export function hasSpecialEffect(
  record: Pick<ColourRecord, "pigments"> | undefined,
  files: Pick<ParsedFiles, "pigments" | "faulty">,
): boolean {
  return (record?.pigments ?? []).some(({ pigment }) => {
    const known = files.pigments.get(pigment)?.record;
    // Of a faulty record nobody knows: its readings are not doubted on top of it.
    return known === undefined ? isFaulty(files, "pigments", pigment) : hasEffect(known);
  });
}

const hasEffect = remembered(
  ({ effect, colourIndexName }: PigmentRecord) =>
    specialEffect(effect, colourIndexName) !== undefined,
);

/** Readings of one paint, which may pass 100 % where it has a special effect. */
export function paintResolver(
  record: ColourRecord | undefined,
  files: ParsedFiles,
  { resolve }: Pick<ReadingResolver, "resolve">,
): Pick<ReadingResolver, "resolve"> {
  const hasEffect = hasSpecialEffect(record, files);
  return { resolve: (form, yaml, path) => resolve(form, yaml, path, hasEffect) };
}
