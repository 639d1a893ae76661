import { expect, test } from "vitest";
import { isOffered } from "../../lib/sheet/handling/offer-section.ts";
import { SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { soundSheet } from "../support/sound-records.ts";

/** The smallest workshop's only sheet, its pigment and oil being stated so. */
function sheetOf(pigment: string, oil = "[]") {
  return soundSheet({
    ...SMALLEST_WORKSHOP,
    "workshop.yaml": "name: Test Workshop\nvehicle: linseed\n",
    "vehicles/linseed.yaml": `name: Linseed oil\nkind: oil\noil: linseed\nhazards: ${oil}\n`,
    "pigments/lamp-black.yaml": `name: Lamp black\nhazards: ${pigment}\n`,
  });
}

/** H250, of what catches fire by itself, is in the law (Annex III) and in none of the rules by which a paint is classified here. */
test.each([
  ["the pigment", sheetOf("[H250]"), ["Lamp black"]],
  ["the oil", sheetOf("[]", "[H250]"), ["Linseed oil"]],
  ["neither", sheetOf("[]"), []],
])("a code that nothing is worked out from leaves %s not classified", (_of, sheet, names) => {
  expect(sheet.cautions.unknown).toEqual(names);
  expect(isOffered(sheet.cautions)).toBe(names.length === 0);
});
