import { describe } from "vitest";
import { SMALLEST_WORKSHOP, type RecordTexts } from "../support/content-folder.ts";
import { checkTold } from "./told.ts";

/** Slips in records of what is bought, each told at its place; that each is one is common practice. */
const COLOUR = SMALLEST_WORKSHOP["colours/lamp-black.md"];
const colour = (further: string): RecordTexts => ({
  "colours/lamp-black.md": COLOUR.replace("masstone:", `${further}\nmasstone:`),
});
const drier = (metals: string, further = ""): RecordTexts => ({
  ...colour("additions: [{ vehicle: drier, percentOfOil: 1 }]"),
  "vehicles/drier.yaml": `name: Drier\nkind: drier\nmetals: [${metals}]\n${further}`,
});

describe("driers and oils", () => {
  checkTold([
    {
      what: "a metal without its share",
      files: drier("{ metal: cobalt }"),
      told: "content/vehicles/drier.yaml:3:10 warning How much cobalt is in Drier is not told: days to dry are worked out as if none were records/drier-metal",
    },
    {
      what: "a component's metal as a fraction",
      files: drier(
        "{ metal: cobalt, percent: 6 }",
        "components:\n  - { name: Cobalt salt, casNumber: 136-52-7, massFraction: 1, hazards: [], metals: [{ metal: cobalt, percent: 0.17 }] }\n",
      ),
      told: "content/vehicles/drier.yaml:5:112 warning Cobalt salt is made of cobalt by its CAS number, and 0.17 % of it is next to none; 17 %, if it was given as a fraction records/percent",
    },
    {
      what: "an oil added to itself",
      files: {
        ...colour("vehicle: oil\nadditions: [{ vehicle: oil, percentOfOil: 10 }]"),
        "vehicles/oil.yaml": "name: Linseed oil\nkind: oil\noil: linseed\n",
      },
      told: "content/colours/lamp-black.md:6:24 warning oil is added to itself: it is the vehicle of this colour, and all of it stands in the oil index records/vehicle",
    },
    {
      what: "two oils whose shares nobody knows",
      files: {
        ...colour("vehicle: oil"),
        "vehicles/oil.yaml": "name: Linseed and walnut oil\nkind: oil\n",
      },
      told: [],
    },
  ]);
});

describe("numbers and words of closed lists", () => {
  const workshop = (further: string): RecordTexts => ({
    "workshop.yaml": `name: Test Workshop\n${further}\n`,
  });
  checkTold([
    {
      what: "a market twice",
      files: workshop("markets: [EU, GB, EU]"),
      told: `content/workshop.yaml:2:10 error markets can't be ["EU","GB","EU"]: it takes each market once records/schema`,
    },
    {
      what: "a currency that there is not",
      files: workshop("currency: EUQ"),
      told: `content/workshop.yaml:2:11 error currency can't be "EUQ": it takes a currency code that is in use, such as EUR or GBP records/schema`,
    },
    { what: "one that there is", files: workshop("currency: CHF"), told: [] },
    {
      what: "a CAS number without its hyphens",
      files: { "pigments/lamp-black.yaml": "name: Lamp black\ncasNumber: 1333864\n" },
      told: `content/pigments/lamp-black.yaml:2:12 error casNumber can't be 1333864: it takes text; written so: 1333-86-4 records/schema`,
    },
    {
      what: "a Colour Index name of four digits",
      files: { "pigments/lamp-black.yaml": "name: Lamp black\ncolourIndexName: PBk 1010\n" },
      told: `content/pigments/lamp-black.yaml:2:18 error colourIndexName can't be "PBk 1010": it takes a Colour Index generic name, such as "PBk 6" records/schema`,
    },
    {
      what: "a file by its German name",
      files: workshop("vehicle: lein\u00f6l"),
      told: `content/workshop.yaml:2:10 error vehicle can't be "lein\u00f6l": it takes lower-case letters, digits and single hyphens; its file is named so: leinol or leinoel records/schema`,
    },
    {
      what: "contents in litres",
      files: colour("sizes: [{ ml: 0.1 }]"),
      told: "content/colours/lamp-black.md:5:15 warning A size of 0.1 ml is outside what colours are sold in, 5 to 5000 ml; 100 ml, if it was given in litres records/size-reach",
    },
  ]);
});

describe("lots", () => {
  const lot = (supplierLot: string, tint: string): RecordTexts => ({
    "pigments/lamp-black.yaml":
      "name: Lamp black\noilAbsorptionGPer100g: 100\nsupplierLots: [{ number: EO-17, oilAbsorptionGPer100g: 105 }]\n",
    "pigments/white.yaml": "name: White\n",
    "colours/white.md":
      "---\nname: White\npigments:\n  - { pigment: white }\nmasstone: { munsell: N 9.5/ }\n---\n",
    "readings/lot.csv": SMALLEST_WORKSHOP["readings/lamp-black.csv"].replace(
      /^nm,masstone((?:\n.*)*)/,
      (_, rows: string) => `nm,masstone,tint${rows.replaceAll(/\n(\d+),.*/g, "\n$1,0.021,0.4")}`,
    ),
    "workshop.yaml": 'name: Test Workshop\nreadings: { scale: factor, geometry: "45/0" }\n',
    "lots/lb-1.yaml": `number: LB-1
colour: lamp-black
date: 2026-03-01
pigments:
  - { pigment: lamp-black, massG: 100, supplierLot: ${supplierLot} }
masstone: { reading: lot, column: masstone }
tints:
  - { white: white, massRatio: "1:5", ratioKind: paint, reading: lot, column: ${tint} }
`,
  });
  const unlike =
    "content/lots/lb-1.yaml:8:5 warning The lot LB-1 is let down 1:5 in white (paint) and its standard not at all: its strength can't be judged, and the lot does not pass records/lot-let-down";
  checkTold([
    { what: "sound", files: lot("EO-17", "tint"), told: [unlike] },
    {
      what: "a delivery one slip from one that was rubbed out",
      files: lot("EO-71", "tint"),
      told: [
        "content/lots/lb-1.yaml:5:53 warning The delivery EO-71 is none of those of lamp-black that were rubbed out, EO-17: the batch sheet goes by the pigment's own figure; nearest: EO-17 records/supplier-lot",
        unlike,
      ],
    },
    { what: "a delivery of quite another number", files: lot("2026/188", "tint"), told: [unlike] },
    {
      what: "one column as masstone and as let-down",
      files: lot("EO-17", "masstone"),
      told: [
        unlike,
        "content/lots/lb-1.yaml:8:79 error The column masstone of lot LB-1 is the let-down 1:5 in white and another drawdown of it at once records/lot-column",
      ],
    },
  ]);
});
