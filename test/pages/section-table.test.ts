import { expect, test } from "vitest";
import { certain } from "../../lib/quantities/at.ts";
import { pagePlace } from "../../lib/pages/page-context.ts";
import { pageOfSheet, sectionTable } from "../../lib/pages/page-of-sheet.ts";
import { CONTEXT } from "../print/demonstration-cards.ts";

function oilRows(slug: string): readonly string[] {
  const worded = certain(CONTEXT.sheets.find(({ sheet }) => sheet.slug === slug));
  const page = pageOfSheet(worded, CONTEXT, pagePlace(`colours/${slug}/index.html`));
  return sectionTable(page, "Oil", ["oil"]).rows.map(({ name }) => name);
}

const {
  oilIndex: INDEX,
  oilAbsorption: ABSORPTION,
  volumeSolids: SOLIDS,
  oilBeforeFat: BEFORE_FAT,
} = CONTEXT.words.figures;

/** By the records: nothing evaporates from any of these, burnt umber and green earth are fat as they are, of slate grey no oil is recorded. */
test.each([
  ["lamp-black", [SOLIDS]],
  ["yellow-ochre", [SOLIDS]],
  ["green-earth", [SOLIDS, BEFORE_FAT]],
  ["burnt-umber", [SOLIDS, BEFORE_FAT]],
  ["slate-grey", [SOLIDS]],
])("the oil of %s has no row that says nothing", (slug, silent) => {
  const rows = oilRows(slug);
  expect(rows.slice(0, 2)).toEqual([INDEX, ABSORPTION]);
  for (const name of silent) expect(rows).not.toContain(name);
});

test("a row stays where it says something, or why it is missing", () => {
  expect(oilRows("slate-grey")).toContain(BEFORE_FAT);
  expect(oilRows("yellow-ochre")).toContain(BEFORE_FAT);
  expect(oilRows("barytes-medium")).toContain(SOLIDS);
});
