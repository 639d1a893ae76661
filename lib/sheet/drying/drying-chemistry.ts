import type { Chemistry } from "../../drying/chemistry-drying.ts";
import { earthChemistry } from "../../drying/earth-chemistry.ts";
import type { Knowledge } from "../../knowledge/pigment-knowledge.ts";
import type { PigmentPart } from "../sheet.ts";

/** What a pigment is as far as drying goes; undefined for one that no table knows. */
export function dryingChemistry(
  { name, colourIndexName }: Pick<PigmentPart, "name" | "colourIndexName">,
  knowledge: Knowledge,
): Chemistry | undefined {
  return earthChemistry(knowledge.pigment(colourIndexName).chemistry, name);
}
