import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, test } from "vitest";
import { z } from "zod";
import {
  evidence,
  listCell,
  numberCell,
  quantityCell,
  wording,
} from "../../lib/knowledge/cells.ts";
import { DRYING_TABLES } from "../../lib/knowledge/drying-tables.ts";
import { FORMULATION_TABLES } from "../../lib/knowledge/formulation-tables.ts";
import { HAZARD_TABLES } from "../../lib/knowledge/hazard-tables.ts";
import { loadedTable } from "../../lib/knowledge/loaded-table.ts";
import { pigmentStrangers, type ScienceTable } from "../../lib/knowledge/pigment-strangers.ts";
import { PIGMENT_TABLES } from "../../lib/knowledge/pigment-tables.ts";
import { loadedTables } from "../../lib/knowledge/tables.ts";

const LIB = join(import.meta.dirname, "../../lib");

const ROW = z.strictObject({
  kind: wording,
  names: listCell(z.string().regex(/^P/, "a name that begins with P")),
  density: quantityCell(0.5, 12, "g/cm3").optional(),
  year: numberCell(-40000, 2026, "").optional(),
  effect: z.enum(["fades", "darkens"]).optional(),
  ...evidence,
});

function loaded(
  file: "table.csv" | "table.yaml",
  text: string,
): { readonly rows: readonly unknown[]; readonly told: readonly string[] } {
  const folder = mkdtempSync(join(inject("scratch"), "tables-"));
  mkdirSync(join(folder, "science"));
  writeFileSync(join(folder, "science", file), text);
  const { rows, diagnostics } = loadedTable(
    { file: `science/${file}`, row: ROW, names: ({ names }) => names },
    folder,
  );
  return {
    rows,
    told: diagnostics.map(
      ({ place: { file: where, line, column } }) => `${where}:${line}:${column}`,
    ),
  };
}

const HEAD = "kind,names,density,year,effect,source,standing\n";

describe("a table of CSV", () => {
  test("gives numbers, ranges and lists; an empty cell is left out", () => {
    expect(
      loaded(
        "table.csv",
        `# densities\n${HEAD}bone black,PBk 9,2.29,,,gettens-stout-1942,published\n\n"chrome, pale",PY 34; PY 34:1,5.8-6,1809,darkens,memory-formulation,memory\n`,
      ),
    ).toEqual({
      told: [],
      rows: [
        {
          kind: "bone black",
          names: ["PBk 9"],
          density: 2.29,
          source: "gettens-stout-1942",
          standing: "published",
        },
        {
          kind: "chrome, pale",
          names: ["PY 34", "PY 34:1"],
          density: [5.8, 6],
          year: 1809,
          effect: "darkens",
          source: "memory-formulation",
          standing: "memory",
        },
      ],
    });
  });

  test.each([
    ["a row without source", "a,PB 1,2,,,,memory", "2:12"],
    ["an unknown source", "a,PB 1,2,,,memory-formulaton,memory", "2:12"],
    ["a density of a metal bar", "a,PB 1,19.3,,,memory-formulation,memory", "2:8"],
    ["a range the wrong way round", "a,PB 1,4-3,,,memory-formulation,memory", "2:8"],
    ["a number with a comma in it", 'a,PB 1,"3,9",,,memory-formulation,memory', "2:8"],
    ["a word of no list", "a,PB 1,2,,bleeches,memory-formulation,memory", "2:11"],
    ["a name of no form", "a,PB 1; QB 2,2,,,memory-formulation,memory", "2:3"],
    ["a cell too many", "a,PB 1,2,,,memory-formulation,memory,more", "2:30"],
    ["a cell too few", "a,PB 1,2,,,memory-formulation", "2:12"],
    ["a quote that is not closed", 'a,"PB 1,2,,,memory-formulation,memory', "2:1"],
    ["published in a text that was not read", "a,PB 1,2,,,memory-formulation,published", "2:31"],
  ])("tells of %s at its cell", (_, row, at) => {
    expect(loaded("table.csv", `${HEAD}${row}\n`).told).toEqual([
      expect.stringMatching(new RegExp(`^lib/science/table\\.csv:${at.split(":")[0]}:`)),
    ]);
    if (!row.includes("more") && !row.includes('"PB') && row.split(",").length >= 7)
      expect(loaded("table.csv", `${HEAD}${row}\n`).told).toEqual([`lib/science/table.csv:${at}`]);
  });

  test("tells of a second row of one name at its line", () => {
    const row = "a,PB 1,2,,,memory-formulation,memory\n";
    expect(loaded("table.csv", `${HEAD}${row}${row}`).told).toEqual(["lib/science/table.csv:3:1"]);
  });

  test("tells of a column that it does not know, and of a table without a header", () => {
    expect(
      loaded("table.csv", "kind,names,colour,source,standing\na,PB 1,red,memory-formulation,memory")
        .told,
    ).toEqual(["lib/science/table.csv:2:8"]);
    expect(loaded("table.csv", "").told).toEqual(["lib/science/table.csv:1:1"]);
  });
});

