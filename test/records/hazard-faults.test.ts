import { describe, expect, test } from "vitest";
import { contentFolder, SMALLEST_WORKSHOP, type RecordTexts } from "../support/content-folder.ts";
import { checkTold, toldOf, type ToldCheck } from "./told.ts";

const PIGMENT = "content/pigments/lamp-black.yaml";
const COLOUR = "content/colours/lamp-black.md";

/** A pigment whose record goes on like this from line 2, and the lines that it is told in. */
const pigment = (what: string, hazards: string, ...told: readonly string[]): ToldCheck => ({
  what,
  files: { "pigments/lamp-black.yaml": `name: Lamp black\n${hazards}\n` },
  told: told.map((line) => `${PIGMENT}:${line}`),
});

/** The smallest colour with a sixth line. */
const colourWith = (line: string): RecordTexts => ({
  "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
    "\n---\nNotes",
    `\n${line}\n---\nNotes`,
  ),
});

/** A colour whose label, on line 6, is this. */
const label = (what: string, keys: string, ...told: readonly string[]): ToldCheck => ({
  what,
  told: told.map((line) => `${COLOUR}:6:${line}`),
  files: colourWith(`label: { frame: EU CLP, date: 2026-01-01, ${keys} }`),
});

describe("what a supplier is said to state", () => {
  checkTold([
    pigment(
      "a code that there is none of",
      "hazards: [H309]",
      "2:11 error H309 is no hazard statement of the frame, such as H302; nearest: H300 records/hazard",
    ),
    // CLP, Annex I, table 4.1.3: multiplying factors are 1, 10, 100 and on, in intervals of ten.
    pigment(
      "an M-factor that is no power of ten",
      "hazards: [{ statement: H400, hazardClass: Aquatic Acute 1, mFactor: 7 }, { statement: H410, hazardClass: Aquatic Chronic 1, mFactor: 1000 }]",
      "2:69 warning M-factors go by tens, and 7 is none records/hazard",
    ),
    // CLP, Article 10(1), from memory: a limit above the generic one (STOT RE 2 10 %, table 3.9.4; Repr. 2 3 %, table 3.7.2) in exceptional cases alone.
    pigment(
      "a limit of its own given in percent",
      "hazards: [{ statement: H373, hazardClass: STOT RE 2, limits: [{ hazardClass: STOT RE 2, from: 0.5 }] }]",
      "2:95 warning The limit of 50 % for STOT RE 2 lies above 10 %, which holds for every substance: a supplier may set one so high in exceptional cases alone; 0.005, if it was given in percent records/hazard",
    ),
    pigment(
      "limits at and below those of every substance",
      "hazards: [{ statement: H373, hazardClass: STOT RE 2, limits: [{ hazardClass: STOT RE 2, from: 0.1 }] }, { statement: H360Df, hazardClass: Repr. 1A, limits: [{ hazardClass: Repr. 2, from: 0.03, statement: H361f }] }]",
    ),
    pigment(
      "a limit of toxicity to reproduction a digit too high",
      "hazards: [{ statement: H360Df, hazardClass: Repr. 1A, limits: [{ hazardClass: Repr. 2, from: 0.25, statement: H361f }] }]",
      "2:94 warning The limit of 25 % for Repr. 2 lies above 3 %, which holds for every substance: a supplier may set one so high in exceptional cases alone; 0.0025, if it was given in percent records/hazard",
    ),
    pigment(
      "a code whose digits were exchanged",
      "hazards: [H431]",
      "2:11 error H431 is no hazard statement of the frame, such as H302; nearest: H413 records/hazard",
    ),
    pigment(
      "a code whose first digits were exchanged",
      "hazards: [H140]",
      "2:11 error H140 is no hazard statement of the frame, such as H302; nearest: H410 records/hazard",
    ),
    pigment(
      "what only acute toxicity and water have a use for, beside an allergy",
      "hazards: [{ statement: H317, hazardClass: Skin Sens. 1A, ate: 0.5, mFactor: 10 }]",
      "2:63 warning An acute toxicity estimate is of no use beside H317 (Skin Sens. 1A), and nothing is worked out from it records/hazard",
      "2:77 warning An M-factor is of no use beside H317 (Skin Sens. 1A), and nothing is worked out from it records/hazard",
    ),
    pigment(
      "the same where it belongs",
      "hazards: [{ statement: H302, route: oral, ate: 500 }, { statement: H410, mFactor: 10 }, { statement: H332, ate: 1.5 }]",
    ),
    pigment(
      "two codes in one",
      "hazards: [H302+H332]",
      "2:11 error H302+H332 joins 2 statements, and each stands by itself: H302, H332 records/hazard",
    ),
    pigment(
      "a statement of the law that nothing is worked out from",
      "hazards: [H250]",
      "2:11 warning Nothing is worked out here from H250, so what states it counts as not classified records/hazard",
    ),
    pigment(
      "a supplement that says something of the paper alone",
      "hazards: [EUH210]",
      "2:11 warning Nothing is worked out here from EUH210, so what states it counts as not classified records/hazard",
    ),
    pigment(
      "a supplement that there is none of",
      "hazards:\n  - { statement: EUH999 }",
      "3:18 error EUH999 is no hazard statement of the frame, such as H302; nearest: EUH019 records/hazard",
    ),
    pigment(
      "a class that does not go with the code",
      "hazards:\n  - { statement: H373, hazardClass: Carc. 1A }",
      "3:37 error H373 is not a statement of the class Carc. 1A, but of STOT RE 2 records/hazard",
    ),
    pigment(
      "a route that does not go with the code",
      "hazards:\n  - { statement: H302, route: dust }",
      "3:31 error H302 is not about the route dust, but about oral records/hazard",
    ),
    pigment(
      "an estimate of nought",
      "hazards:\n  - { statement: H302, ate: 0 }",
      "3:29 error hazards[0].ate is 0, and takes more than 0 records/schema",
    ),
    pigment(
      "an estimate below nought",
      "hazards:\n  - { statement: H302, ate: -1 }",
      "3:29 error hazards[0].ate is -1, and takes more than 0 records/schema",
    ),
    pigment(
      "an estimate of nought where no class says it",
      "acuteToxicity: [{ route: oral, ate: 0 }]",
      "2:37 error acuteToxicity[0].ate is 0, and takes more than 0 records/schema",
    ),
    pigment(
      "a factor below one",
      "hazards:\n  - { statement: H410, mFactor: 0 }",
      "3:33 error hazards[0].mFactor is 0, and takes 1 or more records/schema",
    ),
    pigment(
      "a limit over the whole",
      "hazards:\n  - statement: H373\n    limits:\n      - { from: 1.5, hazardClass: STOT RE 2 }",
      "5:17 error hazards[0].limits[0].from is 1.5, and takes 1 or less; 0.015 if it was given in percent records/schema",
    ),
    pigment(
      "a limit without a class",
      "hazards:\n  - statement: H373\n    limits:\n      - { from: 0.5 }",
      "5:9 error hazards[0].limits[0].hazardClass is missing: it takes text records/schema",
    ),
    pigment(
      "a limit on a metal of unknown share",
      "hazards:\n  - { statement: H360D, countedAs: lead }",
      "3:36 error A limit is counted as lead, and how much lead there is isn't known: give its percentage under metals, or a CAS number whose formula tells it records/hazard",
    ),
    pigment(
      "a limit on a metal whose share is recorded",
      "hazards:\n  - { statement: H360D, countedAs: lead }\nmetals: [{ metal: lead, percent: 80 }]",
    ),
    pigment(
      "a limit on a metal whose share the formula tells",
      "casNumber: 1319-46-6\nhazards:\n  - { statement: H360D, countedAs: lead }",
    ),
    pigment(
      "a metal that nobody counts",
      "hazards:\n  - { statement: H360D, countedAs: iron }",
      '3:36 error hazards[0].countedAs can\'t be "iron": it takes lead, cadmium, mercury, arsenic, chromate, nickel, cobalt, antimony, barium, manganese or copper records/schema',
    ),
  ]);
});

