import type { Chemistry } from "../drying/chemistry-drying.ts";
import type { DryingNoteRow } from "../drying/drying-notes.ts";
import type { HandbookRow } from "../formulation/handbook-estimate.ts";
import type { PigmentNature } from "../hazard/studio/pigment-nature.ts";
import type { ExpectedOpacity } from "../optics/films/expected-opacity.ts";
import type { ExpectedLightfastnessRow } from "../permanence/expected-lightfastness.ts";
import type { SensitivityRow } from "../permanence/sensitivity.ts";
import { hueFamily, type HueFamily } from "./hue-family.ts";
import type { PigmentRow } from "./pigment-tables.ts";
import type { Tables } from "./tables.ts";

/** What the engine's tables know of a pigment; what no row tells is left out. */
export interface PigmentKnowledge {
  /** What it is called, and what it is made of: its own row or its parent's. */
  readonly identity?: PigmentRow;
  readonly family?: HueFamily;
  readonly densities: readonly HandbookRow[];
  readonly oilAbsorptions: readonly HandbookRow[];
  readonly looseDensities: readonly HandbookRow[];
  readonly tappedDensities: readonly HandbookRow[];
  /** As far as drying and film go. */
  readonly chemistry?: Chemistry;
  readonly dryingNotes: readonly DryingNoteRow[];
  readonly lightfastness?: ExpectedLightfastnessRow;
  readonly sensitivities: readonly SensitivityRow[];
  readonly opacity?: { readonly opacity: ExpectedOpacity; readonly source: string };
  /** Whether its dust can burn. */
  readonly nature?: PigmentNature;
  /** A carbon of smoke or gas, which shearing by hand does not open. */
  readonly isFineCarbon: boolean;
}

/** The rows of every table for the pigments that they name. */
export interface Knowledge {
  readonly tables: Tables;
  /** Every Colour Index name that has a row of its own in pigments.csv. */
  readonly names: readonly string[];
  /** What is known of a pigment by its Colour Index name; nothing of a record without one. */
  readonly pigment: (colourIndexName: string | undefined) => PigmentKnowledge;
}

/** A name with a suffix is a variant: "PB 15:3" of "PB 15". */
export function parentName(colourIndexName: string): string {
  return colourIndexName.replace(/:\d+$/, "");
}

/** The one look-up by Colour Index name over all tables. */
export function knowledgeOf(tables: Tables): Knowledge {
  const known = new Map<string, PigmentKnowledge>();
  return {
    tables,
    names: tables.pigments.map(({ colourIndexName }) => colourIndexName),
    pigment: (name = "") => {
      const found = known.get(name) ?? pigmentKnowledge(tables, name);
      known.set(name, found);
      return found;
    },
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
    ...(identity === undefined ? {} : { identity }),
  };
}

function rowsOf<Row extends { readonly pigments: readonly string[] }>(
  rows: readonly Row[],
  names: readonly string[],
): readonly Row[] {
  for (const name of names) {
    const found = rows.filter(({ pigments }) => pigments.includes(name));
    if (found.length > 0) return found;
  }
  return [];
}

function pigmentKnowledge(tables: Tables, name: string): PigmentKnowledge {
  const { names, identity } = namesOf(tables, name);
  const chemistry = rowsOf(tables.chemistries, names)[0]?.chemistry;
  const [lightfastness] = rowsOf(tables.lightfastness, names);
  const [opacity] = rowsOf(tables.opacities, names);
  const nature = rowsOf(tables.dustNatures, names)[0]?.nature;
  const family = hueFamily(name, identity?.class);
  return {
    ...(identity === undefined ? {} : { identity }),
    ...(family === undefined ? {} : { family }),
    densities: rowsOf(tables.densities, names),
    oilAbsorptions: rowsOf(tables.oilAbsorptions, names),
    looseDensities: rowsOf(tables.looseDensities, names),
    tappedDensities: rowsOf(tables.tappedDensities, names),
    ...(chemistry === undefined ? {} : { chemistry }),
    dryingNotes: rowsOf(tables.dryingNotes, names),
    ...(lightfastness === undefined ? {} : { lightfastness }),
    sensitivities: rowsOf(tables.sensitivities, names),
    ...(opacity === undefined ? {} : { opacity }),
    ...(nature === undefined ? {} : { nature }),
    isFineCarbon: identity?.class === "fine carbon",
  };
}
