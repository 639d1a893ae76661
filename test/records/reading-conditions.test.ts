import { describe, expect, test } from "vitest";
import { foundAperture } from "../../lib/records/readings/found-aperture.ts";
import { contentFolder, flatReadings, type RecordTexts } from "../support/content-folder.ts";
import { checkTold, toldOf } from "./told.ts";

/** A white, and a black let down in it twice, with what one of the readings says of itself. */
function letDown({
  masstone = "45/0",
  first = "45/0",
  second = "45/0",
  preamble = "",
}: {
  readonly masstone?: string;
  readonly first?: string;
  readonly second?: string;
  readonly preamble?: string;
}): RecordTexts {
  const tint = (ratio: string, geometry: string): string =>
    `  - { white: white, massRatio: "${ratio}", ratioKind: paint, reading: ${ratio === "1:20" ? "other" : "lamp-black"}, column: "${ratio}", geometry: ${geometry} }`;
  return {
    "workshop.yaml": "name: Test Workshop\nreadings: { scale: factor }\n",
    "colours/lamp-black.md": `---
name: Lamp Black
pigments:
  - { pigment: lamp-black }
masstone: { reading: lamp-black, column: masstone, geometry: ${masstone} }
tints:
${tint("1:5", first)}
${tint("1:20", second)}
---
`,
    "pigments/white.yaml": "name: White\n",
    "colours/white.md": `---
name: White
pigments:
  - { pigment: white }
masstone: { reading: lamp-black, column: white, geometry: 45/0 }
---
`,
    "readings/lamp-black.csv": `Aperture: 8 mm\n${flatReadings({ masstone: 0.02, "1:5": 0.2, white: 0.88 })}`,
    "readings/other.csv": `${preamble}${flatReadings({ "1:20": 0.4 })}`,
  };
}

describe("readings of one colour that were not read alike (which of them is the slip: the fewer)", () => {
  checkTold([
    { what: "all alike", files: letDown({ preamble: "Aperture: 8 mm\n" }), told: [] },
    { what: "an opening that only one file tells", files: letDown({}), told: [] },
    {
      what: "one let-down with its gloss",
      files: letDown({ second: "d/8 included" }),
      told: "content/colours/lamp-black.md:8:100 warning The let-down 1:20 in white was read d/8 included, and the other drawdowns of this colour 45/0: gloss counts in one of them and not in the other, or not in the same measure; geometry left out or miswritten at one of them? A reading by another instrument is made again records/reading-conditions",
    },
    {
      what: "the masstone alone otherwise",
      files: letDown({ masstone: "d/8 excluded" }),
      told: "content/colours/lamp-black.md:5:62 warning The masstone was read d/8 excluded, and the other drawdowns of this colour 45/0: gloss counts in one of them and not in the other, or not in the same measure; geometry left out or miswritten at one of them? A reading by another instrument is made again records/reading-conditions",
    },
    {
      what: "one let-down through a smaller opening",
      files: letDown({ preamble: "Messblende;4 mm\n" }),
      told: "content/colours/lamp-black.md:8:5 warning The let-down 1:20 in white was read through 4 mm, and the other drawdowns of this colour 8 mm: a small opening loses light at its edge that a large one keeps; another instrument's file, or another opening? records/reading-conditions",
    },
  ]);
});

describe("foundAperture (words as instruments' programs write them, from memory)", () => {
  test.each([
    ["Aperture: 8 mm", "8 mm"],
    ["Aperture;MAV (8 mm)", "8 mm"],
    ["Messblende 4,5 mm", "4.5 mm"],
    ["Mess\u00f6ffnung: 11mm", "11 mm"],
    ["Ouverture : 8 mm", "8 mm"],
    ["Measurement area\t3 mm", "3 mm"],
    ["Apertura de medida: 8 mm", "8 mm"],
    ["Film: 50 mm", undefined],
    ["Aperture: large", undefined],
    ["Aperture: 8 cm", undefined],
  ])("%s -> %s", (words, aperture) => {
    expect(foundAperture(words)).toBe(aperture);
  });
});

/** A colour whose masstone and let-downs are L*a*b*, with what the last of them is told for. */
const inLab = (last: string): RecordTexts => ({
  ...letDown({}),
  "pigments/lamp-black.yaml": "name: Lamp black\n",
  "colours/lamp-black.md": `---
name: Lamp Black
pigments:
  - { pigment: lamp-black }
masstone: { lab: [12, 0, 0], illuminant: D65, observer: 10, geometry: 45/0 }
tints:
  - { white: white, massRatio: "1:5", ratioKind: paint, lab: [40, 0, -2], illuminant: D65, observer: 10, geometry: 45/0 }
  - { white: white, massRatio: "1:20", ratioKind: paint, lab: [60, 0, -2], ${last}, geometry: 45/0 }
---
`,
  "readings/other.csv": flatReadings({ white: 0.88 }),
  "colours/white.md": `---
name: White
pigments:
  - { pigment: white }
masstone: { reading: other, column: white, geometry: 45/0 }
---
`,
});

// practice: an instrument tells all readings of a sitting for the light and observer that it is set to.
describe("L*a*b* of one colour that are told for several lights", () => {
  // The file that the other cases read lies there unused.
  const lines = (files: RecordTexts): string[] =>
    toldOf(contentFolder(files)).lines.filter((line) => !line.includes("records/unused"));
  test("one let-down under lamplight is told at its light", () => {
    expect(lines(inLab("illuminant: A, observer: 10"))).toEqual([
      "content/colours/lamp-black.md:8:88 warning The let-down 1:20 in white is told for A/10, and the other drawdowns of this colour D65/10: an instrument tells all for the light and the observer that it is set to; illuminant or observer left out, miswritten or copied at one of them? records/reading-conditions",
    ]);
  });
  test("all under one light are told nothing", () => {
    expect(lines(inLab("illuminant: D65, observer: 10"))).toEqual([]);
  });
});
