import { knowledgeOf, type Knowledge } from "../../lib/knowledge/pigment-knowledge.ts";
import { loadedTables } from "../../lib/knowledge/tables.ts";

function loaded(): Knowledge {
  const { tables, diagnostics } = loadedTables();
  if (tables === undefined) throw new Error(JSON.stringify(diagnostics, undefined, 2));
  return knowledgeOf(tables);
}

/** The engine's own tables, read once a test file. */
export const KNOWN: Knowledge = loaded();
