/** Recipes held against real oil paint whose parts were weighed. Source: reconstructed-oil-paints, readings in oil-paints/. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { quantile } from "./prediction-errors.ts";
import { recipeErrors, recipeTable } from "./recipe-table.ts";

const ERRORS = recipeErrors();

test("the README states what the script prints", () => {
  expect(readFileSync("README.md", "utf8")).toContain(recipeTable(ERRORS));
});

test.each(ERRORS)("%s: weighed shares are found again", (_, errors) => {
  expect(errors.length).toBeGreaterThan(8);
  const found = errors.filter(({ deltaE00 }) => Number.isFinite(deltaE00));
  expect(found.length / errors.length).toBeGreaterThan(0.75);
  expect(
    quantile(
      found.map(({ shareError }) => shareError),
      0.5,
    ),
  ).toBeLessThan(0.05);
});
