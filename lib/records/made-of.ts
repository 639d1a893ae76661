/** What paints and lots are made of, as their records say it. */
import type { ParsedFiles } from "./parsed-files.ts";
import type { ColourRecord } from "./schema/colour.ts";
import type { LotRecord } from "./schema/lot.ts";

/** Whether a paint is made of one pigment and no other. */
export function isOfPigmentAlone(
  { pigments }: Pick<ColourRecord, "pigments">,
  pigment: string,
): boolean {
  return pigments.length > 0 && pigments.every((one) => one.pigment === pigment);
}

/** Oils, mediums and driers of a colour's record, or of the workshop's where the colour names none: the oil first. */
export function vehiclesOf(
  { vehicle, additions = [] }: ColourRecord,
  { workshop }: ParsedFiles,
): (string | undefined)[] {
  return [vehicle ?? workshop?.record.vehicle, ...additions.map((added) => added.vehicle)];
}

/** All that was weighed in [g]. */
export function weighedInG({ pigments, oil, additions = [] }: LotRecord): number {
  return [...pigments, ...(oil === undefined ? [] : [oil]), ...additions].reduce(
    (sum, { massG }) => sum + massG,
    0,
  );
}
