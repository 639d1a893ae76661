import type { PigmentIdentity } from "./substance.ts";

/** A row of `harmonised.csv`: substances that the law classifies by itself, whatever a supplier finds. */
export interface HarmonisedRow {
  readonly what: string;
  readonly casNumbers: readonly string[];
  readonly colourIndexNames: readonly string[];
  /** One of these at the least is stated of it: an H360 with its letters as the supplier gives them. */
  readonly statements: readonly string[];
}

/**
 * What the law classifies of a substance and its stated hazards leave out. Where it has both numbers both
 * have to be of the row: a CAS number that is another pigment's is told by itself.
 * @param stated H-statements as its record has them.
 * @source clp-1272-2008 : Article 4(3), a harmonised classification of Annex VI holds for every supplier
 */
export function harmonisedLeftOut(
  { casNumber, colourIndexName }: PigmentIdentity,
  stated: readonly string[],
  rows: readonly HarmonisedRow[],
): HarmonisedRow | undefined {
  if (casNumber === undefined && colourIndexName === undefined) return undefined;
  return rows.find(
    ({ casNumbers, colourIndexNames, statements }) =>
      (casNumber === undefined || casNumbers.includes(casNumber)) &&
      (colourIndexName === undefined || colourIndexNames.includes(colourIndexName)) &&
      !statements.some((one) => stated.includes(one)),
  );
}
