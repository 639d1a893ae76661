import { expect, test } from "vitest";
import { loadRecords } from "../../lib/records/load-records.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";

/** A grey of a black in walnut oil with wax and a white in safflower oil, weighed from tubes 1:3. */
function told(grey: string): string[] {
  const { content, home } = contentFolder({
    ...SMALLEST_WORKSHOP,
    "workshop.yaml": "name: Test Workshop\nvehicle: walnut-oil\n",
    "vehicles/walnut-oil.yaml": "name: Walnut oil\nkind: oil\noil: walnut\n",
    "vehicles/safflower-oil.yaml": "name: Safflower oil\nkind: oil\noil: safflower\n",
    "vehicles/wax.yaml": "name: Wax\nkind: medium\n",
    "pigments/zinc-oxide.yaml": "name: Zinc oxide\n",
    "colours/lamp-black.md": `---
name: Lamp Black
pigments: [{ pigment: lamp-black }]
oilIndexGPer100g: 100
additions: [{ vehicle: wax, percentOfOil: 10 }]
---
`,
    "colours/zinc-white.md": `---
name: Zinc White
pigments: [{ pigment: zinc-oxide }]
vehicle: safflower-oil
oilIndexGPer100g: { value: 20, method: batch book, date: 2026-02-10 }
---
`,
    "colours/grey.md": `---
name: Grey
pigments:
  - { pigment: lamp-black, paintParts: 1 }
  - { pigment: zinc-oxide, paintParts: 3 }
${grey}
---
`,
  });
  return loadRecords(content, home, "2026-06-30")
    .diagnostics.filter(({ rule }) => rule === "records/tube-vehicle")
    .map(({ place, severity, message, hint }) => `${place.line} ${severity} ${message}; ${hint}`);
}

/*
 * By hand: of 1 part of black paint 100 / 210 is walnut oil, .476, and a tenth of that wax, .0476; of 3 parts of
 * white 3 x 20 / 120 is safflower oil, .5. On safflower, the most of the two, walnut is 95 % and wax 9.5 %.
 */
const HINT =
  "by the tubes vehicle: safflower-oil with additions: [{ vehicle: walnut-oil, percentOfOil: 95 }, { vehicle: wax, percentOfOil: 9.5 }]";

test("what tubes hold and a mixture's record does not name is warned of at its part, with what they come to", () =>
  expect(told("")).toEqual([
    `4 warning The tube of lamp-black holds wax, which the record of the mixture does not name: what its oil is, its drying and label are worked out without; ${HINT}`,
    `5 warning The tube of zinc-white holds safflower-oil, which the record of the mixture does not name: what its oil is, its drying and label are worked out without; ${HINT}`,
  ]));

test("a record that names all of it says so", () =>
  expect(
    told(
      "vehicle: safflower-oil\nadditions: [{ vehicle: walnut-oil, percentOfOil: 95 }, { vehicle: wax, percentOfOil: 9.5 }]",
    ),
  ).toEqual([]));
