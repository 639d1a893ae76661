import { CUSTOMARY_TOLERANCES, type Tolerances } from "../../lots/judgement.ts";
import type { Colour, Records } from "../../records/records.ts";

/** What its lots may differ by: the colour's own word, else the workshop's, else what is customary. */
export function tolerancesOf(
  { record }: Pick<Colour, "record">,
  { workshop }: Pick<Records, "workshop">,
): Tolerances {
  const stated = Object.fromEntries(
    Object.entries({ ...workshop.tolerances, ...record.tolerances }).filter(
      ([, value]) => value !== undefined,
    ),
  );
  return { ...CUSTOMARY_TOLERANCES, ...stated };
}
