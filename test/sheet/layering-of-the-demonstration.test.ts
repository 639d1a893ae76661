import { expect, test } from "vitest";
import { SHEETS } from "./demonstration-sheets.ts";

test("no sheet of the demonstration sends its paint to two places", () => {
  const places = SHEETS.map(({ drying }) => drying.layering.length);
  expect(Math.max(...places)).toBe(1);
});
