import { describe, expect, test } from "vitest";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import {
  contentFolder,
  flatReadings,
  SMALLEST_WORKSHOP,
  type RecordTexts,
} from "../support/content-folder.ts";
import { checkTold } from "./told.ts";

/** What a record says of its pigment or vehicle against what is known of its kind: each told once, at its place. */
const OTHER: RecordTexts = {
  "colours/other.md": "---\nname: A colour\npigments: [{ pigment: other }]\n---\n",
};
const pigment = (further: string): RecordTexts => ({
  ...OTHER,
  "pigments/other.yaml": `name: A pigment\n${further}`,
});
const thinner = (further: string): RecordTexts => ({
  "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
    "masstone:",
    "additions: [{ vehicle: thinner, percentOfOil: 5 }]\nmasstone:",
  ),
  "vehicles/thinner.yaml": `name: Thinner\nkind: thinner\n${further}`,
});
const VEHICLE = "content/vehicles/thinner.yaml";
const PIGMENT = "content/pigments/other.yaml";

// clp-1272-2008-memory, Annex I, 2.6 and 3.10: flammable to 60 C, aspired up to 20.5 mm2/s at 40 C.
describe("liquids", () => {
  checkTold([
    {
      what: "a flash point without its statement",
      files: thinner("flashPointC: 60\nhazards: [H304]\n"),
      told: `${VEHICLE}:4:10 warning A liquid with a flash point of 60 C is flammable, and its hazards name none of H224, H225 and H226; ask its supplier for section 2 of a newer safety data sheet records/flash-point (clp-1272-2008-memory)`,
    },
    { what: "one past all flames", files: thinner("flashPointC: 61\nhazards: [H304]\n"), told: [] },
    { what: "one of which no paper tells", files: thinner("flashPointC: 35\n"), told: [] },
    {
      what: "a viscosity that its statement rules out",
      files: thinner("kinematicViscosityMm2PerS: 130\nhazards: [H304]\n"),
      told: `${VEHICLE}:3:28 warning A viscosity of 130 mm2/s is not that of a liquid with H304, which is 20.5 mm2/s or less at 40 C; a decimal point lost? records/viscosity (clp-1272-2008-memory)`,
    },
    {
      what: "the most viscous that is aspired",
      files: thinner("kinematicViscosityMm2PerS: 20.5\nhazards: [H304]\n"),
      told: [],
    },
  ]);
});

// clp-annex-6-memory: zinc oxide H400, H410; lead compounds H360Df; lead chromates H350.
describe("hazards that the law names", () => {
  const wanting =
    "and the hazards of A pigment do not name it; ask its supplier for section 2 of a newer safety data sheet records/harmonised-hazard (clp-annex-6-memory)";
  checkTold([
    {
      what: "zinc oxide without any",
      files: pigment("colourIndexName: PW 4\nfamily: white\nhazards: []\n"),
      told: `${PIGMENT}:4:10 warning The law classifies zinc oxide with H410, ${wanting}`,
    },
    {
      what: "zinc oxide of which no paper tells",
      files: pigment("colourIndexName: PW 4\nfamily: white\n"),
      told: [],
    },
    {
      what: "a lead compound with H302 alone",
      files: pigment("colourIndexName: PR 105\nfamily: red\nhazards: [H302]\n"),
      told: `${PIGMENT}:4:10 warning The law classifies lead compounds with H360 or H360D or H360Df or H360FD, ${wanting}`,
    },
    {
      what: "a lead compound with its own letters",
      files: pigment("colourIndexName: PR 105\nfamily: red\nhazards: [H360Df]\n"),
      told: [],
    },
    {
      what: "a number of another substance, which is told by itself",
      files: pigment("colourIndexName: PBk 11\ncasNumber: 1319-46-6\nhazards: []\n"),
      told: `${PIGMENT}:3:12 warning The CAS number 1319-46-6 is that of PW 1, and PBk 11 has 12227-89-3 or 1317-61-9 or 1309-38-2: labels name substances by that number; name and number of two pigments records/cas-number (colour-index-memory)`,
    },
  ]);
});

