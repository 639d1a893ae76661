/**
 * Every table that the engine goes by. A new one is a form here, under the name that
 * the rest of the house reads its rows by.
 */
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { keptBesideProgram } from "../kept/beside-program.ts";
import { COLOUR_TABLES } from "./colour-tables.ts";
import { DRYING_TABLES } from "./drying-tables.ts";
import { FORMULATION_TABLES } from "./formulation-tables.ts";
import { HAZARD_TABLES } from "./hazard-tables.ts";
import { loadedTable, type EvidencedRow, type RowOf, type TableForm } from "./loaded-table.ts";
import { NAME_TABLES } from "./material-names.ts";
import { pigmentStrangers } from "./pigment-strangers.ts";
import { PIGMENT_TABLES } from "./pigment-tables.ts";
import { saidFaults, saidWords, type SaidWords } from "./said-words.ts";

const TABLES = {
  ...COLOUR_TABLES,
  ...PIGMENT_TABLES,
  ...FORMULATION_TABLES,
  ...DRYING_TABLES,
  ...HAZARD_TABLES,
  ...NAME_TABLES,
};

/** Of whatever rows. */
const FORMS = TABLES as unknown as Readonly<Record<string, TableForm<EvidencedRow>>>;

export type Tables = {
  readonly [Name in keyof typeof TABLES]: readonly RowOf<(typeof TABLES)[Name]>[];
};

/** Two levels below the package, as this file is, lies a bundle of lib/ too. */
const LIB = fileURLToPath(new URL("../../lib/", import.meta.url));

export interface LoadedTables {
  /** Absent as soon as there is one fault. */
  readonly tables?: Tables;
  readonly diagnostics: readonly Diagnostic[];
}

/** All tables, or everything that is wrong with them. @param libDir the folder that they lie below. */
export function loadedTables(libDir: string = LIB): LoadedTables {
  return libDir === LIB ? (ofProgram ??= keptTables()) : readTables(libDir);
}

/** The program's own tables do not change under it: they are read once. */
let ofProgram: LoadedTables | undefined;

/** What the tables' English is in each other language. */
export function wordsOfTables(tables: Tables): SaidWords {
  return saidWords(
    Object.entries(tables).map(([name, rows]) => ({ said: FORMS[name]?.said, rows })),
  );
}

/** Each row is held against its form once a version of the tables; what is found wrong, every time. */
function keptTables(): LoadedTables {
  const texts = Object.values(TABLES).map(({ file }) => readFileSync(join(LIB, file)));
  const tables = keptBesideProgram("tables", texts, () => readTables(LIB).tables);
  return tables === undefined ? readTables(LIB) : { tables, diagnostics: [] };
}

function readTables(libDir: string): LoadedTables {
  const loaded = Object.entries(FORMS).map(([name, form]) => ({
    name,
    form,
    table: loadedTable(form, libDir),
  }));
  const faults = loaded.flatMap(({ table }) => table.diagnostics);
  const pigments = loadedTable(TABLES.pigments, libDir);
  // A row with a fault of its own may be the one whose name is missed.
  const diagnostics =
    faults.length > 0
      ? faults
      : [
          ...pigmentStrangers(pigments, loaded),
          ...saidFaults(loaded.map(({ form: { said }, table }) => ({ said, table }))),
        ];
  if (diagnostics.length > 0) return { diagnostics };
  return {
    diagnostics,
    tables: Object.fromEntries(
      loaded.map(({ name, table }) => [name, table.rows]),
    ) as unknown as Tables,
  };
}