describe("a table of YAML", () => {
  const row = (more: string): string =>
    `- kind: bone black\n  names: [PBk 9]\n${more}  standing: memory\n`;
  test("gives the same rows", () => {
    expect(
      loaded("table.yaml", row("  density: 2.2-2.6\n  source: memory-formulation\n")).rows,
    ).toEqual([
      {
        kind: "bone black",
        names: ["PBk 9"],
        density: [2.2, 2.6],
        source: "memory-formulation",
        standing: "memory",
      },
    ]);
  });
  test.each([
    ["a row without source", row(""), "1:3"],
    ["a density out of reach", row("  density: 20\n  source: memory-formulation\n"), "3:12"],
    ["a key that it does not know", row("  hue: black\n  source: memory-formulation\n"), "3:8"],
    ["a list of words", "- bone black\n", "1:3"],
    ["no list", "kind: bone black\n", "1:1"],
    ["broken YAML", "- kind: [\n", "2:1"],
  ])("tells of %s", (_, text, at) => {
    expect(loaded("table.yaml", text).told).toEqual([`lib/science/table.yaml:${at}`]);
  });
});

describe("names of pigments, of which a table here and pigments.csv must agree", () => {
  function told(density: string, classOf: string): readonly unknown[] {
    const folder = mkdtempSync(join(inject("scratch"), "tables-"));
    for (const name of ["formulation", "knowledge"]) mkdirSync(join(folder, name));
    writeFileSync(
      join(folder, "formulation", "density.csv"),
      `kind,pigments,gPerCm3,source,standing\n${density},1.6,memory-formulation,memory\n`,
    );
    writeFileSync(
      join(folder, "knowledge", "pigments.csv"),
      `colourIndexName,name,class,source,standing\nPR 49,lithol red,${classOf},pigment-constitutions-memory,memory\nPR 57,rubine,azo lake,pigment-constitutions-memory,memory\n`,
    );
    const form = PIGMENT_TABLES.densities;
    const pigments = loadedTable(PIGMENT_TABLES.pigments, folder);
    const table = loadedTable(form, folder);
    expect([...pigments.diagnostics, ...table.diagnostics]).toEqual([]);
    return pigmentStrangers(pigments, [
      { form, table },
      { form: PIGMENT_TABLES.pigments, table: pigments },
    ] as unknown as ScienceTable[]);
  }

  test("by name and by class", () => {
    expect(told("lake,azo lake", "azo lake")).toEqual([]);
    expect(told("lakes,azo lake; PR 49", "azo lake")).toEqual([]);
  });
  test("a class that pigments.csv lacks, with the nearest that it has", () =>
    expect(told("lake,azo lake; azo laek", "azo lake")).toMatchObject([
      {
        place: { file: "lib/formulation/density.csv", line: 2, column: 6 },
        actual: "azo laek",
        hint: "nearest: azo lake",
      },
    ]));
  test("a class of pigments.csv that no science has a row for, with the nearest that one has", () =>
    expect(told("lake,azo lake", "azo laek")).toMatchObject([
      {
        place: { file: "lib/knowledge/pigments.csv", line: 2, column: 18 },
        actual: "azo laek",
        hint: "nearest: azo lake",
      },
    ]));
});

test("a table of a closed list tells which of it has no row, once its rows have no fault", () => {
  const folder = mkdtempSync(join(inject("scratch"), "tables-"));
  mkdirSync(join(folder, "drying"));
  const rows = readFileSync(join(LIB, "drying", "driers.csv"), "utf8")
    .trimEnd()
    .split("\n");
  const told = (text: readonly string[]) => {
    writeFileSync(join(folder, "drying", "driers.csv"), text.join("\n"));
    return loadedTable(DRYING_TABLES.driers, folder).diagnostics.map(({ message }) => message);
  };
  expect(told(rows)).toEqual([]);
  expect(told(rows.filter((row) => !row.startsWith("lead")))).toEqual([
    expect.stringContaining("no row for lead"),
  ]);
  expect(told(rows.map((row) => row.replace("lead", "laed")))).toEqual([
    expect.stringContaining("The metal is laed"),
  ]);
});

test("the slips of a reach are a unit and what mends it", () => {
  const folder = mkdtempSync(join(inject("scratch"), "tables-"));
  mkdirSync(join(folder, "formulation"));
  const text = readFileSync(join(LIB, "formulation", "reaches.csv"), "utf8");
  writeFileSync(join(folder, "formulation", "reaches.csv"), text.replace("kg/m3 x 0.001", "kg/m3"));
  expect(loadedTable(FORMULATION_TABLES.reaches, folder).diagnostics).toMatchObject([
    { place: { line: 2 }, expected: "a unit and what mends it, such as kg/m3 x 0.001" },
  ]);
  expect(loadedTable(FORMULATION_TABLES.reaches, LIB).rows[0]?.slips).toEqual([
    { givenIn: "kg/m3", times: 0.001 },
  ]);
});

test("a forbidden word that is no pattern is told at its row", () => {
  const folder = mkdtempSync(join(inject("scratch"), "tables-"));
  mkdirSync(join(folder, "hazard/label"), { recursive: true });
  const file = "hazard/label/forbidden-words.yaml";
  const text = readFileSync(join(LIB, file), "utf8");
  writeFileSync(join(folder, file), text.replace("- conforms?\n", '- "conforms?("\n'));
  expect(loadedTable(HAZARD_TABLES.forbiddenWords, folder).diagnostics).toMatchObject([
    {
      place: { file: "lib/hazard/label/forbidden-words.yaml", line: 10 },
      expected: "the source of a regular expression",
    },
  ]);
});

test("the engine's own tables have no fault", () => {
  expect(loadedTables().diagnostics).toEqual([]);
});
