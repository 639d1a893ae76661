import { notPredicted, specialEffect, type NotPredicted } from "../../optics/special-effect.ts";
import type { Colour, Records } from "../../records/records.ts";
import { paintOfWhite } from "../record-inputs.ts";

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

/** Why nothing follows from a let-down of a colour, for its own pigments' sake or for its white's. */
export function effectInWhite(
  colour: Pick<Colour, "record">,
  white: string,
  records: Records,
): NotPredicted | undefined {
  const paint = paintOfWhite(white, records);
  return (
    effectOfPigments(colour, records) ??
    (paint === undefined ? undefined : effectOfPigments(paint, records))
  );
}
