import { describe, expect, test } from "vitest";
import { isSolvent } from "../../lib/hazard/studio/solvent.ts";
import { statementText } from "../../lib/present/statement-text.ts";
import { isKnown, type Figure } from "../../lib/quantities/figure.ts";
import { midpoint, type Quantity } from "../../lib/quantities/interval.ts";
import { paintAsMade } from "../../lib/sheet/paint-as-made.ts";
import type { OilSection } from "../../lib/sheet/oil/oil-figures.ts";
import { certain } from "../../lib/quantities/at.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { soundRecords } from "../support/sound-records.ts";

/** 100 g of a black of 2 g/cm3 with 50 g of an oil of .9 and a tenth of it a medium of .9, with the components said. */
function oilOf(medium: string): OilSection {
  const records = soundRecords(
    {
      ...SMALLEST_WORKSHOP,
      "pigments/lamp-black.yaml":
        "name: Lamp black\ndensityGPerCm3: { value: 2, method: pycnometer, date: 2026-01-01 }\n",
      "vehicles/oil.yaml":
        "name: Linseed oil\nkind: oil\noil: linseed\ndensityGPerCm3: { value: 0.9, method: weighed, date: 2026-01-01 }\n",
      "vehicles/alkyd.yaml": `name: Alkyd medium
kind: medium
densityGPerCm3: { value: 0.9, method: weighed, date: 2026-01-01 }
${medium}`,
      "colours/lamp-black.md": `---
name: Lamp Black
pigments: [{ pigment: lamp-black }]
vehicle: oil
oilIndexGPer100g: { value: 50, method: batch book, date: 2026-02-10 }
additions: [{ vehicle: alkyd, percentOfOil: 10 }]
---
`,
    },
    "2026-06-30",
  );
  return paintAsMade(certain(records.colours.get("lamp-black")), records).oil;
}
const value = (figure: Figure<Quantity>): number => {
  if (!isKnown(figure)) throw new Error(figure.reason);
  return midpoint(figure.value);
};
const told = ({ reasons }: OilSection): string[] =>
  reasons
    .filter(({ rule }) => rule === "medium-holds-solvent")
    .map((one) => statementText(one, ENGLISH));

const SOLVENT = `components:
  - { name: alkyd resin, massFraction: 0.6, hazards: [] }
  - { name: white spirit, massFraction: 0.4, hazards: [H226, H304, H336] }
`;

/* By hand: 50 ml of pigment, 50/.9 = 55.556 ml of oil, 5/.9 = 5.556 ml of medium, of which .4, 2.222 ml, leave. */
describe("a medium of resin and white spirit, four to six", () => {
  const oil = oilOf(SOLVENT);
  test("leaves six tenths of itself in the film", () => {
    expect(value(oil.pvc)).toBeCloseTo(50 / (50 + 55.5556 + 3.3333), 5);
    expect(value(oil.volumeSolids)).toBeCloseTo(1 - 2.2222 / 111.1111, 5);
    expect(value(oil.oilBeforeFat)).toBeCloseTo((2.125 * 50 - 58.8889) / 111.1111, 5);
  });
  test("is in the tube all the same, and nothing is unknown of it", () => {
    expect(value(oil.paintDensityGPerCm3)).toBeCloseTo(155 / 111.1111, 5);
    expect(told(oil)).toEqual([]);
  });
});

test("a medium that holds a solvent, nobody knows how much, counts as film and is told of", () => {
  const oil = oilOf("hazards: [H226, H304]\n");
  expect(value(oil.pvc)).toBeCloseTo(50 / 111.1111, 5);
  expect(told(oil)).toEqual([
    "We do not know how much of Alkyd medium dries away: it holds a solvent, and all is reckoned as film.",
  ]);
});

test("of a wax nothing leaves, and nothing is said", () => {
  const oil = oilOf("hazards: []\n");
  expect(value(oil.volumeSolids)).toBe(1);
  expect(told(oil)).toEqual([]);
});

// CLP, Annex I, 2.6: flammable liquids are H224 to H226; 3.10: aspiration is H304. H317 sensitises, H228 is a solid.
test.each([
  [["H226"], true],
  [["EUH066", "H304"], true],
  [["H224"], true],
  [["H317", "H228"], false],
  [[], false],
])("%j: a solvent %s", (codes, expected) => expect(isSolvent(codes)).toBe(expected));
