import { expect, test } from "vitest";
import { allSheets } from "../../lib/sheet/all-sheets.ts";
import { flatReadings } from "../support/content-folder.ts";
import { soundRecords } from "../support/sound-records.ts";

const READINGS = { white: 0.9, mulled: 0.04, mulledPale: 0.4, milled: 0.04, milledPale: 0.3 };

function paint(name: "mulled" | "milled", pigments: string): string {
  return `---
name: Black, ${name}
dispersion: ${name}
pigments: ${pigments}
masstone: { reading: all, column: ${name} }
tints:
  - { white: white, massRatio: "1:10", ratioKind: paint, reading: all, column: ${name}Pale }
---
`;
}

/** Whom a mulled black is held against, whose pigments and a milled one's are as they stand in records. */
function heldAgainst(mulled: string, milled: string): string | undefined {
  const records = soundRecords({
    "workshop.yaml": "name: Test\nreadings: { scale: factor, geometry: d/8 excluded }\n",
    "readings/all.csv": flatReadings(READINGS),
    "pigments/earth.yaml": "name: Earth\n",
    "pigments/soot.yaml": "name: Soot\n",
    "pigments/zinc.yaml": "name: Zinc\n",
    "colours/white.md":
      "---\nname: White\npigments: [{ pigment: zinc }]\nmasstone: { reading: all, column: white }\n---\n",
    "colours/mulled.md": paint("mulled", mulled),
    "colours/milled.md": paint("milled", milled),
  });
  return allSheets(records).find(({ slug }) => slug === "mulled")?.optics.dispersion?.other.slug;
}

test("a mulled paint is held against a milled one of the same pigments in the same parts", () => {
  const one = "[{ pigment: soot }]";
  expect(heldAgainst(one, one)).toBe("milled");
  expect(
    heldAgainst(
      "[{ pigment: soot, parts: 1 }, { pigment: earth, parts: 3 }]",
      "[{ pigment: earth, parts: 6 }, { pigment: soot, parts: 2 }]",
    ),
  ).toBe("milled");
  expect(
    heldAgainst(
      "[{ pigment: soot, parts: 1 }, { pigment: earth, parts: 3 }]",
      "[{ pigment: soot, parts: 3 }, { pigment: earth, parts: 1 }]",
    ),
  ).toBeUndefined();
});

test("of several pigments without parts nobody can tell whether they are alike", () => {
  const parts = "[{ pigment: soot }, { pigment: earth }]";
  expect(heldAgainst(parts, parts)).toBeUndefined();
});
