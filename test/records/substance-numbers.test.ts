import { describe, expect, test } from "vitest";
import { contentFolder, SMALLEST_WORKSHOP, type RecordTexts } from "../support/content-folder.ts";
import { checkTold, toldOf } from "./told.ts";

/**
 * What stands for what is the table's (`lib/knowledge/constitution-numbers.csv`, recalled); which pair of
 * numbers is a slip is common practice.
 */
const numbered = (colourIndexName: string, colourIndexNumber: string): RecordTexts => ({
  "pigments/lamp-black.yaml": `name: Some pigment\ncolourIndexName: "${colourIndexName}"\ncolourIndexNumber: "${colourIndexNumber}"\n`,
});

/** Two pigments of one CAS number, and a colour that holds both. */
const twins = (names: readonly [string, string], casNumber: string): RecordTexts => ({
  ...Object.fromEntries(
    names.map((name, i) => [
      `pigments/pigment-${i + 1}.yaml`,
      `name: Pigment ${i + 1}\ncolourIndexName: ${name}\ncasNumber: ${casNumber}\n`,
    ]),
  ),
  "colours/mixed.md":
    "---\nname: Mixed\npigments:\n  - { pigment: pigment-1 }\n  - { pigment: pigment-2 }\n---\n",
});

describe("a constitution number that is not of its name", () => {
  checkTold([
    {
      what: "another pigment's",
      files: numbered("PBk 9", "77491"),
      told: "content/pigments/lamp-black.yaml:3:20 warning The Colour Index number 77491 is that of PBr 6, PBr 7, PR 101, PR 102, and PBk 9 has 77267; name and number of two pigments records/constitution-number (colour-index-memory)",
    },
    {
      what: "two digits exchanged",
      files: numbered("PG 17", "77228"),
      told: "content/pigments/lamp-black.yaml:3:20 warning The Colour Index number 77228 is not that of PG 17, and PG 17 has 77288; nearest: 77288 records/constitution-number (colour-index-memory)",
    },
  ]);

  test.each([
    ["PBk 8", "77268:1"],
    ["PB 15:3", "74160"],
    ["PR 83:1", "58000:1"],
    ["PR 108:1", "77202:1"],
    ["PBr 7", "77492"],
    ["PO 73", "561170"],
    ["PY 184", "771740"],
    // Nothing is known of its numbers.
    ["PG 39", "77492"],
  ])("%s %s is sound", (name, number) => {
    expect(
      toldOf(contentFolder({ ...SMALLEST_WORKSHOP, ...numbered(name, number) })).lines,
    ).toEqual([]);
  });
});

// Sodium aluminate's: no pigment has it, so that neither record is known to be the wrong one.
const OF_NO_PIGMENT = "1302-42-7";

describe("one CAS number on two pigments", () => {
  const told = (name: string, other: string, casNumber: string): string =>
    `content/pigments/pigment-2.yaml:3:12 warning The CAS number ${casNumber} is that of Pigment 1 (${other}) too, which is another substance than ${name}: labels name substances by that number; a record that was copied? records/cas-shared`;
  checkTold([
    {
      what: "of two hues",
      files: twins(["PG 17", "PR 101"], OF_NO_PIGMENT),
      told: [told("PR 101", "PG 17", OF_NO_PIGMENT)],
    },
    {
      what: "of one hue and one class",
      files: twins(["PR 112", "PR 170"], OF_NO_PIGMENT),
      told: [told("PR 170", "PR 112", OF_NO_PIGMENT)],
    },
    {
      what: "of one hue and two classes",
      files: twins(["PG 17", "PG 18"], OF_NO_PIGMENT),
      told: [told("PG 18", "PG 17", OF_NO_PIGMENT)],
    },
  ]);

  test.each([
    ["red oxide and red earth", ["PR 101", "PR 102"], "1309-37-1"],
    ["yellow oxide and ochre", ["PY 42", "PY 43"], "51274-00-1"],
    ["soot and charcoal", ["PBk 7", "PBk 8"], "1333-86-4"],
    ["red oxide and burnt umber", ["PR 101", "PBr 7"], "1309-37-1"],
    ["two crystals of one blue", ["PB 15:1", "PB 15:3"], "147-14-8"],
    ["barytes and blanc fixe", ["PW 21", "PW 22"], "7727-43-7"],
  ] as const)("%s may share one", (_, names, casNumber) => {
    const { lines } = toldOf(contentFolder({ ...SMALLEST_WORKSHOP, ...twins(names, casNumber) }));
    expect(lines.filter((line) => line.includes("cas-shared"))).toEqual([]);
  });
});

/** What each number stands for is the table's (`lib/knowledge/cas-numbers.csv`, recalled). */
describe("a CAS number that is not of its name", () => {
  const black = (further: string): RecordTexts => ({
    "colours/other.md": "---\nname: A colour\npigments: [{ pigment: other }]\n---\n",
    "pigments/other.yaml": `name: A pigment\n${further}`,
  });
  checkTold([
    {
      what: "another pigment's",
      files: black("colourIndexName: PW 4\ncasNumber: 13463-67-7\nfamily: white\n"),
      told: "content/pigments/other.yaml:3:12 warning The CAS number 13463-67-7 is that of PW 6, and PW 4 has 1314-13-2: labels name substances by that number; name and number of two pigments records/cas-number (colour-index-memory)",
    },
    {
      what: "red iron oxide's on the black one",
      files: black("colourIndexName: PBk 11\ncasNumber: 1309-37-1\n"),
      told: "content/pigments/other.yaml:3:12 warning The CAS number 1309-37-1 is that of PR 101, PR 102, PY 42, PY 43, PBr 6, PBr 7, and PBk 11 has 12227-89-3 or 1317-61-9 or 1309-38-2: labels name substances by that number; name and number of two pigments records/cas-number (colour-index-memory)",
    },
    {
      what: "one of several that a pigment has",
      files: black("colourIndexName: PBk 11\ncasNumber: 1317-61-9\n"),
      told: [],
    },
    {
      what: "one that no table knows",
      files: black(`colourIndexName: PBk 11\ncasNumber: ${OF_NO_PIGMENT}\n`),
      told: [],
    },
    {
      what: "of a mixture, which goes by its components",
      files: black(
        "colourIndexName: PBk 11\ncasNumber: 1309-37-1\ncomponents:\n  - { name: Iron oxide, casNumber: 1317-61-9, massFraction: 1, hazards: [] }\n",
      ),
      told: [],
    },
  ]);
});

describe("one substance twice among components", () => {
  const drier = (second: string): RecordTexts => ({
    "vehicles/drier.yaml": `name: Drier
kind: drier
metals: [{ metal: cobalt, percent: 6 }]
components:
  - { name: Cobalt salt, casNumber: 136-52-7, massFraction: 0.4, hazards: [] }
  - { name: Thinner, casNumber: ${second}, massFraction: 0.6, hazards: [] }
`,
    "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
      "masstone:",
      "additions: [{ vehicle: drier, percentOfOil: 1 }]\nmasstone:",
    ),
  });
  checkTold([
    {
      what: "the number of the line above",
      files: drier("136-52-7"),
      told: "content/vehicles/drier.yaml:6:33 warning The CAS number 136-52-7 stands at two components, Cobalt salt and Thinner: limits are held against each by itself; the number of another component, or one substance whose shares belong together records/component-twice",
    },
    { what: "two substances", files: drier("64742-48-9"), told: [] },
  ]);
});
