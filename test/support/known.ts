import {
  knowledgeOf,
  type Knowledge,
  type PigmentKnowledge,
} from "../../lib/knowledge/pigment-knowledge.ts";
import { loadedTables } from "../../lib/knowledge/tables.ts";

function loaded(): Knowledge {
  const { tables, diagnostics } = loadedTables();
  if (tables === undefined) throw new Error(JSON.stringify(diagnostics, undefined, 2));
  return knowledgeOf(tables);
}

/** The engine's own tables, read once a test file. */
export const KNOWN: Knowledge = loaded();

/** What drying takes of a pigment. */
export function chemistryOf(colourIndexName: string): Partial<Pick<PigmentKnowledge, "chemistry">> {
  const { chemistry } = KNOWN.pigment(colourIndexName);
  return chemistry === undefined ? {} : { chemistry };
}

/** What permanence takes of a pigment. */
export function lightOf(colourIndexName: string): {
  readonly colourIndexName: string;
  readonly expected: PigmentKnowledge["lightfastness"];
} {
  return { colourIndexName, expected: KNOWN.pigment(colourIndexName).lightfastness };
}
