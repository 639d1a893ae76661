import { expect, test } from "vitest";
import { loadRecords } from "../../lib/records/load-records.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";

/** Slips that show only where two values, or two records, stand beside each other. */
function told(files: Readonly<Record<string, string>>): string[] {
  const { content, home } = contentFolder({ ...SMALLEST_WORKSHOP, ...files });
  const { diagnostics, notes } = loadRecords(content, home, "2026-06-30");
  return [...diagnostics, ...notes]
    .filter(({ rule }) => rule !== "records/unused")
    .map(
      ({ place: { file, line }, severity, message, hint }) =>
        `${file}:${line} ${severity} ${message}${hint === undefined ? "" : `; ${hint}`}`,
    );
}

/** Translations are read where something is printed in their language. */
const IN_GERMAN_TOO = { "workshop.yaml": "name: Test Workshop\npageLanguages: [en, de]\n" };
const pigment = (head: string): string => `${head}\nhazards: []\n`;
const colour = (name: string, more = ""): string =>
  `---\nname: ${name}\npigments: [{ pigment: lamp-black }]\n${more}---\n`;

test("a colour by another's name in a language of the pages", () => {
  const german = (name: string): string => `translations: { de: { name: ${name} } }\n`;
  expect(
    told({
      ...IN_GERMAN_TOO,
      "colours/first.md": colour("First", german("Schwarz")),
      "colours/second.md": colour("Second", german("schwarz")),
    }),
  ).toEqual([
    "content/colours/second.md:4 error schwarz is what first is called in German already; a record that was copied, and this name not changed?",
  ]);
  expect(
    told({
      ...IN_GERMAN_TOO,
      "colours/first.md": colour("First", german("Schwarz")),
      "colours/second.md": colour("Second", german("Tiefschwarz")),
    }),
  ).toEqual([]);
});

test("one CAS number on two pigments that are no kin", () => {
  const blue = (casNumber: string): Readonly<Record<string, string>> => ({
    "pigments/blue.yaml": pigment(`name: Blue\ncolourIndexName: PB 29\ncasNumber: ${casNumber}`),
    "pigments/a-white.yaml": pigment(
      "name: Titanium dioxide\ncolourIndexName: PW 6\ncasNumber: 13463-67-7",
    ),
  });
  expect(told(blue("13463-67-7"))).toEqual([
    "content/pigments/blue.yaml:3 warning The CAS number 13463-67-7 is that of PW 6, and PB 29 has 57455-37-5 or 1302-83-6 or 1317-97-1 or 101357-30-6: labels name substances by that number; name and number of two pigments",
  ]);
  expect(told(blue("57455-37-5"))).toEqual([]);
});

test("one CAS number on kin, as carbon blacks have it", () => {
  const black = (name: string): string =>
    pigment(`name: Black ${name}\ncolourIndexName: ${name}\ncasNumber: 1333-86-4`);
  expect(
    told({ "pigments/soot.yaml": black("PBk 6"), "pigments/furnace.yaml": black("PBk 7") }),
  ).toEqual([]);
});

/** Source: clp-1272-2008, Table 3.1.1: oral, category 4 above 300 up to 2000 mg/kg. */
test.each([
  [300, "Acute Tox. 3", ""],
  [301, undefined, ""],
  [2000, undefined, ""],
  [2001, "Acute Tox. 5", ""],
  [0.5, "Acute Tox. 1", "; 500 mg/kg, if it was given in g/kg"],
] as const)("an estimate of %d mg/kg beside H302", (ate, category, hint) => {
  const file = {
    "pigments/a.yaml": `name: A\nhazards:\n  - { statement: H302, hazardClass: Acute Tox. 4, route: oral, ate: ${ate} }\n`,
  };
  expect(told(file)).toEqual(
    category === undefined
      ? []
      : [
          `content/pigments/a.yaml:3 warning An acute toxicity estimate of ${ate} mg/kg (oral) is that of ${category}, and H302 stands for Acute Tox. 4: the mixture is reckoned by the estimate${hint}`,
        ],
  );
});

test("an estimate beside a statement that may be of two categories", () => {
  const file = (ate: number) => ({
    "pigments/a.yaml": `name: A\nhazards: [{ statement: H300, ate: ${ate} }]\n`,
  });
  expect(told(file(5))).toEqual([]);
  expect(told(file(50))).toEqual([]);
  expect(told(file(51))).toHaveLength(1);
});

test("a larger size for less than a smaller one, and a label for a size that nothing is put up in", () => {
  const labels = "labels: [{ name: tube, kind: tube, ml: 37 }]\n";
  const sold = (prices: readonly [number, number], ml = 37): string[] =>
    told({
      "workshop.yaml": `name: Test Workshop\ncurrency: EUR\n${labels}`,
      "colours/lamp-black.md": colour(
        "Lamp Black",
        `sizes: [{ ml: 20, price: ${prices[0]} }, { ml: ${ml}, price: ${prices[1]} }]\n`,
      ),
    });
  expect(sold([9, 13])).toEqual([]);
  expect(sold([9, 9])).toEqual([]);
  expect(sold([9, 8])).toEqual([
    "content/colours/lamp-black.md:4 warning 37 ml cost 8 here, and 20 ml 9: more paint for less; the two prices exchanged?",
  ]);
  expect(sold([9, 13], 40)).toEqual([
    "content/workshop.yaml:3 note The label tube is for 37 ml, and no colour is put up in that: it is never printed",
  ]);
});

test("a drier whose metals are not told, or are none that days are reckoned by", () => {
  const drier = (more: string): string[] =>
    told({ "vehicles/drier.yaml": `name: Drier\nkind: drier\nhazards: []\n${more}` });
  expect(drier("metals: [{ metal: cobalt, percent: 6 }]\n")).toEqual([]);
  for (const more of ["", "metals: [{ metal: copper, percent: 6 }]\n"])
    expect(drier(more)).toEqual([
      "content/vehicles/drier.yaml:2 warning Drier names no metal that dries: days to dry are worked out as if no drier were in the paint; of a metal that is not among them only a drying trial tells what it does",
    ]);
});

test("a number in a translation that the text itself does not have", () => {
  const noted = (notes: string): string[] =>
    told({
      ...IN_GERMAN_TOO,
      "colours/first.md": `---
name: First
pigments: [{ pigment: lamp-black }]
translations:
  de:
    name: Schwarz
    notes: "${notes}"
---
Mulled in 4 rounds, with 84.5 g of oil.
`,
    });
  expect(noted("In 4 Runden gerieben, mit 84,5 g Öl.")).toEqual([]);
  expect(noted("In vier Runden gerieben.")).toEqual([]);
  expect(noted("In 4 Runden gerieben, mit 48,5 g Öl.")).toEqual([
    "content/colours/first.md:7 note The translation has the number 48.5, and the text that it is of has not; one of the two was typed wrong, or changed without the other?",
  ]);
});

test("a number that a shortcode of an answer gives is no number of its text", () => {
  const answer = (body: string): string[] =>
    told({
      ...IN_GERMAN_TOO,
      "answers/oil.md": `---
question: How much oil?
summary: It depends.
translations: { de: { question: Wie viel Öl?, summary: Je nachdem., body: "${body}" } }
---
Up to 90 g, in lamp black.
`,
    }).filter((line) => line.includes("translation"));
  expect(answer("Bis 90 g, siehe {% ladder colour=lamp-black white=white-2 %}.")).toEqual([]);
  expect(answer("Bis 60 g.")).toEqual([
    expect.stringContaining("The translation has the number 60, "),
  ]);
});
