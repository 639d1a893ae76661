import { cpSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, test } from "vitest";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { OIL_INDEX_LIMITS } from "../../lib/formulation/oil-index-class.ts";
import { loadedTable } from "../../lib/knowledge/loaded-table.ts";
import { PIGMENT_TABLES } from "../../lib/knowledge/pigment-tables.ts";
import { saidFaults, saidWords } from "../../lib/knowledge/said-words.ts";
import { loadedTables } from "../../lib/knowledge/tables.ts";
import { KNOWN } from "../support/known.ts";

const LIB = join(import.meta.dirname, "../../lib");

/** Two pigments, a handbook's row and the terms that they share, some of whose rows read otherwise. */
function tables(edits: Readonly<Record<string, string>>) {
  const evidence = "pigment-constitutions-memory,memory";
  const texts = {
    pigments: [
      "colourIndexName,name,de,fr,es,class,formula,mineral,mineralDe,mineralFr,mineralEs,source,standing",
      `PW 4,zinc white,Zinkweiß,blanc de zinc,blanco de cinc,zinc oxide,ZnO,zincite,Zinkit,zincite,cincita,${evidence}`,
      `PW 4:1,zinc white,,,,zinc oxide,"ZnO, with lead",,,,,${evidence}`,
    ],
    pigmentTerms: [
      "term,de,fr,es,source,standing",
      `zinc oxide,Zinkoxid,oxyde de zinc,óxido de cinc,${evidence}`,
      `"ZnO, with lead","ZnO, mit Blei","ZnO, avec du plomb","ZnO, con plomo",${evidence}`,
    ],
    densities: ["kind,pigments,gPerCm3,source,standing", `zinc white,PW 4,5.6,${evidence}`],
  } as const;
  const folder = mkdtempSync(join(inject("scratch"), "tables-"));
  for (const room of ["knowledge", "formulation"]) mkdirSync(join(folder, room));
  return Object.entries(texts).map(([name, rows]) => {
    const form = PIGMENT_TABLES[name as keyof typeof texts];
    const edited = Object.entries(edits).reduce(
      (text, [from, to]) => text.replace(from, to),
      rows.join("\n"),
    );
    writeFileSync(join(folder, form.file), edited);
    const table = loadedTable<never>(form as never, folder);
    expect(table.diagnostics).toEqual([]);
    return { said: form.said, table };
  });
}

function told(edits: Readonly<Record<string, string>>): string[] {
  return saidFaults(tables(edits)).map((each) => formatDiagnostic(each));
}

const FAULT = "knowledge/table";

describe("what rows say in each language", () => {
  test("stands in one of them, for all that have the same English", () => {
    expect(told({})).toEqual([]);
    const words = saidWords(tables({}).map(({ said, table: { rows } }) => ({ said, rows })));
    expect([...words.keys()]).toEqual(["zinc white", "zincite", "zinc oxide", "ZnO, with lead"]);
    expect(words.get("zinc white")).toEqual({
      de: "Zinkweiß",
      fr: "blanc de zinc",
      es: "blanco de cinc",
    });
  });

  test.each([
    [
      "a name that no row has in German",
      { "zinc white,Zinkweiß": "zinc white," },
      "lib/knowledge/pigments.csv:2:17 error The text of zinc white in German is nothing; right would be a text here, or in another row with the same English",
    ],
    [
      "a mineral that no row has in two languages",
      { "Zinkit,zincite,cincita": "Zinkit,," },
      "lib/knowledge/pigments.csv:2:85 error The text of zincite in French and Spanish is nothing; right would be a text here, or in another row with the same English",
    ],
    [
      "a class without its term",
      { "\nzinc oxide,": "\nzinc oxides," },
      "lib/knowledge/pigments.csv:2:55 error The text of zinc oxide in French and German and Spanish is nothing; right would be a row for it in lib/knowledge/pigment-terms.csv",
    ],
    [
      "a formula in words without its term",
      { '"ZnO, with lead",,': '"ZnO, with iron",,' },
      "lib/knowledge/pigments.csv:3:33 error The text of ZnO, with iron in French and German and Spanish is nothing; right would be a row for it in lib/knowledge/pigment-terms.csv",
    ],
    [
      "a kind that no row names",
      { "\nzinc white,PW 4": '\n"zinc white, old",PW 4' },
      "lib/formulation/density.csv:2:1 error The text of zinc white, old in French and German and Spanish is nothing; right would be a row for it in lib/knowledge/pigment-terms.csv",
    ],
    [
      "a name that two rows have otherwise",
      { "zinc white,,,,": "zinc white,Zinkoxid,,," },
      "lib/knowledge/pigments.csv:3:19 error The text of zinc white in German is Zinkoxid; right would be Zinkweiß, as lib/knowledge/pigments.csv:2 has it, or both changed",
    ],
    [
      "a translation of nothing",
      { '"ZnO, with lead",,,,,': '"ZnO, with lead",,,Zincit,,' },
      "lib/knowledge/pigments.csv:3:52 error The mineralFr is Zincit; right would be an empty cell, as that of the English is",
    ],
  ])("%s is told once, at its cell", (_, edits, line) =>
    expect(told(edits)).toEqual([`${line} ${FAULT}`]),
  );

  test("is asked of the engine's own tables when they are read", () => {
    const folder = mkdtempSync(join(inject("scratch"), "tables-"));
    cpSync(LIB, folder, { recursive: true, filter: (from) => !from.endsWith(".ts") });
    const file = join(folder, PIGMENT_TABLES.pigments.file);
    writeFileSync(file, readFileSync(file, "utf8").replace(",Zinkweiß,", ",,"));
    expect(loadedTables(folder).diagnostics).toMatchObject([
      { message: expect.stringContaining("zinc white in German") as string },
    ]);
  });
});

// basis: memory, what these are called in the trade
test.each([
  ["lead white", "de", "Bleiweiß"],
  ["hematite", "fr", "hématite"],
  ["iron oxide", "es", "óxido de hierro"],
  ["Fe2O3", "de", "Fe2O3"],
] as const)("%s is in %s %s", (english, language, said) =>
  expect(KNOWN.said(english, language)).toBe(said),
);

const CHURCH = OIL_INDEX_LIMITS.flatMap(({ suchAs }) => suchAs.map(({ name }) => name));

test("an example of Church's table is said in each language", () => {
  expect(CHURCH.length).toBeGreaterThan(3);
  for (const language of ["de", "fr", "es"] as const)
    expect(CHURCH.filter((name) => KNOWN.said(name, language) === name)).toEqual([]);
});

test("no term is of a word that no table says", () => {
  const { pigments, densities, oilAbsorptions, looseDensities, tappedDensities, pigmentTerms } =
    KNOWN.tables;
  const said = new Set([
    ...CHURCH,
    ...pigments.flatMap((row) => [row.class, row.formula]),
    ...[...densities, ...oilAbsorptions, ...looseDensities, ...tappedDensities].map(
      (row) => row.kind,
    ),
  ]);
  expect(pigmentTerms.map(({ term }) => term).filter((term) => !said.has(term))).toEqual([]);
});
