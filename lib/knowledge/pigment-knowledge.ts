import type { HandbookRow } from "../formulation/handbook-estimate.ts";
import type { Tables } from "./tables.ts";

/** What the engine's tables know of a pigment; what no row tells is left out. */
export interface PigmentKnowledge {
  readonly densities: readonly HandbookRow[];
  readonly oilAbsorptions: readonly HandbookRow[];
  readonly looseDensities: readonly HandbookRow[];
  readonly tappedDensities: readonly HandbookRow[];
}

/** The rows of every table for the pigments that they name. */
export interface Knowledge {
  readonly tables: Tables;
  /** What is known of a pigment by its Colour Index name; nothing of a record without one. */
  readonly pigment: (colourIndexName: string | undefined) => PigmentKnowledge;
}

/** A name with a suffix is a variant: "PB 15:3" of "PB 15". */
export function parentName(colourIndexName: string): string {
  return colourIndexName.replace(/:\d+$/, "");
}

/**
 * The rows for a name: its own, else its parent's.
 * @param namesOf the Colour Index names that a row holds for.
 */
export function rowsOfName<Row>(
  rows: readonly Row[],
  namesOf: (row: Row) => readonly string[],
  colourIndexName: string | undefined,
): readonly Row[] {
  if (colourIndexName === undefined) return [];
  const own = rows.filter((row) => namesOf(row).includes(colourIndexName));
  const parent = parentName(colourIndexName);
  return own.length > 0 || parent === colourIndexName
    ? own
    : rows.filter((row) => namesOf(row).includes(parent));
}

/** The one look-up by Colour Index name over all tables. */
export function knowledgeOf(tables: Tables): Knowledge {
  return { tables, pigment: (name) => pigmentKnowledge(tables, name) };
}

function pigmentKnowledge(tables: Tables, name: string | undefined): PigmentKnowledge {
  const figures = (rows: readonly HandbookRow[]): readonly HandbookRow[] =>
    rowsOfName(rows, ({ pigments }) => pigments, name);
  return {
    densities: figures(tables.densities),
    oilAbsorptions: figures(tables.oilAbsorptions),
    looseDensities: figures(tables.looseDensities),
    tappedDensities: figures(tables.tappedDensities),
  };
}
