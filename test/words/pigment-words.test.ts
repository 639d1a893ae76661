import { expect, test } from "vitest";
import { OIL_INDEX_LIMITS } from "../../lib/formulation/oil-index-class.ts";
import { PIGMENT_WORDS } from "../../lib/words/pigment-words.ts";
import { KNOWN } from "../support/known.ts";

const { pigments, commonNames, lightfastness, densities, oilAbsorptions } = KNOWN.tables;

test.each([
  ["class", pigments.map((row) => row.class)],
  ["common name", pigments.map((row) => row.name)],
  ["other name", commonNames.map((row) => row.name)],
  ["mineral", pigments.map((row) => row.mineral)],
  [
    "formula in words",
    pigments.map((row) => row.formula).filter((formula) => formula && / with /.test(formula)),
  ],
  ["kind of lightfastness", lightfastness.map((row) => row.kinds)],
  ["kind of density", densities.map((row) => row.kind)],
  ["kind of oil absorption", oilAbsorptions.map((row) => row.kind)],
  [
    "example of Church's table",
    OIL_INDEX_LIMITS.flatMap(({ suchAs }) => suchAs.map(({ name }) => name)),
  ],
])("every %s of the tables of knowledge has its row in pigment-words.ts", (_, words) => {
  const named = [...new Set(words.filter((word) => word !== undefined))];
  expect(named.length).toBeGreaterThan(3);
  expect(named.filter((word) => PIGMENT_WORDS[word] === undefined)).toEqual([]);
});

test("no row is of a word that no table says", () => {
  const said = new Set([
    ...pigments.flatMap((row) => [row.class, row.mineral, row.formula, row.name]),
    ...lightfastness.map((row) => row.kinds),
    ...commonNames.map((row) => row.name),
    ...OIL_INDEX_LIMITS.flatMap(({ suchAs }) => suchAs.map(({ name }) => name)),
    ...[...densities, ...oilAbsorptions].map((row) => row.kind),
  ]);
  expect(Object.keys(PIGMENT_WORDS).filter((word) => !said.has(word))).toEqual([]);
});
