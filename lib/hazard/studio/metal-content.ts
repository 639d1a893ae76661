/**
 * Metals that a studio and a label must know of, and how much of an ingredient they
 * are: by the record, else by CAS number, else by Colour Index name.
 *
 * @source iupac-atomic-weights : shares worked out from the formula
 */
import { rowsNamed } from "../../quantities/colour-index-name.ts";
import type { PigmentIdentity } from "../classify/substance.ts";

export const METALS = [
  "lead",
  "cadmium",
  "mercury",
  "arsenic",
  "chromate",
  "nickel",
  "cobalt",
  "antimony",
  "barium",
  "manganese",
  "copper",
] as const;
/** `chromate` is hexavalent chromium, its share counted as chromium; `barium` is soluble barium. */
export type Metal = (typeof METALS)[number];

/** Mass fraction of metal in the ingredient, or that it is there in an amount not known. */
export type MetalShare = number | "present";
export type MetalShares = Readonly<Partial<Record<Metal, MetalShare>>>;

/** Standard atomic weights, abridged [g/mol]. */
export const ATOMIC_WEIGHTS = {
  H: 1.008,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Al: 26.982,
  P: 30.974,
  S: 32.06,
  K: 39.098,
  Cr: 51.996,
  Mn: 54.938,
  Co: 58.933,
  Ni: 58.693,
  Cu: 63.546,
  As: 74.922,
  Se: 78.971,
  Sr: 87.62,
  Cd: 112.41,
  Sb: 121.76,
  Ba: 137.33,
  Hg: 200.59,
  Pb: 207.2,
} as const;
export type Element = keyof typeof ATOMIC_WEIGHTS;

/** What a metal calls for in the studio. */
export interface MetalRow {
  readonly metal: Metal;
  readonly element: Element;
  /** Mass fraction of metal in a powder or paint from which the studio goes by it. */
  readonly countsFrom: number;
  /** Whether its dust calls for the highest filter. */
  readonly dust: "grave" | "ordinary";
  /** Whether it may be sprayed or heated: never, or under captured exhaust. */
  readonly heat: "never" | "with exhaust";
  readonly skin: boolean;
  readonly unborn: boolean;
  readonly waste: "special" | "ordinary";
}

export interface MetalByColourIndex {
  readonly colourIndexName: string;
  readonly metal: Metal;
}

export interface MetalByCasNumber {
  readonly casNumber: string;
  /** "Pb3C2O8H2"; absent where the compound has no one formula. */
  readonly formula?: string | undefined;
  readonly metals: readonly Metal[];
}

/** The tables of metals, as a chemist keeps them. */
export interface MetalTables {
  readonly metals: readonly MetalRow[];
  readonly byColourIndex: readonly MetalByColourIndex[];
  readonly byCasNumber: readonly MetalByCasNumber[];
}

/** A chemical formula without brackets, read into atoms. @throws RangeError for an element without a weight here. */
function formulaAtoms(formula: string): ReadonlyMap<Element, number> {
  const atoms = new Map<Element, number>();
  for (const [, symbol = "", count = ""] of formula.matchAll(/([A-Z][a-z]?)(\d*)/g)) {
    if (!isElement(symbol))
      throw new RangeError(
        `The element ${symbol} of ${formula} has no atomic weight here; ${Object.keys(ATOMIC_WEIGHTS).join(", ")} have.`,
      );
    atoms.set(symbol, (atoms.get(symbol) ?? 0) + (count === "" ? 1 : Number(count)));
  }
  return atoms;
}

function isElement(symbol: string): symbol is Element {
  return Object.hasOwn(ATOMIC_WEIGHTS, symbol);
}

/**
 * Mass fraction of one element in a compound, by formula.
 * @example elementShare("Pb3C2O8H2", "Pb") // 0.8014
 */
export function elementShare(formula: string, element: Element): number {
  const atoms = formulaAtoms(formula);
  const total = [...atoms].reduce((sum, [of, count]) => sum + count * ATOMIC_WEIGHTS[of], 0);
  return ((atoms.get(element) ?? 0) * ATOMIC_WEIGHTS[element]) / total;
}

/**
 * The metals of an ingredient that its numbers tell. A Colour Index name with a
 * suffix ("PR 108:1") holds what its parent does, unless it has rows of its own.
 *
 * @returns empty when neither number names a metal: that is no proof of absence.
 */
export function metalShares(
  { casNumber, colourIndexName }: PigmentIdentity,
  tables: MetalTables,
): MetalShares {
  const shares = new Map<Metal, MetalShare>();
  for (const { metal } of rowsNamed(tables.byColourIndex, colourIndexName))
    shares.set(metal, "present");
  const compound = tables.byCasNumber.find((row) => row.casNumber === casNumber);
  for (const metal of compound?.metals ?? []) {
    const { formula } = compound ?? {};
    shares.set(
      metal,
      formula === undefined ? "present" : elementShare(formula, metalRow(metal, tables).element),
    );
  }
  return Object.fromEntries(shares);
}

/** What the studio does about a metal. @throws RangeError for a metal that the table lacks. */
export function metalRow(metal: Metal, { metals }: Pick<MetalTables, "metals">): MetalRow {
  const row = metals.find((each) => each.metal === metal);
  if (row === undefined) throw new RangeError(`The table of metals has no row for ${metal}.`);
  return row;
}