// memory-permanence, by `lib/permanence/expected-lightfastness.csv`: madder lake fair, in tints poor.
describe("a supplier's word on light", () => {
  const madder = (lightfastness: string): RecordTexts => ({
    ...pigment(`colourIndexName: NR 9\nlightfastness: { ${lightfastness} }\n`),
    ...OTHER,
  });
  const word = (told: string, expected: string): string =>
    `${PIGMENT}:3:28 warning A pigment is stated as ${told}, and ${expected} is expected of NR 9 (madder lake): the sheet goes by what is stated; of another pigment, of its masstone alone, or a dyer's word? records/lightfastness (memory-permanence)`;
  checkTold([
    {
      what: "the best category of a fugitive lake",
      files: madder("category: I, form: masstone"),
      told: [word("category I", "fair")],
    },
    {
      what: "the best blue wool of it",
      files: madder("blueWool: 8"),
      told: [word("blue wool 8", "fair to poor")],
    },
    {
      what: "a step beside what is expected",
      files: madder("category: II, form: masstone"),
      told: [],
    },
    { what: "one that its masstone alone may have", files: madder("category: II"), told: [] },
  ]);
});

// The suffix :1 is a lithopone's (Colour Index, memory): another density than the parent's.
test.each([
  [
    "PR 108:9",
    "Nothing is known here of PR 108:9 by itself: what is told of it is that of PR 108; known with a suffix: PR 108:1",
  ],
  ["PY 43:1", "Nothing is known here of PY 43:1 by itself: what is told of it is that of PY 43"],
  ["PR 108:1", undefined],
  ["PR 108", undefined],
])("%s is noted where no table has its suffix", (name, said) => {
  const files = { ...SMALLEST_WORKSHOP, ...pigment(`colourIndexName: ${name}\n`) };
  const { content, home } = contentFolder(files);
  const lines = loadRecords(content, home).notes.map(formatDiagnostic);
  expect(lines).toEqual(
    said === undefined ? [] : [`${PIGMENT}:2:18 note ${said} records/colour-index-suffix`],
  );
});

// memory of the trade, wide: an ochre is yellow, hue angle 45 to 110; a spectrum that rises at 620 nm is a red's.
test("the masstone of an ochre has an ochre's hue", () => {
  const rising = (at: number): string =>
    `nm,masstone\n${Array.from({ length: 31 }, (_, i) => `${400 + 10 * i},${(0.04 + 0.4 / (1 + Math.exp(-(400 + 10 * i - at) / 12))).toFixed(4)}`).join("\n")}\n`;
  const told = (at: number): string[] => {
    const { content, home } = contentFolder({
      ...SMALLEST_WORKSHOP,
      "pigments/lamp-black.yaml": "name: A pigment\ncolourIndexName: PY 43\n",
      "readings/lamp-black.csv": rising(at),
    });
    return loadRecords(content, home).diagnostics.map(({ rule }) => rule);
  };
  expect(told(540)).toEqual([]);
  expect(told(610)).toEqual(["records/masstone-of-another-family"]);
});

describe("names and families", () => {
  checkTold([
    {
      what: "a family across the round of hues",
      files: pigment("colourIndexName: PR 108\nfamily: blue\n"),
      told: `${PIGMENT}:3:9 warning The family is blue, and PR 108 is among the red pigments; a record that was copied? records/family`,
    },
    {
      what: "a family beside it, or of what it is",
      files: pigment("colourIndexName: PR 101\nfamily: earth\n"),
      told: [],
    },
    {
      what: "an earth called blue",
      files: pigment("colourIndexName: PBr 7\nfamily: blue\n"),
      told: `${PIGMENT}:3:9 warning The family is blue, and PBr 7 is among the earth pigments; a record that was copied? records/family`,
    },
    {
      what: "an earth called green or red, as some are",
      files: pigment("colourIndexName: PBr 7\nfamily: red\n"),
      told: [],
    },
    {
      what: "a white called black",
      files: { ...pigment("colourIndexName: PW 6\nfamily: black\n") },
      told: `${PIGMENT}:3:9 warning The family is black, and PW 6 is among the white pigments; a record that was copied? records/family`,
    },
    {
      what: "a name that another pigment bears",
      files: {
        "pigments/other.yaml": "name: Vermilion\ncolourIndexName: PR 108\n",
        ...OTHER,
      },
      told: `${PIGMENT}:1:7 warning Vermilion is the name of another pigment than PR 108 permanence/name-and-pigment (astm-d4302)`,
    },
    {
      what: "an umber that is none",
      files: pigment("colourIndexName: PY 43\nearth: umber\n"),
      told: `${PIGMENT}:3:8 warning An umber is PBr 7, and this pigment is PY 43: nothing is worked out from it records/earth`,
    },
    {
      what: "more metal than the formula holds",
      files: {
        ...pigment(
          "colourIndexName: PY 37\ncasNumber: 1306-23-6\nmetals: [{ metal: cadmium, percent: 95 }]\n",
        ),
        ...OTHER,
      },
      told: `${PIGMENT}:4:37 warning A pigment is stated to hold 95 % of cadmium, and by the formula of its CAS number 77.8 % of it is cadmium; the share of the compound, not of the metal? records/percent`,
    },
  ]);
});

