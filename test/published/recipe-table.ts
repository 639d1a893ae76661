/**
 * How near recipes come to measured oil paints and to what was weighed into them, as a table, for the README.
 *
 *     npm run recipe-errors
 */
import { pathToFileURL } from "node:url";
import { quantile } from "./prediction-errors.ts";
import { blackMixtureRecipes, letDownRecipes, type RecipeError } from "./recipe-errors.ts";

/** @param errors by what was looked for. */
export function recipeTable(
  errors: readonly (readonly [string, readonly RecipeError[]])[],
): string {
  const rows = errors.map(([what, own]) => {
    const found = own.filter(({ deltaE00 }) => Number.isFinite(deltaE00));
    const points = found.map(({ shareError }) => 100 * shareError);
    const apart = found.map(({ deltaE00 }) => deltaE00);
    const answers = own.filter(({ isAnswer }) => isAnswer).length;
    return `| ${[
      what,
      own.length,
      found.length,
      quantile(points, 0.5).toFixed(1),
      quantile(points, 0.9).toFixed(1),
      quantile(apart, 0.5).toFixed(2),
      quantile(apart, 0.9).toFixed(2),
      answers,
    ].join(" | ")} |`;
  });
  return [
    "| recipe of | n | found | share off by, median | nine of ten | ΔE00, median | nine of ten | inside 68 % |",
    "|---|---|---|---|---|---|---|---|",
    ...rows,
  ].join("\n");
}

/** Rows of the table. */
export function recipeErrors(): (readonly [string, RecipeError[]])[] {
  const letDowns = letDownRecipes();
  return [
    ["let-downs that hide", letDowns.filter(({ hides }) => hides)],
    ["all let-downs", letDowns],
    ["mixtures with black", blackMixtureRecipes()],
  ];
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href)
  console.log(recipeTable(recipeErrors()));
