import type { Chemistry, ChemistryRow } from "../drying/chemistry-drying.ts";
import type { DryingNoteRow } from "../drying/drying-notes.ts";
import type { HandbookRow } from "../formulation/handbook-estimate.ts";
import type { GasGivenOff } from "../hazard/studio/gas-given-off.ts";
import type { PigmentNature } from "../hazard/studio/pigment-nature.ts";
import type { ExpectedLightfastnessRow } from "../permanence/expected-lightfastness.ts";
import type { SensitivityRow } from "../permanence/sensitivity.ts";
import { parentName, rowsNamed } from "../quantities/colour-index-name.ts";
import type { Language } from "../quantities/languages.ts";
import { hueFamily, type HueFamily } from "./hue-family.ts";
import type { PigmentRow } from "./pigment-tables.ts";
import { wordsOfTables, type Tables } from "./tables.ts";

/** What the engine's tables know of a pigment; what no row tells is left out. */
export interface PigmentKnowledge {
  /** What it is called, and what it is made of: its own row or its parent's. */
  readonly identity?: PigmentRow;
  readonly family?: HueFamily;
  /** Its Colour Index constitution numbers, or its parent's, without a suffix; empty where nobody tells them. */
  readonly constitutionNumbers: readonly string[];
  /** What else it is or was called; of a variant also what its parent is. */
  readonly commonNames: Tables["commonNames"];
  readonly densities: readonly HandbookRow[];
  readonly oilAbsorptions: readonly HandbookRow[];
  readonly looseDensities: readonly HandbookRow[];
  readonly tappedDensities: readonly HandbookRow[];
  /** As far as drying and film go. */
  readonly chemistry?: Chemistry;
  /** What that chemistry does to the drying of oil. */
  readonly drying?: ChemistryRow;
  readonly dryingNotes: readonly DryingNoteRow[];
  readonly lightfastness?: ExpectedLightfastnessRow;
  readonly sensitivities: readonly SensitivityRow[];
  readonly opacity?: Tables["opacities"][number];
  /** Whether its dust can burn. */
  readonly nature?: PigmentNature;
  /** What heat or acid can set free of it. */
  readonly givesOff?: GasGivenOff;
  /** A carbon of smoke or gas, which shearing by hand does not open. */
  readonly isFineCarbon: boolean;
  /** The rows that tell it, each with source and standing. */
  readonly rows: PigmentRows;
}

/** Rows of the tables that hold for one pigment. */
export type PigmentRows = Pick<Tables, (typeof BY_PIGMENT)[number] | "metalsByColourIndex">;

const BY_PIGMENT = [
  "densities",
  "oilAbsorptions",
  "looseDensities",
  "tappedDensities",
  "chemistries",
  "lightfastness",
  "sensitivities",
  "opacities",
  "dustNatures",
  "gasesGivenOff",
] as const;

/** The rows of every table for the pigments that they name. */
export interface Knowledge {
  readonly tables: Tables;
  /** Every Colour Index name that has a row of its own in pigments.csv. */
  readonly names: readonly string[];
  /** What is known of a pigment by its Colour Index name; nothing of a record without one. */
  readonly pigment: (colourIndexName: string | undefined) => PigmentKnowledge;
  /** What these tables say in English, in a language of the pages; what none of them says, such as a formula, stays as it is. */
  readonly said: (english: string, language: Language) => string;
}

/** The one look-up by Colour Index name over all tables. */
export function knowledgeOf(tables: Tables): Knowledge {
  const known = new Map<string, PigmentKnowledge>();
  const words = wordsOfTables(tables);
  return {
    tables,
    names: tables.pigments.map(({ colourIndexName }) => colourIndexName),
    pigment: (name = "") => {
      const found = known.get(name) ?? pigmentKnowledge(tables, name);
      known.set(name, found);
      return found;
    },
    said: (english, language) => words.get(english)?.[language] ?? english,
  };
}

/**
 * The names that a pigment's rows may go by, the nearest first: its own, its class's, its
 * parent's, the class of its parent. The first that a table has rows for answers.
 */
function namesOf(tables: Tables, name: string): { names: string[]; identity?: PigmentRow } {
  const row = (wanted: string): PigmentRow | undefined =>
    tables.pigments.find(({ colourIndexName }) => colourIndexName === wanted);
  const [own, parent] = [row(name), row(parentName(name))];
  const identity = own ?? parent;
  return {
    names: [name, own?.class, parentName(name), parent?.class].filter(
      (one) => one !== undefined && one !== "",
    ) as string[],
    ...(identity !== undefined && { identity }),
  };
}

interface Rows {
  readonly pigments: readonly string[];
}

function rowsOf<Row extends Rows>(rows: readonly Row[], names: readonly string[]): readonly Row[] {
  for (const name of names) {
    const found = rows.filter(({ pigments }) => pigments.includes(name));
    if (found.length > 0) return found;
  }
  return [];
}

function pigmentKnowledge(tables: Tables, name: string): PigmentKnowledge {
  const { names, identity } = namesOf(tables, name);
  const rows = {
    ...Object.fromEntries(BY_PIGMENT.map((table) => [table, rowsOf<Rows>(tables[table], names)])),
    metalsByColourIndex: rowsNamed(tables.metalsByColourIndex, name),
  } as unknown as PigmentRows;
  const chemistry = rows.chemistries[0]?.chemistry;
  const drying = tables.chemistryDrying.find((row) => row.chemistry === chemistry);
  const [lightfastness] = rows.lightfastness;
  const [opacity] = rows.opacities;
  const nature = rows.dustNatures[0]?.nature;
  const [givesOff] = rows.gasesGivenOff;
  const family = hueFamily(tables.hueFamilies, name, identity?.class);
  return {
    ...(identity !== undefined && { identity }),
    ...(family !== undefined && { family }),
    constitutionNumbers: rowsOf(tables.constitutionNumbers, [name, parentName(name)]).flatMap(
      ({ numbers }) => numbers,
    ),
    commonNames: rowsOf(tables.commonNames, [name, parentName(name)]),
    densities: rows.densities,
    oilAbsorptions: rows.oilAbsorptions,
    looseDensities: rows.looseDensities,
    tappedDensities: rows.tappedDensities,
    ...(chemistry !== undefined && { chemistry }),
    ...(drying !== undefined && { drying }),
    dryingNotes: rowsOf(tables.dryingNotes, names),
    ...(lightfastness !== undefined && { lightfastness }),
    sensitivities: rows.sensitivities,
    ...(opacity !== undefined && { opacity }),
    ...(nature !== undefined && { nature }),
    ...(givesOff !== undefined && { givesOff }),
    isFineCarbon: identity?.class === "fine carbon",
    rows,
  };
}
