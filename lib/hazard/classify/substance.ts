/**
 * Substances that a rule names, told by CAS number, else by Colour Index generic name.
 * Which numbers belong to which substance is in `substances.csv`.
 */
import { parentName } from "../../quantities/colour-index-name.ts";

export interface PigmentIdentity {
  readonly casNumber?: string | undefined;
  /** "PW 1". */
  readonly colourIndexName?: string | undefined;
}

export const SUBSTANCE_NAMES = [
  "lead carbonates",
  "lead sulphates",
  "lead compounds of very high concern",
  "lead chromate pigments",
  "chromates under authorisation",
  "titanium dioxide",
  "carbon black",
  "2-ethylhexanoic acid and its salts",
] as const;
export type SubstanceName = (typeof SUBSTANCE_NAMES)[number];

export interface SubstanceRow {
  readonly substance: SubstanceName;
  readonly casNumbers: readonly string[];
  readonly colourIndexNames?: readonly string[] | undefined;
}

/** Named substances that an ingredient is; its CAS number decides where it has one. */
export function substancesOf(
  { casNumber, colourIndexName }: PigmentIdentity,
  rows: readonly SubstanceRow[],
): SubstanceName[] {
  const names = colourIndexName === undefined ? [] : [colourIndexName, parentName(colourIndexName)];
  return rows
    .filter(({ casNumbers, colourIndexNames = [] }) =>
      casNumber === undefined
        ? names.some((name) => colourIndexNames.includes(name))
        : casNumbers.includes(casNumber),
    )
    .map(({ substance }) => substance);
}

/** Whether a part of a mixture is the named substance. */
export function isSubstance(
  { substances }: { readonly substances: readonly SubstanceName[] },
  name: SubstanceName,
): boolean {
  return substances.includes(name);
}
