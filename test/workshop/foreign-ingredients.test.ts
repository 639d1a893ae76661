import { expect, test } from "vitest";
import type { PageContext } from "../../lib/pages/page-context.ts";
import { certain } from "../../lib/quantities/at.ts";
import { foreignIngredients } from "../../lib/workshop/foreign-ingredients.ts";
import { soundRecords } from "../support/sound-records.ts";

const records = soundRecords({
  "workshop.yaml": "name: A workshop\nvehicle: linseed\n",
  "vehicles/linseed.yaml": "name: Linseed oil\nkind: oil\noil: linseed\n",
  "vehicles/walnut.yaml": "name: Walnut oil\nkind: oil\noil: walnut\n",
  "vehicles/spirit.yaml": "name: Spirit medium\nkind: medium\n",
  "pigments/blue.yaml": "name: Blue\ncolourIndexName: PB 29\n",
  "pigments/barytes.yaml": "name: Barytes\ncolourIndexName: PW 22\n",
  "colours/blue.md": "---\nname: Blue\npigments: [{ pigment: blue }]\n---\n",
  "colours/base.md":
    "---\nname: Base\npigments: [{ pigment: barytes }]\nadditions: [{ vehicle: spirit, percentOfOil: 20 }]\n---\n",
  "colours/thin-blue.md":
    "---\nname: Thin Blue\npigments: [{ pigment: blue }]\nvehicle: walnut\n---\n",
});

/** What a correction by such a colour brings into another. */
const broughtInto = (colour: string, slug: string): string[] =>
  foreignIngredients({ kind: "colour", slug }, certain(records.colours.get(colour)), {
    records,
  } as unknown as PageContext);

test.each([
  ["base", ["PW 22", "Spirit medium"]],
  ["thin-blue", ["Walnut oil"]],
  ["blue", []],
  ["barytes", ["PW 22"]],
] as const)("%s brings into a blue in linseed oil what no label of it says", (slug, brought) => {
  expect(broughtInto("blue", slug)).toEqual(brought);
});

test("a colour that names no oil brings the workshop's into one in walnut oil", () => {
  expect(broughtInto("thin-blue", "blue")).toEqual(["Linseed oil"]);
});
