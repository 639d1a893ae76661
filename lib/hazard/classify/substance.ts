/**
 * Substances that a rule names, told by CAS number, else by Colour Index generic name.
 * Which number belongs to which substance is from memory of the trade unless noted.
 */
export interface PigmentIdentity {
  readonly casNumber?: string | undefined;
  /** "PW 1". */
  readonly colourIndexName?: string | undefined;
}

interface SubstanceNames {
  readonly casNumbers: readonly string[];
  readonly colourIndexNames: readonly string[];
}

export const SUBSTANCES = {
  "lead carbonates": {
    casNumbers: ["598-63-0", "1319-46-6", "1344-36-1"],
    colourIndexNames: ["PW 1"],
  },
  "lead compounds of very high concern": {
    casNumbers: ["1319-46-6", "1314-41-6", "1317-36-8", "8012-00-8"],
    colourIndexNames: ["PW 1", "PR 105", "PY 46", "PY 41"],
  },
  "chromates under authorisation": {
    casNumbers: ["7789-06-2", "11103-86-9", "49663-84-5", "37300-23-5"],
    colourIndexNames: ["PY 32", "PY 36"],
  },
  "lead sulphates": { casNumbers: ["7446-14-2", "15739-80-7"], colourIndexNames: ["PW 2", "PW 3"] },
  "lead chromate pigments": {
    casNumbers: ["7758-97-6", "1344-37-2", "12656-85-8"],
    colourIndexNames: ["PY 34", "PR 103", "PR 104"],
  },
  "titanium dioxide": { casNumbers: ["13463-67-7"], colourIndexNames: ["PW 6", "PW 6:1"] },
  "carbon black": { casNumbers: ["1333-86-4"], colourIndexNames: ["PBk 6", "PBk 7"] },
  "2-ethylhexanoic acid and its salts": {
    casNumbers: [
      "149-57-5",
      "136-52-7",
      "136-51-6",
      "136-53-8",
      "301-08-6",
      "15956-58-8",
      "22464-99-9",
    ],
    colourIndexNames: [],
  },
} as const satisfies Record<string, SubstanceNames>;

export type SubstanceName = keyof typeof SUBSTANCES;

/** Whether an ingredient is the named substance; its CAS number decides where it has one. */
export function isSubstance(ingredient: PigmentIdentity, name: SubstanceName): boolean {
  const names: SubstanceNames = SUBSTANCES[name];
  const { casNumber, colourIndexName } = ingredient;
  if (casNumber !== undefined) return names.casNumbers.includes(casNumber);
  return (
    colourIndexName !== undefined &&
    [colourIndexName, colourIndexName.replace(/:\d+$/, "")].some((name) =>
      names.colourIndexNames.includes(name),
    )
  );
}
