import { describe, expect, test } from "vitest";
import { contentFolder, flatReadings, SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { checkTold, toldOf } from "./told.ts";

const COLOUR = "colours/lamp-black.md";
const PIGMENT = "pigments/lamp-black.yaml";
const READING = "readings/lamp-black.csv";
const COLOUR_LINE = "content/colours/lamp-black.md";
const PIGMENT_LINE = "content/pigments/lamp-black.yaml";
const READING_LINE = "content/readings/lamp-black.csv";

/** The smallest colour with further lines in its front matter, from line 6 on. */
const colourWith = (...lines: string[]): string =>
  SMALLEST_WORKSHOP[COLOUR].replace("\n---\nNotes", `\n${lines.join("\n")}\n---\nNotes`);
/** The smallest colour with one part of it written otherwise. */
const colourBut = (part: string, otherwise: string): string => {
  if (!SMALLEST_WORKSHOP[COLOUR].includes(part))
    throw new Error(`Unexpected colour without ${part}`);
  return SMALLEST_WORKSHOP[COLOUR].replace(part, otherwise);
};
const readingBut = (part: string, otherwise: string): string =>
  flatReadings({ masstone: 0.02 }).replace(part, otherwise);
const unused = (line: string, slug: string): string =>
  `${line}:1:1 warning No record refers to ${slug}, so nothing comes of it records/unused`;

test("the smallest workshop is sound: a workshop, one pigment, one colour, one CSV", () => {
  expect(toldOf(contentFolder(SMALLEST_WORKSHOP))).toEqual({ lines: [], sound: true });
});

describe("keys and values", () => {
  checkTold([
    {
      what: "an unknown key, with the nearest known one",
      files: { [PIGMENT]: "name: Lamp black\ndensityGPerCm: 1.8\n" },
      told: `${PIGMENT_LINE}:2:1 error There is no key densityGPerCm in this record; nearest: densityGPerCm3 records/unknown-key`,
    },
    {
      what: "an unknown key that is near none: all that are known",
      files: {
        "vehicles/oil.yaml": "name: Oil\nkind: oil\nsmell: nutty\n",
        [COLOUR]: colourWith("vehicle: oil"),
      },
      told: "content/vehicles/oil.yaml:3:1 error There is no key smell in this record; known: name, kind, oil, densityGPerCm3, casNumber, whatItIs, pricePerKg, hazards, acuteToxicity, metals, workplaceLimit, components, flashPointC, initialBoilingPointC, kinematicViscosityMm2PerS, safetyDataSheet, date, translations records/unknown-key",
    },
    {
      what: "an unknown key inside another",
      files: { [PIGMENT]: "name: Lamp black\nparticle: { sizeUm: 0.1, shap: round }\n" },
      told: `${PIGMENT_LINE}:2:26 error There is no key shap under particle; nearest: shape records/unknown-key`,
    },
    {
      what: "a language that there are no words of, and a key that no translation has",
      files: {
        [PIGMENT]: "name: Lamp black\ntranslations: { de: { nam: Rußschwarz } }\n",
        [COLOUR]: colourWith("translations:", "  xx: { name: Lamp }"),
      },
      told: [
        `${COLOUR_LINE}:7:3 error There is no key xx under translations; known: en, fr, de, es records/unknown-key`,
        `${PIGMENT_LINE}:2:23 error There is no key nam under translations.de; nearest: name records/unknown-key`,
      ],
    },
    {
      what: "text in place of a number",
      files: { [PIGMENT]: "name: Lamp black\ndensityGPerCm3: heavy\n" },
      told: `${PIGMENT_LINE}:2:17 error densityGPerCm3 can't be "heavy": it takes a number records/schema`,
    },
    {
      what: "a number in place of text",
      files: { [PIGMENT]: "name: 12\n" },
      told: `${PIGMENT_LINE}:1:7 error name can't be 12: it takes text; in quotes: "12" records/schema`,
    },
    {
      what: "one in place of a list",
      files: { [COLOUR]: colourBut("\n  - { pigment: lamp-black }", " lamp-black") },
      told: `${COLOUR_LINE}:3:11 error pigments can't be "lamp-black": it takes a list; written so: [{ pigment: lamp-black }] records/schema`,
    },
    {
      what: "an empty list",
      files: { [COLOUR]: colourBut("\n  - { pigment: lamp-black }", " []") },
      told: `${COLOUR_LINE}:3:11 error pigments is too short: it takes at least 1 entry records/schema`,
    },
    {
      what: "a list in place of keys",
      files: { [PIGMENT]: "- Lamp black\n" },
      told: `${PIGMENT_LINE}:1:1 error The record can't be ["Lamp black"]: it takes keys and values records/schema`,
    },
    {
      what: "an empty file",
      files: { [PIGMENT]: "" },
      told: `${PIGMENT_LINE}:1:1 error The record is missing: it takes keys and values records/schema`,
    },
    {
      what: "a key that is wanting",
      files: { [PIGMENT]: "colourIndexName: PBk 6\n" },
      told: `${PIGMENT_LINE}:1:1 error name is missing: it takes text records/schema`,
    },
    {
      what: "no number",
      files: { [PIGMENT]: "name: Lamp black\ndensityGPerCm3: .nan\n" },
      told: `${PIGMENT_LINE}:2:17 error densityGPerCm3 can't be NaN: it takes a number records/schema`,
    },
    {
      what: "a number without end",
      files: { [PIGMENT]: "name: Lamp black\ndensityGPerCm3: 1e999\n" },
      told: `${PIGMENT_LINE}:2:17 error densityGPerCm3 can't be Infinity: it takes a number records/schema`,
    },
    {
      what: "an estimate with its ends the wrong way round",
      files: { [PIGMENT]: "name: Lamp black\ndensityGPerCm3: { value: [2, 1.8] }\n" },
      told: `${PIGMENT_LINE}:2:26 error The range [2,1.8] begins with its upper end records/range`,
    },
    {
      what: "a day that is in no calendar",
      files: { [COLOUR]: colourWith("date: 2026-02-30") },
      told: `${COLOUR_LINE}:6:7 error date can't be "2026-02-30": it takes a date, YYYY-MM-DD; the calendar has no such day records/schema`,
    },
    {
      what: "a link that runs a script",
      files: { [PIGMENT]: "name: Lamp black\nsafetyDataSheet: javascript:alert(1)\n" },
      told: `${PIGMENT_LINE}:2:18 error safetyDataSheet can't be "javascript:alert(1)": it takes a web address, http or https records/schema`,
    },
    {
      what: "keys that a program may trip over",
      files: { [PIGMENT]: "name: Lamp black\nparticle: { __proto__: { a: 1 } }\n" },
      told: `${PIGMENT_LINE}:2:13 error There is no key __proto__ under particle; known: sizeUm, shape, refractiveIndex, absorptionIndex records/unknown-key`,
    },
  ]);
});

describe("closed vocabularies and notations", () => {
  checkTold([
    {
      what: "an unknown word, with the nearest known one",
      files: { [COLOUR]: colourWith("dispersion: miled") },
      told: `${COLOUR_LINE}:6:13 error dispersion can't be "miled": it takes mulled or milled; nearest: milled records/schema`,
    },
    {
      what: "an unknown word that is near none",
      files: { [COLOUR]: colourWith("dispersion: whipped") },
      told: `${COLOUR_LINE}:6:13 error dispersion can't be "whipped": it takes mulled or milled records/schema`,
    },
    {
      what: "a geometry with a letter for a nought",
      files: { [COLOUR]: colourBut(`"45/0"`, `"45/O"`) },
      told: `${COLOUR_LINE}:5:77 error masstone.geometry can't be "45/O": it takes 45/0, d/8 included or d/8 excluded; nearest: 45/0 records/schema`,
    },
    {
      what: "a Colour Index name as it is not written",
      files: { [PIGMENT]: "name: Lamp black\ncolourIndexName: Pbk6\n" },
      told: `${PIGMENT_LINE}:2:18 error colourIndexName can't be "Pbk6": it takes a Colour Index generic name, such as "PBk 6"; written so: PBk 6 records/schema`,
    },
    {
      what: "a chip that is in no Munsell book",
      files: {
        [COLOUR]: colourBut(
          `{ reading: lamp-black, column: masstone, scale: factor, geometry: "45/0" }`,
          "{ munsell: blackish }",
        ),
      },
      told: [
        `${COLOUR_LINE}:5:22 error "blackish" is no Munsell notation, such as N 2/ or 5PB 3/1 records/munsell`,
        unused(READING_LINE, "lamp-black"),
      ],
    },
    {
      what: "a chip without the blank behind its hue",
      files: {
        [COLOUR]: colourBut(
          `{ reading: lamp-black, column: masstone, scale: factor, geometry: "45/0" }`,
          "{ munsell: 5PB3/1 }",
        ),
      },
      told: [
        `${COLOUR_LINE}:5:22 error "5PB3/1" is no Munsell notation, such as N 2/ or 5PB 3/1; written so: 5PB 3/1 records/munsell`,
        unused(READING_LINE, "lamp-black"),
      ],
    },
    {
      what: "a lightness above 100",
      files: {
        [COLOUR]: colourBut(
          `{ reading: lamp-black, column: masstone, scale: factor, geometry: "45/0" }`,
          `{ lab: [100.1, 0, 0], illuminant: D65, observer: 10, geometry: "45/0" }`,
        ),
      },
      told: `${COLOUR_LINE}:5:19 error masstone.lab[0] is 100.1, and takes 100 or less records/schema`,
    },
  ]);
});

describe("what a colour says of its making", () => {
  const pigments = (...parts: string[]): string =>
    colourBut("\n  - { pigment: lamp-black }", parts.map((part) => `\n  - { ${part} }`).join(""));
  const WHITE = {
    "pigments/zinc-white.yaml": "name: Zinc white\n",
    [READING]: flatReadings({ masstone: 0.02, tint: 0.3 }),
  };
  const tint = (massRatio: string): string =>
    colourWith(
      "tints:",
      `  - { white: zinc-white, massRatio: ${massRatio}, ratioKind: paint, reading: lamp-black, column: tint, scale: factor, geometry: "45/0" }`,
    );
  checkTold([
    {
      what: "parts of only some pigments",
      files: {
        "pigments/bone-black.yaml": "name: Bone black\n",
        [COLOUR]: pigments("pigment: lamp-black, parts: 1", "pigment: bone-black"),
      },
      told: `${COLOUR_LINE}:4:3 error 1 of 2 pigments have parts: give parts for all of them or for none records/parts`,
    },
    {
      what: "parts of dry pigment beside parts of paint",
      files: {
        "pigments/bone-black.yaml": "name: Bone black\n",
        [COLOUR]: pigments("pigment: lamp-black, parts: 1", "pigment: bone-black, paintParts: 1"),
      },
      told: `${COLOUR_LINE}:4:3 error Parts of dry pigment and parts of paint stand side by side: give one of the two for all pigments records/parts`,
    },
    {
      what: "a paint without parts of it",
      files: {
        "pigments/bone-black.yaml": "name: Bone black\n",
        "colours/bone-black.md":
          "---\nname: Bone Black\npigments: [{ pigment: bone-black }]\n---\n",
        [COLOUR]: pigments("pigment: lamp-black", "pigment: bone-black, paint: bone-black"),
      },
      told: `${COLOUR_LINE}:5:35 error The paint bone-black is named without its paintParts records/parts`,
    },
    {
      what: "a paint that holds another pigment, and one that could be two colours",
      files: {
        "pigments/bone-black.yaml": "name: Bone black\n",
        "pigments/zinc-white.yaml": "name: Zinc white\n",
        "colours/zinc.md": "---\nname: Zinc\npigments: [{ pigment: zinc-white }]\n---\n",
        "colours/bone.md": "---\nname: Bone\npigments: [{ pigment: bone-black }]\n---\n",
        "colours/old-bone.md": "---\nname: Old bone\npigments: [{ pigment: bone-black }]\n---\n",
        [COLOUR]: pigments(
          "pigment: zinc-white, paintParts: 1, paint: bone",
          "pigment: bone-black, paintParts: 1",
          "pigment: lamp-black, paintParts: 1",
        ),
      },
      told: [
        `${COLOUR_LINE}:4:50 error The paint bone is not a colour made of zinc-white alone; made of it: zinc records/parts`,
        `${COLOUR_LINE}:5:40 error 2 colours are made of bone-black alone: name the one that was weighed as paint records/parts`,
      ],
    },
    {
      what: "a pigment of a mixture by a wrong name, told once and not again of its paint",
      files: {
        "pigments/zinc-white.yaml": "name: Zinc white\n",
        "colours/zinc.md": "---\nname: Zinc\npigments: [{ pigment: zinc-white }]\n---\n",
        [COLOUR]: pigments(
          "pigment: zinc-whit, paintParts: 1, paint: zinc",
          "pigment: lamp-black, paintParts: 1",
        ),
      },
      told: `${COLOUR_LINE}:4:16 error There is no zinc-whit in pigments/; nearest: zinc-white records/missing-reference`,
    },
    {
      what: "parts that weigh nothing",
      files: { [COLOUR]: pigments("pigment: lamp-black, parts: 0") },
      told: `${COLOUR_LINE}:4:35 error pigments[0].parts is 0, and takes more than 0 records/schema`,
    },
    {
      what: "a pigment named twice",
      files: {
        [COLOUR]: pigments("pigment: lamp-black, parts: 1", "pigment: lamp-black, parts: 2"),
      },
      told: `${COLOUR_LINE}:5:16 error The pigment lamp-black is named twice records/duplicate`,
    },
    {
      what: "a let-down with no colour in it",
      files: { [COLOUR]: tint(`"0:20"`), ...WHITE },
      told: `${COLOUR_LINE}:7:37 error The ratio 0:20 has a side that is 0: colour and white are both above 0 records/ratio`,
    },
    {
      what: "a let-down with no white in it",
      files: { [COLOUR]: tint(`"1:0.0"`), ...WHITE },
      told: `${COLOUR_LINE}:7:37 error The ratio 1:0.0 has a side that is 0: colour and white are both above 0 records/ratio`,
    },
    {
      what: "a ratio written as a fraction",
      files: { [COLOUR]: tint("1/20"), ...WHITE },
      told: `${COLOUR_LINE}:7:37 error tints[0].massRatio can't be "1/20": it takes colour to white by mass, such as "1:20"; written so: "1:20" records/schema`,
    },
  ]);
});

describe("readings", () => {
  checkTold([
    {
      what: "one that is not there, with the nearest",
      files: { [COLOUR]: colourBut("reading: lamp-black", "reading: lamp-blak") },
      told: [
        `${COLOUR_LINE}:5:22 error There is no reading lamp-blak in readings/; nearest: lamp-black records/missing-reading`,
        unused(READING_LINE, "lamp-black"),
      ],
    },
    {
      what: "a column that is not there, with the nearest",
      files: { [COLOUR]: colourBut("column: masstone", "column: mastone") },
      told: `${COLOUR_LINE}:5:42 error Column mastone is not in ${READING_LINE}; nearest: masstone records/missing-column`,
    },
    {
      what: "a masstone without its scale",
      files: { [COLOUR]: colourBut(", scale: factor", "") },
      told: `${COLOUR_LINE}:5:11 error The scale of the reading is missing: factor or percent, here or under readings in workshop.yaml records/scale`,
    },
    {
      what: "a masstone without its geometry",
      files: { [COLOUR]: colourBut(`, geometry: "45/0"`, "") },
      told: `${COLOUR_LINE}:5:11 error The geometry of the reading is missing: 45/0, d/8 included or d/8 excluded, here or under readings in workshop.yaml records/geometry`,
    },
    {
      what: "scale and geometry once for all, in workshop.yaml",
      files: {
        "workshop.yaml": "name: Test Workshop\nreadings: { scale: factor, geometry: 45/0 }\n",
        [COLOUR]: colourBut(`, scale: factor, geometry: "45/0"`, ""),
      },
      told: [],
    },
    {
      what: "a CSV with a hole",
      files: { [READING]: readingBut("550,0.02", "550,") },
      told: `${READING_LINE}:17:5 error The reflectance of masstone at 550 nm is missing readings/empty-cell`,
    },
    {
      what: "a CSV that lacks a wavelength",
      files: { [READING]: readingBut("550,0.02\n", "") },
      told: `${READING_LINE}:17:1 error Wavelengths are missing between 540 and 560 nm: the step is 10 nm readings/wavelength-gap`,
    },
    {
      what: "NaN in a CSV",
      files: { [READING]: readingBut("550,0.02", "550,NaN") },
      told: `${READING_LINE}:17:5 error The reflectance of masstone at 550 nm is "NaN", no number readings/not-a-number`,
    },
    {
      what: "percent taken for a factor",
      files: { [READING]: readingBut("550,0.02", "550,2") },
      told: `${READING_LINE}:17:5 error The reflectance of masstone at 550 nm is 2, outside -0.005 to 1.2; effect: fluorescent where its pigment is, scale: percent of percent readings/reflectance-domain`,
    },
  ]);
});

describe("references, both ways", () => {
  checkTold([
    {
      what: "a pigment that is not there, with the nearest",
      files: { [COLOUR]: colourBut("pigment: lamp-black", "pigment: lamp-blck") },
      told: [
        `${COLOUR_LINE}:4:16 error There is no lamp-blck in pigments/; nearest: lamp-black records/missing-reference`,
        unused(PIGMENT_LINE, "lamp-black"),
      ],
    },
    {
      what: "a vehicle that is not there",
      files: { [COLOUR]: colourWith("vehicle: walnut-oil") },
      told: `${COLOUR_LINE}:6:10 error There is no walnut-oil in vehicles/ records/missing-reference`,
    },
    {
      what: "a source that is in no bibliography",
      files: { [PIGMENT]: "name: Lamp black\ndensityGPerCm3: { value: 1.8, source: some-book }\n" },
      told: `${PIGMENT_LINE}:2:39 error There is no some-book in sources/ records/missing-reference`,
    },
    {
      what: "records that nothing uses are warned of, and build",
      files: {
        "pigments/bone-black.yaml": "name: Bone black\n",
        "readings/other.csv": flatReadings({ a: 0.1 }),
        "sources/book.yaml": "citation: A book\n",
        "vehicles/oil.yaml": "name: Oil\nkind: oil\n",
      },
      told: [
        unused("content/pigments/bone-black.yaml", "bone-black"),
        unused("content/readings/other.csv", "other"),
        unused("content/sources/book.yaml", "book"),
        unused("content/vehicles/oil.yaml", "oil"),
      ],
    },
    {
      what: "what a colour with a fault uses is not called unused",
      files: { [COLOUR]: colourWith("dispersion: whipped") },
      told: `${COLOUR_LINE}:6:13 error dispersion can't be "whipped": it takes mulled or milled records/schema`,
    },
    {
      what: "a reference to a record with a fault is no second fault",
      files: { [PIGMENT]: "name: 12\n" },
      told: `${PIGMENT_LINE}:1:7 error name can't be 12: it takes text; in quotes: "12" records/schema`,
    },
    {
      what: "a slug that leads out of its folder",
      files: { [COLOUR]: colourBut("pigment: lamp-black", "pigment: ../workshop") },
      told: `${COLOUR_LINE}:4:16 error pigments[0].pigment can't be "../workshop": it takes lower-case letters, digits and single hyphens records/schema`,
    },
    {
      what: "a reading that leads out of its folder",
      files: { [COLOUR]: colourBut("reading: lamp-black", "reading: ../../secret.csv") },
      told: `${COLOUR_LINE}:5:22 error masstone.reading can't be "../../secret.csv": it takes a file name in readings/ of letters, digits, dots, hyphens and low lines, without blanks or a path records/schema`,
    },
  ]);
});

describe("YAML and front matter", () => {
  const bomb = [
    "a0: &a0 [x]",
    ...Array.from(
      { length: 20 },
      (_, i) => `a${i + 1}: &a${i + 1} [*a${i}, *a${i}, *a${i}, *a${i}]`,
    ),
  ].join("\n");
  checkTold([
    {
      what: "a bracket that is not closed",
      files: { [PIGMENT]: "name: [Lamp black\n" },
      told: `${PIGMENT_LINE}:1:7 error The [ that is opened here is not closed by a ] records/yaml`,
    },
    {
      what: "a tab for a blank",
      files: { [PIGMENT]: "particle:\n\tshape: round\n" },
      told: `${PIGMENT_LINE}:2:1 error A line is indented by blanks, and this one by a tab records/yaml`,
    },
    {
      what: "a key twice",
      files: { [PIGMENT]: "name: Lamp black\nname: Bone black\n" },
      told: `${PIGMENT_LINE}:2:1 error The key name stands twice here, and may stand once records/yaml`,
    },
    {
      what: "two documents in one file",
      files: { [PIGMENT]: "name: Lamp black\n---\nname: Bone black\n" },
      told: `${PIGMENT_LINE}:2:1 error A second document begins here: a record is one records/yaml`,
    },
    {
      what: "a tag that makes code of text",
      files: { [PIGMENT]: "name: !!js/function 'x'\n" },
      told: `${PIGMENT_LINE}:1:7 error A value that begins with an exclamation mark stands in quotes, and this one does not records/yaml`,
    },
    {
      what: "aliases that would fill the memory: four to the twentieth",
      files: { [PIGMENT]: `${bomb}\n` },
      told: `${PIGMENT_LINE}:1:1 error The record uses more than 50 YAML aliases records/yaml`,
    },
    {
      what: "one alias",
      files: { [PIGMENT]: "name: &name Lamp black\norigin: *name\n" },
      told: [],
    },
    {
      what: "bytes that are no UTF-8",
      files: { [PIGMENT]: "name: Lamp black\norigin: K\uFFFDln\n" },
      told: `${PIGMENT_LINE}:2:10 error The file is not saved as UTF-8 text, or holds a control character here records/encoding`,
    },
    {
      what: "a control character",
      files: { [COLOUR]: SMALLEST_WORKSHOP[COLOUR].replace("Notes", "No\u0000tes") },
      told: `${COLOUR_LINE}:7:3 error The file is not saved as UTF-8 text, or holds a control character here records/encoding`,
    },
    {
      what: "a control character written as an escape does not reach the terminal",
      files: { [PIGMENT]: 'name: Lamp black\nparticle: { "sh\\u001b[31m\\nape": round }\n' },
      told: `${PIGMENT_LINE}:2:13 error There is no key sh [31m ape under particle; known: sizeUm, shape, refractiveIndex, absorptionIndex records/unknown-key`,
    },
    {
      what: "front matter missing",
      files: { [COLOUR]: "name: Lamp Black\n" },
      told: `${COLOUR_LINE}:1:1 error The record begins without front matter: its first line is three hyphens, --- records/front-matter`,
    },
    {
      what: "front matter that does not end",
      files: { [COLOUR]: "---\nname: Lamp Black\n" },
      told: `${COLOUR_LINE}:3:1 error The front matter is not closed by a line of three hyphens, --- records/front-matter`,
    },
    {
      what: "an empty colour",
      files: { [COLOUR]: "" },
      told: `${COLOUR_LINE}:1:1 error The record begins without front matter: its first line is three hyphens, --- records/front-matter`,
    },
    {
      what: "Windows line ends and a byte order mark: the same place",
      files: { [COLOUR]: `\uFEFF${colourWith("dispersion: miled").replaceAll("\n", "\r\n")}` },
      told: `${COLOUR_LINE}:6:13 error dispersion can't be "miled": it takes mulled or milled; nearest: milled records/schema`,
    },
  ]);

  test("brackets by the thousand are one complaint, wherever the parser gave up", () => {
    const { lines } = toldOf(
      contentFolder({ ...SMALLEST_WORKSHOP, [PIGMENT]: `name: ${"[".repeat(20_000)}` }),
    );
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(
      /^content\/pigments\/lamp-black\.yaml:1:\d+ error Brackets or dashes stand too deep in each other to be read records\/yaml$/,
    );
  });
});

test("every fault of every file stands in one report, by file, line and column", () => {
  const folder = contentFolder({
    "workshop.yaml": "name: Test Workshop\npaper: A5\n",
    "colours/a.md": "---\npigments:\n  - { pigment: lamp-blck }\nname: A\n---\n",
    "colours/b.md":
      "---\nname: B\ncolour: black\npigments:\n  - { pigment: lamp-black, parts: -1 }\ndispersion: miled\n---\n",
    [PIGMENT]: "name: Lamp black\ndensityGPerCm3: heavy\n",
    "pigments/bone-black.yml": "name: [\n",
    "readings/lamp-black.csv": readingBut("550,0.02\n", ""),
  });
  expect(
    toldOf(folder).lines.map((line) => line.replace(/^content\/(\S+) .* (\S+)$/, "$1 $2")),
  ).toEqual([
    "colours/a.md:3:16 records/missing-reference",
    "colours/b.md:3:1 records/unknown-key",
    "colours/b.md:5:35 records/schema",
    "colours/b.md:6:13 records/schema",
    "pigments/bone-black.yml:1:7 records/yaml",
    "pigments/lamp-black.yaml:2:17 records/schema",
    "readings/lamp-black.csv:17:1 readings/wavelength-gap",
    "workshop.yaml:2:8 records/schema",
  ]);
});

/** Source: CLP, Article 29(1) and (2): a part is left out where no fold-out label bears the whole. */
describe("a label that is folded out", () => {
  const labelled = (line: string): Record<string, string> => ({
    "workshop.yaml": `${SMALLEST_WORKSHOP["workshop.yaml"].trimEnd()}\nlabels:\n  - { name: tube-40, kind: tube, ml: 40, ${line} }\n`,
  });
  checkTold([
    { what: "or reduced is right", files: labelled("foldOut: true, reduced: false"), told: [] },
    {
      what: "and reduced is an error",
      files: labelled("foldOut: true, reduced: true"),
      told: "content/workshop.yaml:3:66 error The label tube-40 is folded out and reduced, and statements may be left out only where no fold-out label bears the whole (CLP, Article 29) records/folded-and-reduced",
    },
  ]);
});
