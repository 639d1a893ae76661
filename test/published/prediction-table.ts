/**
 * The errors of predictions as a table, for the README, the page Methods and whoever changes a fit.
 *
 *     npm run prediction-errors
 */
import { pathToFileURL } from "node:url";
import type { MeasuredErrors } from "../../lib/optics/fit/measured-errors.ts";
import { chosenWidth, type ChosenWidth } from "./chosen-widths.ts";
import { nestedErrors } from "./nested-choices.ts";
import { otherWhiteErrors } from "./other-white-errors.ts";
import {
  blackMixtureErrors,
  covered,
  leftOutErrors,
  quantile,
  type Path,
  type PredictionError,
} from "./prediction-errors.ts";

export const PATHS: readonly Path[] = ["with films", "without films"];

/** Errors by path: let-downs left out, and mixtures with black. */
export const ERRORS: ReadonlyMap<
  Path,
  { readonly leftOut: readonly PredictionError[]; readonly mixed: readonly PredictionError[] }
> = new Map(
  PATHS.map((path) => [path, { leftOut: leftOutErrors(path), mixed: blackMixtureErrors(path) }]),
);

/** Colours expected in barytes and chalk, where they were never handed a let-down. */
export const OTHER_WHITE: readonly PredictionError[] = otherWhiteErrors();

/** Rows of the table, rounded as printed. */
export function measuredErrors(): MeasuredErrors[] {
  return [...ERRORS].flatMap(([path, { leftOut, mixed }]) => [
    row(
      "let-downs that hide",
      path,
      leftOut.filter(({ hides }) => hides),
    ),
    row("all let-downs", path, leftOut),
    row("mixtures with black", path, mixed),
    ...(path === "with films" ? [row("in a white not tried", path, OTHER_WHITE)] : []),
  ]);
}

/** How each width of the law is chosen: by all paints, and judged by the others of each paint. */
export function chosenWidths(): ChosenWidth[] {
  const [films, none] = [ERRORS.get("with films"), ERRORS.get("without films")];
  if (films === undefined || none === undefined)
    throw new Error("Unreachable: there are two paths");
  return [
    chosenWidth("withoutFilms", none.leftOut),
    chosenWidth("mixture", films.mixed),
    chosenWidth("mixtureWithoutFilms", none.mixed),
    chosenWidth("otherWhite", OTHER_WHITE),
  ];
}

/** The table as the README has it. */
export function errorTable(rows: readonly MeasuredErrors[]): string {
  const cells = rows.map(
    ({ what, films, count, median, mean, p90, inside68, inside90 }) =>
      `| ${what} | ${films ? "yes" : "no"} | ${count} | ${median.toFixed(2)} | ${mean.toFixed(2)} | ${p90.toFixed(2)} | ${inside68} | ${inside90} |`,
  );
  return [
    "| predicted | films | n | median | mean | nine of ten | inside 68 % | inside 90 % |",
    "|---|---|---|---|---|---|---|---|",
    ...cells,
  ].join("\n");
}

function row(
  what: MeasuredErrors["what"],
  path: Path,
  errors: readonly PredictionError[],
): MeasuredErrors {
  const sizes = errors.map(({ deltaE00 }) => deltaE00);
  const mean = sizes.reduce((sum, size) => sum + size, 0) / sizes.length;
  const rounded = (value: number): number => Number(value.toFixed(2));
  return {
    what,
    films: path === "with films",
    count: errors.length,
    median: rounded(quantile(sizes, 0.5)),
    mean: rounded(mean),
    p90: rounded(quantile(sizes, 0.9)),
    inside68: covered(errors, "p68"),
    inside90: covered(errors, "p90"),
  };
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const rows = measuredErrors();
  const widths = chosenWidths().map(
    ({ width, chosen, count, inside68, inside90 }) =>
      `${width}: ${chosen} by all paints; chosen without the judged paint, ${inside68} and ${inside90} of ${count} inside 68 and 90 %`,
  );
  const nested = PATHS.map(nestedErrors).map(
    ({ path, chosen, count, median, p90 }) =>
      `${path}: prior of S ${chosen.priorWidth} times as wide and ${chosen.carriedShare} of the drift carried on by all paints; chosen without the judged paint, ${count} let-downs that hide have median ${median.toFixed(2)} and nine of ten within ${p90.toFixed(2)}`,
  );
  console.log(
    [
      errorTable(rows),
      "",
      ...widths,
      ...nested,
      "",
      ...rows.map((one) => JSON.stringify(one)),
    ].join("\n"),
  );
}
