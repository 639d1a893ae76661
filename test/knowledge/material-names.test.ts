/** What materials are called, in the languages of records: ordinary words of each, common practice, no source. */
import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { loadedTable } from "../../lib/knowledge/loaded-table.ts";
import {
  namedMaterials,
  NAME_TABLES,
  type MaterialName,
} from "../../lib/knowledge/material-names.ts";
import { KNOWN } from "../support/known.ts";

const TABLE = KNOWN.tables.materialNames;

test.each([
  ["oil", "linseed", ["Linseed oil, cold pressed", "Leinöl", "Huile de lin", "Aceite de linaza"]],
  ["oil", "walnut", ["Walnut oil", "Walnussöl", "Huile de noix", "Aceite de nuez"]],
  ["oil", "safflower", ["Safflower oil", "Distelöl", "Huile de carthame", "Aceite de cártamo"]],
  ["oil", "poppy", ["Poppy oil", "Mohnöl", "Huile d’œillette", "Aceite de adormidera"]],
  ["metal", "cadmium", ["Cadmium red", "Kadmiumrot", "Rouge de cadmium", "Rojo de cadmio"]],
  ["metal", "cobalt", ["Cobalt blue", "Kobaltblau", "Bleu de cobalt", "Azul de cobalto"]],
  ["metal", "copper", ["Copper flakes", "Kupferflocken", "Cuivre en paillettes", "Cobre"]],
  ["metal", "lead", ["Lead white", "Bleiweiß", "Blanc de plomb", "Blanco de plomo"]],
  ["metal", "nickel", ["Nickel titanate", "Nickeltitan", "Titanate de nickel", "Níquel titanio"]],
  ["metal", "zinc", ["Zinc white", "Zinkweiß", "Blanc de zinc", "Blanco de cinc"]],
] as const)("a name of %s in each language speaks of %s", (material, named, names) => {
  for (const name of names) expect(namedMaterials(name, material, TABLE), name).toEqual([named]);
});

test.each<[MaterialName["material"], string]>([
  ["oil", "Lindenblütenöl"],
  ["oil", "Stand oil"],
  ["metal", "Encino oak black"],
])("no %s is in %s", (material, name) => {
  expect(namedMaterials(name, material, TABLE)).toEqual([]);
});

/** What is told of a table of these rows: at which line, and in what words. */
function told(...rows: readonly string[]): string[] {
  const folder = mkdtempSync(join(inject("scratch"), "names-"));
  mkdirSync(join(folder, "knowledge"));
  writeFileSync(
    join(folder, NAME_TABLES.materialNames.file),
    rows.map((row) => `- ${row}\n`).join(""),
  );
  return loadedTable(NAME_TABLES.materialNames, folder).diagnostics.map(
    ({ place: { line }, message }) => `${line} ${message}`,
  );
}

test.each([
  ["material: oil, named: hemp, words: [hemp], standing: practice", /source/],
  ["material: oil, named: hemp, words: [hemp], source: nobody, standing: practice", /nobody/],
  [
    "material: oil, named: hemp, words: [], source: practice-formulation, standing: practice",
    /words/,
  ],
  [
    "material: oil, named: hemp, words: ['he(mp'], source: practice-formulation, standing: practice",
    /words/,
  ],
  [
    "material: wax, named: bee, words: [bee], source: practice-formulation, standing: practice",
    /material/,
  ],
  [
    "material: oil, named: hemp, words: [hemp], source: practice-formulation, standing: sure",
    /standing/,
  ],
  [
    "material: oil, named: hemp, word: [hemp], source: practice-formulation, standing: practice",
    /word/,
  ],
])("a row of { %s } is refused at its line", (row, what) => {
  const sound =
    "{ material: oil, named: flax, words: [flax], source: practice-formulation, standing: practice }";
  const faults = told(sound, `{ ${row} }`);
  expect(faults.length).toBeGreaterThan(0);
  for (const fault of faults) expect(fault).toMatch(/^2 /);
  expect(faults.join(" ")).toMatch(what);
});

test("so is a second row of one name, and a sound one is not", () => {
  const row =
    "{ material: oil, named: flax, words: [flax], source: practice-formulation, standing: practice }";
  expect(told(row)).toEqual([]);
  expect(told(row, row)).toEqual([expect.stringMatching(/^2 .*oil, flax/)]);
});
