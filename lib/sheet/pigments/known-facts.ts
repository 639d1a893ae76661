import type { RowStanding } from "../../knowledge/cells.ts";
import type { PigmentKnowledge } from "../../knowledge/pigment-knowledge.ts";
import { sourceFigure, type Figure, type Input } from "../../quantities/figure.ts";
import type { PigmentRecord } from "../../records/schema/pigment.ts";
import type { PigmentPart } from "./pigment-figures.ts";

type KnownFacts = Pick<PigmentPart, "formula" | "mineral" | "introduced" | "expectedOpacity">;

/** What the record says of its mineral, else what the tables know of the pigment by its Colour Index name. */
export function knownFacts(
  { chemistry, mineral }: Pick<PigmentRecord, "chemistry" | "mineral">,
  { identity, opacity }: PigmentKnowledge,
  inputs: readonly Input[],
): KnownFacts {
  const told = <V extends string | number>(
    value: V,
    unit: string,
    { source, standing }: { readonly source: string; readonly standing: RowStanding },
  ): Figure<V> =>
    sourceFigure<V>(standing === "published" ? "stated" : "estimated", value, {
      unit,
      method: "by its Colour Index name",
      source,
      inputs,
    });
  const formula = chemistry === undefined ? identity?.formula : undefined;
  return {
    ...(identity === undefined || formula === undefined
      ? {}
      : { formula: told<string>(formula, "", identity) }),
    ...(mineral !== undefined
      ? {
          mineral: sourceFigure<string>("stated", mineral, {
            unit: "",
            method: "as recorded",
            inputs,
          }),
        }
      : identity?.mineral === undefined
        ? {}
        : { mineral: told<string>(identity.mineral, "", identity) }),
    ...(identity?.year === undefined ? {} : { introduced: told(identity.year, "1", identity) }),
    ...(opacity === undefined
      ? {}
      : { expectedOpacity: told<string>(opacity.opacity, "", opacity) }),
  };
}
