import { describe } from "vitest";
import { SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { checkTold, type ToldCheck } from "./told.ts";

/** What is written in another form than its key takes, and how it is meant. */
const pigment = (line: string, told: string): ToldCheck => ({
  what: line,
  files: { "pigments/lamp-black.yaml": `name: Lamp black\n${line}\n` },
  told: `content/pigments/lamp-black.yaml:2:${told}`,
});
const workshop = (line: string, told: string): ToldCheck => ({
  what: line,
  files: { "workshop.yaml": `name: Test Workshop\n${line}\n` },
  told: `content/workshop.yaml:2:${told}`,
});
const colour = (found: string, written: string, told: string): ToldCheck => ({
  what: written,
  files: {
    "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(found, written),
  },
  told: `content/colours/lamp-black.md:${told}`,
});

describe("what is written in another form", () => {
  checkTold([
    pigment(
      'densityGPerCm3: "4.1"',
      '17 error densityGPerCm3 can\'t be "4.1": it takes a number; without quotes: 4.1 records/schema',
    ),
    // The CAS number of iron(III) oxide; its last digit is the check of the others.
    pigment(
      "casNumber: 1309.37.1",
      '12 error casNumber can\'t be "1309.37.1": it takes a CAS number, such as 1309-37-1; written so: 1309-37-1 records/schema',
    ),
    pigment(
      "casNumber: 1309-37-7",
      '12 error casNumber can\'t be "1309-37-7": it takes a CAS number whose last digit is the check of the others records/schema',
    ),
    pigment(
      "colourIndexNumber: \u201c77267\u201d",
      '20 error colourIndexNumber can\'t be "\u201c77267\u201d": it takes a Colour Index constitution number, five or six digits; in straight quotes: "77267" records/schema',
    ),
    pigment(
      "colourIndexName: PBk\u00a09",
      '18 error colourIndexName can\'t be "PBk\u00a09": it takes a Colour Index generic name, such as "PBk 6"; a blank in it is a no-break space: a plain one in its place records/schema',
    ),
    pigment(
      "colourIndexName:\u00a0PBk 9",
      "1 error Behind the colon of colourIndexName stands a no-break space: a plain blank parts a key from its value records/yaml",
    ),
    workshop(
      "security: { contact: me@saltreach.example, expires: 2027-01-01 }",
      '22 error security.contact can\'t be "me@saltreach.example": it takes an address that begins with mailto:, https: or tel:; mailto:me@saltreach.example records/schema',
    ),
    workshop(
      "pairs: [lamp-black]",
      '9 error pairs[0] can\'t be "lamp-black": it takes keys and values; each pair stands in brackets of its own: [[lamp-black, another-colour]] records/schema',
    ),
    colour(
      "masstone: {",
      "masstone: { lab: [20, 0, 0],",
      "5:13 error The key lab does not go with the others under masstone, which are those of another form; without lab, or with lab in their place records/unknown-key",
    ),
    ...(
      [
        ["02.04.2026", "; 2026-04-02"],
        ["2-4-2026", "; 2026-04-02"],
        ["2026/4/2", "; 2026-04-02"],
        ["13/04/2026", "; 2026-04-13"],
        ["04/13/2026", "; 2026-04-13"],
        ["02/04/2026", "; 2026-04-02 if the day stands first, 2026-02-04 if the month does"],
        ["2026-13-04", "; day and month exchanged? 2026-04-13"],
        ["2026-06-31", "; the calendar has no such day"],
        ["spring 2026", ""],
      ] as const
    ).map(([date, meant]) =>
      pigment(
        `date: ${date}`,
        `7 error date can't be "${date}": it takes a date, YYYY-MM-DD${meant} records/schema`,
      ),
    ),
    colour(
      /masstone: .*/.exec(SMALLEST_WORKSHOP["colours/lamp-black.md"])?.[0] ?? "",
      "masstone: { munsell: 5P 2,5/8 }",
      "5:27 error There is no key 5/8 under masstone; a comma in the value before it? between braces a value that holds one stands in quotes, and a number has a decimal point records/unknown-key",
    ),
    {
      what: "L* as a fraction",
      files: {
        "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
          /masstone: .*/,
          'masstone: { lab: [0.273, 1.2, -2.1], illuminant: D65, observer: 10, geometry: "45/0" }',
        ),
      },
      told: [
        "content/colours/lamp-black.md:5:18 warning L* 0.273 is darker than any paint reads; L* 27.3, if it was given as a fraction records/darkest-lightness",
        "content/readings/lamp-black.csv:1:1 warning No record refers to lamp-black, so nothing comes of it records/unused",
      ],
    },
    {
      what: "a claim that only names its figure",
      files: {
        "answers/so.md":
          "---\nquestion: Is it so?\nsummary: It is so.\nclaims:\n  - { figure: lamp-black.drying.touchDryDays }\n---\nIt is so.\n",
      },
      told: "content/answers/so.md:5:5 error claims[0] says nothing yet: it takes one more key, below, above, between, is, lowestOf or highestOf records/schema",
    },
    pigment(
      "hazards: H400, H410",
      `10 error hazards can't be "H400, H410": it takes a list; a list stands in brackets: [H400, H410] records/schema`,
    ),
    pigment(
      "hazards: [{ statement: H317, limits: [{ hazardClass: Skin Sens. 1A, from: 25 }] }]",
      "75 error hazards[0].limits[0].from is 25, and takes 1 or less; 0.25 if it was given in percent records/schema",
    ),
    pigment(
      "colourIndexName: PB 6",
      "18 warning Nothing is known here of a pigment by the Colour Index name PB 6; nearest: PBk 6 records/unknown-colour-index-name",
    ),
    pigment(
      "hazards: [h410]",
      '11 error hazards[0] can\'t be "h410": it takes a statement code, such as `H302`; written so: H410 records/schema',
    ),
    pigment(
      "colourIndexName: pg7",
      '18 error colourIndexName can\'t be "pg7": it takes a Colour Index generic name, such as "PBk 6"; written so: PG 7 records/schema',
    ),
    pigment(
      "colourIndexName: PBK 9",
      '18 error colourIndexName can\'t be "PBK 9": it takes a Colour Index generic name, such as "PBk 6"; written so: PBk 9 records/schema',
    ),
    pigment(
      "hazards: none",
      '10 error hazards can\'t be "none": it takes a list; an empty list, [], says that the supplier states none; without the key nothing is known records/schema',
    ),
    pigment(
      "hazards:",
      "9 error hazards is missing: it takes a list; an empty list, [], says that the supplier states none; without the key nothing is known records/schema",
    ),
    pigment(
      "densityGPerCm3: 4.1 g/cm3",
      '17 error densityGPerCm3 can\'t be "4.1 g/cm3": it takes a number; without its unit: 4.1 records/schema',
    ),
    pigment(
      "densityGPerCm3: 4-5",
      '17 error densityGPerCm3 can\'t be "4-5": it takes a number; a range is { value: [4, 5] } records/schema',
    ),
    pigment(
      "date: 14.02.2026",
      '7 error date can\'t be "14.02.2026": it takes a date, YYYY-MM-DD; 2026-02-14 records/schema',
    ),
    pigment(
      "date: 2026-02-30",
      '7 error date can\'t be "2026-02-30": it takes a date, YYYY-MM-DD; the calendar has no such day records/schema',
    ),
    pigment(
      "particle: { shape round }",
      "13 error There is no key shape round under particle; a colon is missing after shape records/unknown-key",
    ),
    pigment(
      "particle: { shape:round }",
      "13 error There is no key shape:round under particle; a blank is missing after shape records/unknown-key",
    ),
    workshop(
      "markets: [UK]",
      '11 error markets[0] can\'t be "UK": it takes EU, GB, NI, US or other; nearest: GB records/schema',
    ),
    workshop(
      "markets: [SE]",
      '11 error markets[0] can\'t be "SE": it takes EU, GB, NI, US or other; nearest: EU records/schema',
    ),
    workshop(
      "languages: [English]",
      '13 error languages[0] can\'t be "English": it takes en, fr, de or es; nearest: en records/schema',
    ),
    workshop(
      "currency: £",
      '11 error currency can\'t be "£": it takes a currency code of three capitals; nearest: GBP records/schema',
    ),
    workshop(
      "siteAddress: colours.example/",
      '14 error siteAddress can\'t be "colours.example/": it takes a web address, http or https; https://colours.example/ records/schema',
    ),
    workshop(
      "readings: { geometry: SCE }",
      '23 error readings.geometry can\'t be "SCE": it takes 45/0, d/8 included or d/8 excluded; nearest: d/8 excluded records/schema',
    ),
    colour(
      "pigment: lamp-black",
      "pigment: Lamp black",
      '4:16 error pigments[0].pigment can\'t be "Lamp black": it takes lower-case letters, digits and single hyphens; its file is named so: lamp-black records/schema',
    ),
    colour(
      "{ pigment: lamp-black }",
      "lamp-black",
      '4:5 error pigments[0] can\'t be "lamp-black": it takes keys and values; written so: { pigment: lamp-black } records/schema',
    ),
    colour(
      "pigments:\n  - { pigment: lamp-black }",
      "pigments: lamp-black",
      '3:11 error pigments can\'t be "lamp-black": it takes a list; written so: [{ pigment: lamp-black }] records/schema',
    ),
    colour(
      "masstone:",
      'lightfastness: { category: I, form: tint, source: "Supplier\'s paper" }\nmasstone:',
      "5:51 error lightfastness.source can't be \"Supplier's paper\": it takes lower-case letters, digits and single hyphens; its text is a file in sources/, named so: supplier-s-paper records/schema",
    ),
    colour(
      "pigment: lamp-black",
      "pigment: CHANGE-ME",
      '4:16 error pigments[0].pigment can\'t be "CHANGE-ME": it takes lower-case letters, digits and single hyphens; a starter leaves it open: write the right one in its place records/schema',
    ),
    colour(
      "masstone:",
      'tints: [{ white: lamp-black, massRatio: 5, ratioKind: paint, lab: [50, 0, 0], illuminant: D65, observer: 10, geometry: "45/0" }]\nmasstone:',
      '5:41 error tints[0].massRatio can\'t be 5: it takes text; in quotes: "1:5" records/schema',
    ),
    ...(
      [
        ["1/5", '; written so: "1:5"'],
        ["1:2,5", '; written so: "1:2.5"'],
        ["\u201c1:4\u201d", '; written so: "1:4"'],
        ["10%", ""],
      ] as const
    ).map(([ratio, meant]) =>
      colour(
        "masstone:",
        `tints: [{ white: lamp-black, massRatio: "${ratio}", ratioKind: paint, lab: [50, 0, 0], illuminant: D65, observer: 10, geometry: "45/0" }]\nmasstone:`,
        `5:41 error tints[0].massRatio can't be "${ratio}": it takes colour to white by mass, such as "1:20"${meant} records/schema`,
      ),
    ),
    colour(
      "masstone:",
      "dryingTrials: [{ touchDryDays: 5, filmThicknessUm: 0.075, temperatureC: 19 }]\nmasstone:",
      "5:52 error The film thickness of a drying trial is 0.075 um, and lies between 5 and 1000 um; 75 um if it was given in mm drying/trial-reach",
    ),
    colour(
      "masstone:",
      "dryingTrials: [{ touchDryDays: 5, filmThicknessUm: 75, temperatureC: 66 }]\nmasstone:",
      "5:70 error dryingTrials[0].temperatureC is 66, and takes 60 or less; 19 C if it was given in degrees Fahrenheit records/schema",
    ),
  ]);
});

describe("a price written otherwise", () => {
  const priced = (price: string, told: string): ToldCheck => ({
    what: price,
    files: {
      "workshop.yaml": "name: Test Workshop\ncurrency: GBP\n",
      "prices.csv": `colour;ml;price\nlamp-black;40;${price}\n`,
    },
    told: `content/prices.csv:2:15 error The price can't be "${price}": it is a number of 0 or more, in the workshop's currency${told} records/price`,
  });
  checkTold([
    priced("£9.40", "; written so: 9.40"),
    priced("24,75 EUR", "; written so: 24.75"),
    priced("1.200,50", "; written so: 1200.50"),
    priced("-24,75", ""),
    priced("dear", ""),
    {
      what: "a row parted by commas among rows parted by semicolons",
      files: {
        "workshop.yaml": "name: Test Workshop\ncurrency: GBP\n",
        "prices.csv": "colour;ml;price\nlamp-black,40,9\n",
      },
      told: "content/prices.csv:2:1 error The size is missing: it is contents in millilitres, such as 40; this row's cells are parted by another sign than those of the first row records/price",
    },
  ]);
});
