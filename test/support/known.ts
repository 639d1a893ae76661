import type { DryingFacts } from "../../lib/drying/drying-rules.ts";
import type { Chemistry, ChemistryRow } from "../../lib/drying/chemistry-drying.ts";
import {
  knowledgeOf,
  type Knowledge,
  type PigmentKnowledge,
} from "../../lib/knowledge/pigment-knowledge.ts";
import { hazardKnowledge } from "../../lib/knowledge/hazard-tables.ts";
import { loadedTables } from "../../lib/knowledge/tables.ts";

function loaded(): Knowledge {
  const { tables, diagnostics } = loadedTables();
  if (tables === undefined) throw new Error(JSON.stringify(diagnostics, undefined, 2));
  return knowledgeOf(tables);
}

/** The engine's own tables, read once a test file. */
export const KNOWN: Knowledge = loaded();

/** By the engine's own table. */
export const { forbiddenWords } = hazardKnowledge(KNOWN.tables);

/** What drying takes of a pigment. */
export function chemistryOf(colourIndexName: string): { readonly chemistry?: ChemistryRow } {
  const { chemistry } = KNOWN.pigment(colourIndexName);
  return chemistry === undefined ? {} : { chemistry: chemistryRow(chemistry) };
}

export function chemistryRow(chemistry: Chemistry): ChemistryRow {
  const row = KNOWN.tables.chemistryDrying.find((one) => one.chemistry === chemistry);
  if (row === undefined) throw new RangeError(`There is no row for ${chemistry}`);
  return row;
}

/** A paint of which nothing is known but this, as rules of drying are asked of it. */
export function dryingFacts(known: Partial<DryingFacts>): DryingFacts {
  return {
    pigments: [],
    oils: [],
    mediums: [],
    addedDriers: [],
    oilVolumeFraction: undefined,
    finish: undefined,
    touchDryDays: undefined,
    hasDrier: false,
    recordedTrials: [],
    wetFilms: [],
    tables: KNOWN.tables,
    ...known,
  };
}

/** What permanence takes of a pigment. */
export function lightOf(colourIndexName: string): {
  readonly colourIndexName: string;
  readonly expected: PigmentKnowledge["lightfastness"];
} {
  return { colourIndexName, expected: KNOWN.pigment(colourIndexName).lightfastness };
}
