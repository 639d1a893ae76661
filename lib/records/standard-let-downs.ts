import type { Colour, Lot, TintReading } from "./records.ts";

/** What lots are held against: the colour's own let-downs, and those that the lot which is its standard has besides. */
export function standardLetDowns(
  { tints }: Colour,
  standard: Pick<Lot, "letDowns"> | undefined,
): readonly TintReading[] {
  return standard === undefined || standard.letDowns === tints
    ? tints
    : [...tints, ...standard.letDowns];
}
