import { describe } from "vitest";
import { flatReadings, SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { checkTold } from "./told.ts";

/** What is wrong with a whole file is told once, however many columns it has and records name them. */
const COLUMNS = { masstone: 0.02, one: 0.3, other: 0.5 };
const NAMED = SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
  "masstone: {",
  `tints:
  - { white: lamp-black, massRatio: "1:5", ratioKind: paint, reading: lamp-black, column: one, scale: factor, geometry: "45/0" }
  - { white: lamp-black, massRatio: "1:50", ratioKind: paint, reading: lamp-black, column: other, scale: factor, geometry: "45/0" }
masstone: {`,
);
const PIGMENT = { "pigments/white.yaml": "name: White\n" };
const colour = NAMED.replaceAll("white: lamp-black", "white: white");
const rows = (edit: (line: string, nm: number) => string | undefined): string => {
  const [head = "", ...lines] = flatReadings(COLUMNS).trim().split("\n");
  return `${[head, ...lines.flatMap((line, i) => edit(line, 400 + 10 * i) ?? [])].join("\n")}\n`;
};
const file = (reading: string) => ({
  ...PIGMENT,
  "colours/lamp-black.md": colour,
  "readings/lamp-black.csv": reading,
});
const READING = "content/readings/lamp-black.csv";

describe("one slip, one line", () => {
  checkTold([
    { what: "a sound file", files: file(rows((line) => line)), told: [] },
    {
      what: "percent taken for factors, at the record",
      files: file(flatReadings({ masstone: 2, one: 30, other: 50 })),
      told: `content/colours/lamp-black.md:8:11 error The reading is taken in factors, and ${READING} holds percent: its values go up to 50; a reading in percent says scale: percent, here or under readings in workshop.yaml records/scale`,
    },
    {
      what: "a cell of percent among factors, at the cell",
      files: file(rows((line, nm) => (nm === 500 ? line.replace("0.3", "30") : line))),
      told: `${READING}:12:10 error The reflectance of one at 500 nm is 30, outside -0.005 to 1.2; a reading in percent says scale: percent readings/reflectance-domain`,
    },
    {
      what: "wavelengths in micrometres",
      files: file(rows((line, nm) => line.replace(String(nm), (nm / 1000).toFixed(2)))),
      told: `${READING}:2:1 error The wavelengths are in micrometres, from 0.40 to 0.70, and are read in nm; each times 1000 readings/wavelength`,
    },
    {
      what: "the files of two colours exchanged, once for each",
      files: {
        "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
          "reading: lamp-black",
          "reading: soot",
        ),
        "colours/soot.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace("Lamp Black", "Soot"),
        "readings/soot.csv": flatReadings({ masstone: 0.03 }),
      },
      told: [
        "content/colours/lamp-black.md:5:22 warning The masstone of lamp-black is read from the file soot, which bears another colour's name, and there is a file lamp-black; reading: lamp-black? records/file-of-another",
        "content/colours/soot.md:5:22 warning The masstone of soot is read from the file lamp-black, which bears another colour's name, and there is a file soot; reading: soot? records/file-of-another",
      ],
    },
    {
      what: "wavelengths that are none, once for all",
      files: file(rows((line, nm) => line.replace(String(nm), "0.02"))),
      told: `${READING}:2:1 error None of these 31 is a wavelength, from "0.02" to "0.02": that is a number of nm, 100 to 4000; two columns exchanged, or their heads? readings/wavelength`,
    },
    {
      what: "wavelengths that begin too late",
      files: file(rows((line, nm) => (nm < 430 ? undefined : line))),
      told: `${READING}:2:5 error Every column begins at 430 nm, and a reading begins at 420 nm or below readings/wavelength-range`,
    },
    {
      what: "steps that are resampled",
      files: file(rows((line, nm) => (nm % 20 === 0 ? line : undefined))),
      told: `${READING}:1:4 warning Every column steps by 20 nm, and is resampled to 10 nm by natural cubic spline readings/resampled`,
    },
    {
      what: "a name of another folder",
      files: {
        "colours/other.md": "---\nname: Other\npigments: [{ pigment: only-paint }]\n---\n",
        "colours/only-paint.md": "---\nname: Only\npigments: [{ pigment: lamp-black }]\n---\n",
      },
      told: "content/colours/other.md:3:23 error There is no only-paint in pigments/; there is one in colours/ records/missing-reference",
    },
  ]);
});
