import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
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
import { loadedTable } from "../../lib/knowledge/loaded-table.ts";
import { PIGMENT_TABLES } from "../../lib/knowledge/pigment-tables.ts";
import { loadedTables } from "../../lib/knowledge/tables.ts";

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

test("tells of a pigment that pigments.csv does not have, with the nearest name or class", () => {
  const folder = mkdtempSync(join(inject("scratch"), "tables-"));
  mkdirSync(join(folder, "formulation"));
  writeFileSync(
    join(folder, "formulation", "density.csv"),
    "kind,pigments,gPerCm3,source,standing\nlake,azo lake; PR 49,1.6,memory-formulation,memory\nlake,azo laek,1.6,memory-formulation,memory\n",
  );
  const known = new Set(["azo lake", "PR 49"]);
  expect(loadedTable(PIGMENT_TABLES.densities, folder).diagnostics).toEqual([]);
  expect(loadedTable(PIGMENT_TABLES.densities, folder, known).diagnostics).toMatchObject([
    {
      place: { file: "lib/formulation/density.csv", line: 3, column: 6 },
      actual: "azo laek",
      hint: "nearest: azo lake",
    },
  ]);
});

test("the engine's own tables have no fault", () => {
  expect(loadedTables().diagnostics).toEqual([]);
});
