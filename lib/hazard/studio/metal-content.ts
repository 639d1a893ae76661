/**
 * Metals that a studio and a label must know of, and how much of an ingredient they are.
 *
 * @source iupac-atomic-weights : shares worked out from the formula
 */
import type { PigmentIdentity } from "../classify/substance.ts";

export const METALS = ["lead", "cadmium", "manganese", "cobalt", "chromate"] as const;
/** `chromate` is hexavalent chromium; its share is counted as chromium. */
export type Metal = (typeof METALS)[number];

/** Mass fraction of metal in the ingredient, or that it is there in an amount not known. */
export type MetalShare = number | "present";
export type MetalShares = Readonly<Partial<Record<Metal, MetalShare>>>;

export type Element =
  "H" | "C" | "O" | "S" | "K" | "N" | "Al" | "Cr" | "Mn" | "Co" | "Se" | "Sr" | "Cd" | "Ba" | "Pb";
type Formula = Readonly<Partial<Record<Element, number>>>;

/** Standard atomic weights, abridged [g/mol]. */
export const ATOMIC_WEIGHTS: Readonly<Record<Element, number>> = {
  H: 1.008,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Al: 26.982,
  S: 32.06,
  K: 39.098,
  Cr: 51.996,
  Mn: 54.938,
  Co: 58.933,
  Se: 78.971,
  Sr: 87.62,
  Cd: 112.41,
  Ba: 137.33,
  Pb: 207.2,
};

const METAL_ELEMENT: Readonly<Record<Metal, Element>> = {
  lead: "Pb",
  cadmium: "Cd",
  manganese: "Mn",
  cobalt: "Co",
  chromate: "Cr",
};

/** Compounds of one formula, by CAS number, with the metals that count in them. */
const COMPOUNDS: Readonly<
  Record<string, { readonly formula: Formula; readonly metals: readonly Metal[] }>
> = {
  "1319-46-6": { formula: { Pb: 3, C: 2, O: 8, H: 2 }, metals: ["lead"] },
  "598-63-0": { formula: { Pb: 1, C: 1, O: 3 }, metals: ["lead"] },
  "7446-14-2": { formula: { Pb: 1, S: 1, O: 4 }, metals: ["lead"] },
  "1314-41-6": { formula: { Pb: 3, O: 4 }, metals: ["lead"] },
  "1317-36-8": { formula: { Pb: 1, O: 1 }, metals: ["lead"] },
  "7758-97-6": { formula: { Pb: 1, Cr: 1, O: 4 }, metals: ["lead", "chromate"] },
  "1313-13-9": { formula: { Mn: 1, O: 2 }, metals: ["manganese"] },
  "1306-23-6": { formula: { Cd: 1, S: 1 }, metals: ["cadmium"] },
  "1306-24-7": { formula: { Cd: 1, Se: 1 }, metals: ["cadmium"] },
  "1307-96-6": { formula: { Co: 1, O: 1 }, metals: ["cobalt"] },
  "1345-16-0": { formula: { Co: 1, Al: 2, O: 4 }, metals: ["cobalt"] },
  "136-52-7": { formula: { Co: 1, C: 16, H: 30, O: 4 }, metals: ["cobalt"] },
  "301-08-6": { formula: { Pb: 1, C: 16, H: 30, O: 4 }, metals: ["lead"] },
  "13782-01-9": { formula: { K: 3, Co: 1, N: 6, O: 12 }, metals: ["cobalt"] },
  "7789-06-2": { formula: { Sr: 1, Cr: 1, O: 4 }, metals: ["chromate"] },
  "10294-40-3": { formula: { Ba: 1, Cr: 1, O: 4 }, metals: ["chromate"] },
};

/** Compounds without one formula: the metal is there, its share is the supplier's to say. */
const WITHOUT_FORMULA: Readonly<Record<string, readonly Metal[]>> = {
  "1344-36-1": ["lead"],
  "15739-80-7": ["lead"],
  "1344-37-2": ["lead", "chromate"],
  "12656-85-8": ["lead", "chromate"],
  "12214-12-9": ["cadmium"],
  "58339-34-7": ["cadmium"],
  "8048-07-5": ["cadmium"],
  "12442-27-2": ["cadmium"],
  "61789-51-3": ["cobalt"],
  "13530-65-9": ["chromate"],
};

/** By Colour Index generic name, for a record that gives no CAS number (memory). */
const BY_COLOUR_INDEX_NAME: Readonly<Record<Metal, readonly string[]>> = {
  lead: ["PW 1", "PW 2", "PW 3", "PY 34", "PY 41", "PY 46", "PR 103", "PR 104", "PR 105", "PO 21"],
  cadmium: [
    "PY 35",
    "PY 35:1",
    "PY 37",
    "PY 37:1",
    "PO 20",
    "PO 20:1",
    "PO 23",
    "PR 108",
    "PR 108:1",
    "PR 113",
  ],
  manganese: ["PBr 8", "PBk 14", "PBk 26", "PV 16", "PB 33"],
  cobalt: [
    "PB 28",
    "PB 35",
    "PB 36",
    "PB 74",
    "PG 19",
    "PG 26",
    "PG 50",
    "PV 14",
    "PV 49",
    "PY 40",
    "PBk 13",
    "PBk 27",
    "PBk 29",
  ],
  chromate: ["PY 31", "PY 32", "PY 34", "PY 36", "PR 103", "PR 104", "PO 21"],
};

/**
 * Mass fraction of one element in a compound, by formula.
 * @example elementShare({ Pb: 3, C: 2, O: 8, H: 2 }, "Pb") // 0.8014
 */
export function elementShare(formula: Formula, element: Element): number {
  const mass = (of: Element): number => (formula[of] ?? 0) * ATOMIC_WEIGHTS[of];
  return (
    mass(element) / (Object.keys(formula) as Element[]).reduce((total, of) => total + mass(of), 0)
  );
}

/**
 * The metals of an ingredient: as its record states them, else from its CAS
 * number, else from its Colour Index name.
 *
 * @returns empty when none of these names a metal: that is no proof of absence.
 */
export function metalShares(
  ingredient: PigmentIdentity & { readonly metals?: MetalShares | undefined },
): MetalShares {
  if (ingredient.metals !== undefined) return ingredient.metals;
  const compound = ingredient.casNumber === undefined ? undefined : COMPOUNDS[ingredient.casNumber];
  if (compound !== undefined) {
    return Object.fromEntries(
      compound.metals.map((metal) => [metal, elementShare(compound.formula, METAL_ELEMENT[metal])]),
    );
  }
  const named = new Set(
    ingredient.casNumber === undefined ? [] : WITHOUT_FORMULA[ingredient.casNumber],
  );
  for (const metal of METALS) {
    if (
      ingredient.colourIndexName !== undefined &&
      BY_COLOUR_INDEX_NAME[metal].includes(ingredient.colourIndexName)
    )
      named.add(metal);
  }
  return Object.fromEntries([...named].map((metal) => [metal, "present" as const]));
}
