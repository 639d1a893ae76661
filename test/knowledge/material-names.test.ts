/** What materials are called, in the languages of records: ordinary words of each, common practice, no source. */
import { expect, test } from "vitest";
import { namedMaterials, type MaterialName } from "../../lib/knowledge/material-names.ts";
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
