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

// Two in three at the least: a recipe is free to come nearer than what was weighed into it. Of mixtures with black five of nine.
test.each(ERRORS)(
  "%s: the weighed paints are among the answers as often as is said",
  (_, errors) => {
    const answers = errors.filter(({ isAnswer }) => isAnswer).length;
    expect(answers / errors.length).toBeGreaterThan(errors.length > 9 ? 0.66 : 0.5);
  },
);
