import type { Chemistry } from "./chemistry-drying.ts";

/** A sienna and an umber share PBr 7, and the umber alone is rich in manganese (common practice). */
const SIENNA = /(?<!\p{L})sienna/iu;

/**
 * The chemistry of a brown earth by what it is called; any other pigment's as it stands.
 * @param chemistry of the Colour Index name: `pigment-chemistry.csv`.
 * @param name as the record has it.
 */
export function earthChemistry(
  chemistry: Chemistry | undefined,
  name: string,
): Chemistry | undefined {
  return chemistry === "manganese" && SIENNA.test(name) ? "manganese trace" : chemistry;
}