describe("a pigment with arsenic", () => {
  checkTold([
    pigment(
      "an empty list of hazards, by its Colour Index name",
      "colourIndexName: PY 39\nhazards: []",
      "3:10 error Lamp black holds arsenic, and its list of hazards is empty: arsenic compounds are toxic and carcinogenic; without a paper leave the key out, and the colour is treated as hazardous and not offered records/arsenic-without-hazard",
    ),
    pigment(
      "what its supplier states",
      "colourIndexName: PY 39\nhazards: [H301, H331, H350, H410]",
    ),
  ]);
});

// CLP, Annex I, Table 3.9.4: STOT RE 1 in a mixture from 10 %, STOT RE 2 from 1 %.
describe("a powder with respirable quartz", () => {
  const quartz = (percent: string, hazards: string, ...told: string[]): ToldCheck =>
    pigment(
      `${percent} % and ${hazards}`,
      `hazards: ${hazards}\nrespirableQuartzPercent: ${percent}`,
      ...told,
    );
  const wanting = (percent: string, code: string, from: string): string =>
    `3:26 warning Lamp black holds ${percent} % of respirable quartz, and its hazards do not name ${code}: from ${from} % on a powder is commonly classified so; ask its supplier for section 2 of a newer safety data sheet records/quartz-without-hazard`;
  checkTold([
    quartz("0.99", "[]"),
    quartz("1", "[]", wanting("1", "H373", "1")),
    quartz("9.9", "[H373]"),
    quartz("10", "[H373]", wanting("10", "H372", "10")),
    quartz("10", "[H372]"),
    quartz("4", "[H372]"),
    pigment("of which nothing is stated", "respirableQuartzPercent: 40"),
  ]);
});

