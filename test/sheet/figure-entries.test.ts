import { expect, test } from "vitest";
import { figureEntries, figureEntry } from "../../lib/sheet/figure-entries.ts";
import { SHEETS } from "./demonstration-sheets.ts";

test("a figure is found at its path as it is listed, on every sheet", () => {
  let count = 0;
  for (const sheet of SHEETS)
    for (const entry of figureEntries(sheet)) {
      const found = figureEntry(sheet, entry.path);
      expect(found?.figure, `${sheet.slug}.${entry.path}`).toBe(entry.figure);
      expect(found?.row).toBe(entry.row);
      count += 1;
    }
  expect(count).toBeGreaterThan(39 * 100);
});

test.each(["", "oil", "oil.", "oil.oilIndexGPer100g.value", "oil.pv", "nowhere.at.all"])(
  "there is no figure at %j",
  (path) => {
    for (const sheet of SHEETS) expect(figureEntry(sheet, path)).toBeUndefined();
  },
);
