import { expect, test } from "vitest";
import { FIGURE_TABLE, isPrivatePath } from "../../lib/sheet/figure-table.ts";

test("what every object has is no part of a sheet", () => {
  for (const path of ["__proto__.x", "constructor", "oil.__proto__.x", "oil.toString.length", ""])
    expect(isPrivatePath(path), path).toBe(false);
});

test("the figure table's own rows say of their paths what it says of them", () => {
  expect(FIGURE_TABLE.length).toBeGreaterThan(0);
  for (const { pattern, isPrivate } of FIGURE_TABLE)
    expect(isPrivatePath(pattern.replaceAll("*", "any")), pattern).toBe(isPrivate);
});