describe("what something is made of", () => {
  checkTold([
    pigment(
      "a component over the whole",
      "components:\n  - { name: a, massFraction: 1.2, hazards: [] }",
      "3:30 error components[0].massFraction is 1.2, and takes 1 or less; 0.012 if it was given in percent records/schema",
    ),
    pigment(
      "components that add up to more than the whole, and a code of one of them",
      "components:\n  - { name: a, massFraction: 0.7, hazards: [] }\n  - { name: b, massFraction: 0.4, hazards: [H309] }",
      "3:3 error The components add up to 1.1, more than 1 records/hazard",
      "4:45 error H309 is no hazard statement of the frame, such as H302; nearest: H300 records/hazard",
    ),
    pigment(
      "components that are just the whole, in decimals that are not",
      "components:\n  - { name: a, massFraction: 0.1, hazards: [] }\n  - { name: b, massFraction: 0.7, hazards: [] }\n  - { name: c, massFraction: 0.2, hazards: [] }",
    ),
    // Half of the third digit for each of three: 1.0015 at the most.
    pigment(
      "components that are the whole as they are rounded, which is noted",
      "components:\n  - { name: a, massFraction: 0.334, hazards: [] }\n  - { name: b, massFraction: 0.333, hazards: [] }\n  - { name: c, massFraction: 0.334, hazards: [] }",
      "3:3 note The components add up to 1.001, which is 1 as far as they are rounded; limits are held against each as it stands records/rounded-shares",
    ),
    pigment(
      "components that are more than that",
      "components:\n  - { name: a, massFraction: 0.334, hazards: [] }\n  - { name: b, massFraction: 0.334, hazards: [] }\n  - { name: c, massFraction: 0.334, hazards: [] }",
      "3:3 error The components add up to 1.002, more than 1 records/hazard",
    ),
    pigment(
      "ranges that can be the whole",
      "components:\n  - { name: a, massFraction: { value: [0.5, 0.7] }, hazards: [] }\n  - { name: b, massFraction: { value: [0.3, 0.6] }, hazards: [] }",
    ),
    pigment(
      "ranges that are more than the whole at the least",
      "components:\n  - { name: a, massFraction: { value: [0.5, 0.7] }, hazards: [] }\n  - { name: b, massFraction: { value: [0.51, 0.6] }, hazards: [] }",
      "3:3 error The components add up to 1.01, more than 1 records/hazard",
    ),
    pigment(
      "metals of more than the whole",
      "metals: [{ metal: lead, percent: 80 }, { metal: zinc, percent: 30 }]",
      "2:9 error The metals add up to 110, more than 100 records/hazard",
    ),
    pigment(
      "none of a metal",
      "metals: [{ metal: lead, percent: 0 }]",
      "2:34 error metals[0].percent is 0, and takes more than 0 records/schema",
    ),
    pigment(
      "manganese dioxide in per cent",
      "manganeseDioxideFraction: 12",
      "2:27 error manganeseDioxideFraction is 12, and takes 1 or less records/schema",
    ),
  ]);
});