describe("what is missing or impossible is told once", () => {
  const colour = SMALLEST_WORKSHOP["colours/lamp-black.md"];
  checkTold([
    {
      what: "the geometry of every reading",
      files: {
        "colours/lamp-black.md": colour.replace(', geometry: "45/0"', ""),
        "colours/other.md": colour
          .replace(', geometry: "45/0"', "")
          .replace("Lamp Black", "Other")
          .replace("reading: lamp-black", "reading: other"),
        "readings/other.csv": flatReadings({ masstone: 0.021 }),
      },
      told: "content/colours/lamp-black.md:5:11 error The geometry of the reading is missing: 45/0, d/8 included or d/8 excluded, here or under readings in workshop.yaml; at 1 more reading too records/geometry",
    },
    {
      what: "the uncertainty of a value that is none",
      files: pigment("oilAbsorptionGPer100g: { value: 0.32, uncertainty: 2, method: ISO 787-5 }\n"),
      told: `${PIGMENT}:2:33 error The oil absorption is 0.32 g/100 g, beyond all that occurs, 3 to 500 g/100 g; 32 g/100 g if it was given in g/g formulation/oil-absorption-reach (memory-formulation)`,
    },
    {
      what: "a bulk density above the grain's, beside its usual reach",
      files: pigment("densityGPerCm3: 4.6\nbulkDensityTappedGPerMl: 5.2\n"),
      told: `${PIGMENT}:3:26 error The bulk density is 5.2 g/ml, and must be below the density of the grain, 4.6 g/cm3 formulation/bulk-density-order`,
    },
  ]);
});

// Cerulean blue (PB 35) leans to green, as far as hab 225 or so, cobalt chromite (PB 36) on to turquoise. Source: practice.
describe("a* and b* of a blue in each other's place", () => {
  const blue = (name: string, lab: string, tint?: string): RecordTexts => ({
    "pigments/other.yaml": `name: A pigment\ncolourIndexName: ${name}\nfamily: blue\n`,
    "pigments/white.yaml": "name: White\n",
    "colours/other.md": `---
name: A colour
pigments: [{ pigment: other }]
masstone: { lab: [${lab}], illuminant: D65, observer: 10, geometry: 45/0 }
${tint === undefined ? "" : `tints: [{ white: white, massRatio: "1:5", ratioKind: paint, lab: [${tint}], illuminant: D65, observer: 10, geometry: 45/0 }]\n`}---
`,
  });
  const rulesOf = (files: RecordTexts): string[] => {
    const { content, home } = contentFolder({ ...SMALLEST_WORKSHOP, ...files });
    return loadRecords(content, home)
      .diagnostics.map(({ rule }) => rule)
      .filter((rule) => rule !== "records/unused");
  };
  test.each([
    ["a cerulean blue", "PB 35", "46, -38, -18", undefined, ["records/masstone-of-another-family"]],
    ["as it is", "PB 35", "46, -18, -38", undefined, []],
    ["a turquoise, which may be so", "PB 36", "46, -38, -18", undefined, []],
    ["told by its let-down", "PB 36", "46, -38, -18", "65, -14, -30", ["records/turned-hue"]],
    ["let down as it is", "PB 36", "46, -38, -18", "65, -30, -14", []],
  ])("%s (%s)", (_, name, lab, tint, rules) => {
    expect(rulesOf(blue(name, lab, tint))).toEqual(rules);
  });
});
