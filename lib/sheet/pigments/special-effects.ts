import { notPredicted, specialEffect, type NotPredicted } from "../../optics/special-effect.ts";
import type { Colour, Records } from "../../records/records.ts";

/** Why nothing is predicted of a colour, where a pigment in it fluoresces or is made of flakes. */
export function effectOfPigments(
  { record }: Pick<Colour, "record">,
  { pigments }: Pick<Records, "pigments">,
): NotPredicted | undefined {
  return notPredicted(
    record.pigments.flatMap(({ pigment }) => {
      const known = pigments.get(pigment)?.record;
      return known === undefined
        ? []
        : [{ name: known.name, effect: specialEffect(known.effect, known.colourIndexName) }];
    }),
  );
}
