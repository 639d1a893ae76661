import { expect, test } from "vitest";
import { certain } from "../../lib/quantities/at.ts";
import { benchPage } from "../../lib/pages/bench-page.ts";
import { pagePlace } from "../../lib/pages/page-context.ts";
import type { SheetTexts } from "../../lib/present/sheet-texts.ts";
import { grouped } from "../../lib/quantities/grouped.ts";
import { pageOfSheet, sectionTable } from "../../lib/pages/page-of-sheet.ts";
import { LISTED } from "../../lib/sheet/figure-table.ts";
import { CONTEXT } from "../print/demonstration-cards.ts";

function texts(slug: string): SheetTexts {
  return certain(CONTEXT.sheets.find(({ sheet }) => sheet.slug === slug));
}

function oilRows(slug: string): readonly string[] {
  const page = pageOfSheet(texts(slug), CONTEXT, pagePlace(`colours/${slug}/index.html`));
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

test("every section that lists figures has its table on the page of the bench", () => {
  const worded = texts("lamp-black");
  const { sections } = benchPage(
    worded,
    "",
    CONTEXT,
    pagePlace("colours/lamp-black/bench/index.html"),
  );
  const shown = new Set(
    sections
      .flatMap(({ blocks }) => blocks)
      .flatMap((block) => (block.kind === "figures" ? block.table.rows : []))
      .map(({ name }) => name),
  );
  const listed = grouped(
    LISTED.map(
      ({ pattern, word }) => [pattern.split(".")[0], CONTEXT.words.figures[word]] as const,
    ),
  );
  expect(
    [...listed].flatMap(([section, names]) =>
      names.some((name) => shown.has(name)) ? [] : section,
    ),
  ).toEqual([]);
});
