import { expect, test } from "vitest";
import { figureRow } from "../../lib/sheet/figure-table.ts";
import type { SheetPath } from "../../lib/sheet/sheet-path.ts";

/** The compiler holds this one: where it takes the slip, the line that expects its complaint is one itself. */
test("a path where no sheet has a figure neither compiles nor has a row", () => {
  // @ts-expect-error It is written with a slip.
  const slip: SheetPath = "oil.oilIndexPer100g";
  expect(() => figureRow(slip)).toThrow("nearest: oil.oilIndexGPer100g");
  const right: SheetPath = "oil.oilIndexGPer100g";
  expect(figureRow(right).unit).toBe("g/100 g");
});