describe("what the maker's label states", () => {
  const SOUND = "signalWord: Warning, pictograms: [GHS07], hazardStatements: [H302]";
  checkTold([
    label("a sound one", SOUND),
    label(
      "a pictogram that there is none of",
      "signalWord: Warning, pictograms: [GHS12], hazardStatements: [H302]",
      '77 error label.pictograms[0] can\'t be "GHS12": it takes a pictogram from `GHS01` to `GHS09` records/schema',
    ),
    label(
      "a precaution that there is none of",
      `${SOUND}, precautionaryStatements: [P999]`,
      "137 error There is no statement code P999 records/hazard",
    ),
    label(
      "a precaution of two parts, one of them misspelt",
      `${SOUND}, precautionaryStatements: [P301+P321, P301+P392]`,
      "148 error There is no statement code P301+P392; nearest: P301+P312 records/hazard",
    ),
    label(
      "a supplement that there is none of",
      `${SOUND}, supplemental: [EUH201B]`,
      "126 error There is no statement code EUH201B; nearest: EUH201 records/hazard",
    ),
    label(
      "a precaution that is never chosen here, and is the law's",
      `${SOUND}, precautionaryStatements: [P321, P231+P232]`,
    ),
    label(
      "a class that there is none of",
      `${SOUND}, classification: [Acute Tox. 9]`,
      "128 error There is no hazard class Acute Tox. 9; nearest: Acute Tox. 1 records/hazard",
    ),
    label(
      "a combined statement, one half of it unknown",
      "signalWord: Warning, pictograms: [GHS07], hazardStatements: [H302+H339]",
      "104 error There is no statement code H339; nearest: H330 records/hazard",
    ),
    label(
      "a combined statement",
      "signalWord: Warning, pictograms: [GHS07], hazardStatements: [H302+H332]",
    ),
    label(
      "a sensitiser's line that names none",
      `${SOUND}, supplemental: [EUH208]`,
      "126 error EUH208 stands without the substances it names: give their names under sensitisers records/hazard",
    ),
    label(
      "a sensitiser's line that names one",
      `${SOUND}, supplemental: [EUH208], sensitisers: [cobalt soap]`,
    ),
    label(
      "an identifier with letters that are not used",
      `${SOUND}, ufi: ABCD-EFGH-IJKL-MNOP`,
      "116 error ABCD-EFGH-IJKL-MNOP is no unique formula identifier: that is four groups of four digits and capitals, without B, I, L, O and Z records/hazard",
    ),
  ]);
});

test("every fault of a record is told in one run", () => {
  const { lines, sound } = toldOf(
    contentFolder({
      ...SMALLEST_WORKSHOP,
      "pigments/lamp-black.yaml": "name: Lamp black\nhazards: [H309, H302, EUH999, H410x]\n",
    }),
  );
  expect([lines.length, sound]).toEqual([3, false]);
});
