import { describe, expect, test } from "vitest";
import { foundAperture } from "../../lib/records/readings/found-aperture.ts";
import { flatReadings, type RecordTexts } from "../support/content-folder.ts";
import { checkTold } from "./told.ts";

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
