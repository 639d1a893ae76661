import { describe } from "vitest";
import { flatReadings } from "../support/content-folder.ts";
import { checkTold } from "./told.ts";

/** A photograph whose swatch is a drawdown of another record: what is wrong with that is told there, and not here too. */
const READING = '{ reading: lamp-black, column: masstone, scale: factor, geometry: "45/0" }';
const SHOWN = `---
name: Lamp black
pigments: [{ pigment: lamp-black }]
photographs:
  - file: one.jpg
    of: drawdown
    correctedBy:
      swatches:
        - { at: [0, 0, 9, 9], colour: other }
        - { at: [0, 20, 9, 29], colour: other }
masstone: ${READING}
---
`;
const other = (masstone: string, fineness = "20"): string =>
  `---\nname: Other\npigments: [{ pigment: lamp-black }]\nfinenessOfGrindUm: ${fineness}\n${masstone}---\n`;
const files = (text: string) => ({
  "colours/lamp-black.md": SHOWN,
  "colours/other.md": text,
  "photographs/one.jpg": "",
  "readings/lamp-black.csv": flatReadings({ masstone: 0.02, other: 0.04 }),
});

describe("a swatch of a record with a fault", () => {
  checkTold([
    {
      what: "that can't be read",
      files: files(other("", '"25,5"')),
      told: `content/colours/other.md:4:20 error finenessOfGrindUm can't be "25,5": it takes a number; with a decimal point: 25.5 records/schema`,
    },
    {
      what: "whose masstone can't be read",
      files: files(other(`masstone: ${READING.replace("masstone,", "mastone,")}\n`)),
      told: "content/colours/other.md:5:42 error Column mastone is not in content/readings/lamp-black.csv; nearest: masstone records/missing-column",
    },
    {
      what: "that has no masstone",
      files: files(other("")),
      told: ["9:39", "10:41"].map(
        (spot) =>
          `content/colours/lamp-black.md:${spot} error other was not read, and a swatch is a drawdown that was records/photograph-patches`,
      ),
    },
  ]);
});
