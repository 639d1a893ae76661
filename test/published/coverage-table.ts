/**
 * How often figures lie within their printed ±, for the README, the page Methods and whoever changes a width.
 *
 *     npm run prediction-errors
 */
import { pathToFileURL } from "node:url";
import { PLACE_TO_PLACE } from "../../lib/colorimetry/lab-uncertainty.ts";
import { NINETY_PERCENT } from "../../lib/quantities/coverage.ts";
import type { MeasuredCoverage } from "../../lib/optics/fit/measured-coverage.ts";
import {
  axisErrors,
  equalLightnessErrors,
  inside,
  strengthErrors,
  type FigureError,
} from "./figure-errors.ts";
import { hiddenFilmErrors, letDownFilmErrors } from "./film-errors.ts";
import { halfErrors } from "./half-errors.ts";
import { ERRORS } from "./prediction-table.ts";

/** Rows of the table. */
export function measuredCoverage(): MeasuredCoverage[] {
  const axes = axisErrors(ERRORS.get("with films")?.leftOut ?? []);
  return [
    row("L*, a* and b* at another place of a drawdown, each", halfErrors(PLACE_TO_PLACE)),
    row("L*, a* and b* of a let-down, each", axes),
    row("mass ratio at a lightness", equalLightnessErrors("with films").massRatio),
    row("strength beside another colour", strengthErrors("with films")),
    row(
      "contrast ratio of a mixture's film",
      letDownFilmErrors().map(({ contrast }) => contrast),
    ),
    row("contrast ratio of a film that hides", hiddenFilmErrors()),
  ];
}

/** The table as the README has it. */
export function coverageTable(rows: readonly MeasuredCoverage[]): string {
  const cells = rows.map(
    ({ what, count, inside68, inside90 }) =>
      `| ${what.replaceAll("*", "\\*")} | ${count} | ${inside68} | ${inside90} |`,
  );
  return ["| printed ± of | n | inside 68 % | inside 90 % |", "|---|---|---|---|", ...cells].join(
    "\n",
  );
}

function row(what: MeasuredCoverage["what"], errors: readonly FigureError[]): MeasuredCoverage {
  const within = (times: number): number => Math.round(inside(errors, times) * errors.length);
  return {
    what,
    count: errors.length,
    inside68: within(1),
    inside90: within(NINETY_PERCENT),
  };
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href)
  console.log(coverageTable(measuredCoverage()));
