import type { Contribution } from "../../drying/contribution.ts";
import type { DryingEstimate, DryingUnknown } from "../../drying/drying-estimate.ts";
import {
  notStated,
  sourceFigure,
  type Figure,
  type FigurePath,
  type Input,
} from "../../quantities/figure.ts";
import type { Interval } from "../../quantities/interval.ts";
import type { ContributionFigure } from "./drying-figures.ts";

/** Days expected of what is in a paint, from linseed's and what each contribution multiplies them by. */
export function expectedDays(
  expected: DryingEstimate | DryingUnknown,
  from: readonly Input[],
  wanting: FigurePath,
): Figure<Interval> {
  if (!expected.known)
    return notStated("how its pigment acts on drying oil is not known here", [wanting], from);
  return sourceFigure("estimated", expected.touchDryDays, {
    unit: "d",
    method: "linseed oil alone x what oil, pigment, drier, film and room each do",
    source: "practice-drying",
    inputs: from,
  });
}

/** Each contribution with its factor as a figure. @param inputsOf the figures that a contribution goes by. */
export function contributionFigures(
  expected: DryingEstimate | DryingUnknown,
  inputsOf: (contribution: Contribution) => readonly Input[],
): ContributionFigure[] {
  if (!expected.known) return [];
  return expected.contributions.map((contribution) => {
    const { statement, sign, factor } = contribution;
    return {
      sentence: statement,
      sign,
      factor: sourceFigure("estimated", factor, {
        unit: "1",
        method: "days over days without it",
        source: statement.source,
        inputs: inputsOf(contribution),
      }),
    };
  });
}
