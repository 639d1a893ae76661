import type { Colour, Records } from "../records/records.ts";
import type { ColourRecord } from "../records/schema/colour.ts";

/** Its own, or that of its pigment, where there is only one. */
export function colourFamily(
  { record: { family, pigments } }: Colour,
  records: Records,
): ColourRecord["family"] {
  if (family !== undefined) return family;
  const [only] = pigments;
  const pigment = only === undefined ? undefined : records.pigments.get(only.pigment)?.record;
  return pigments.length > 1
    ? undefined
    : (pigment?.family ?? records.knowledge.pigment(pigment?.colourIndexName).family);
}

/** What lightens and has no strength of its own: a white, or an extender. */
export function isLightener(colour: Colour, records: Records): boolean {
  const family = colourFamily(colour, records);
  return family === "white" || family === "extender";
}
