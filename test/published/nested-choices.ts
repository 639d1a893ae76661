/** What predictions come to when the prior of S and the drift of strength are chosen without the judged paint. */
import type { FitChoices } from "../../lib/optics/fit/fit-problem.ts";
import { leftOutErrors, quantile, type Path, type PredictionError } from "./prediction-errors.ts";

/** Tried for each path: a prior half, as and twice as wide as the one that is used, and shares of a drift that go on. */
export const TRIED_CHOICES: readonly Required<FitChoices>[] = [0.5, 1, 2].flatMap((priorWidth) =>
  [0, 0.25, 0.5, 1].map((carriedShare) => ({ priorWidth, carriedShare })),
);

export interface NestedErrors {
  readonly path: Path;
  /** Choice that all paints together ask for, by the geometric mean of the errors of let-downs that hide. */
  readonly chosen: Required<FitChoices>;
  /** Of let-downs that hide, each paint under the choice of the others, Delta-E00. */
  readonly count: number;
  readonly median: number;
  readonly p90: number;
}

/** Every let-down that hides, predicted under the choice that the other paints ask for. */
export function nestedErrors(path: Path): NestedErrors {
  const tried = TRIED_CHOICES.map((choices) => ({
    choices,
    errors: leftOutErrors(path, choices).filter(({ hides }) => hides),
  }));
  const best = (isJudged: (error: PredictionError) => boolean): (typeof tried)[number] =>
    tried.reduce((one, other) =>
      mean(other.errors.filter(isJudged)) < mean(one.errors.filter(isJudged)) ? other : one,
    );
  const [first] = tried;
  if (first === undefined) throw new Error("Nothing was tried");
  const nested = first.errors.map(({ id }, i) => {
    const paint = id.slice(0, 2);
    return best((other) => other.id.slice(0, 2) !== paint).errors[i]?.deltaE00 ?? NaN;
  });
  return {
    path,
    chosen: best(() => true).choices,
    count: nested.length,
    median: quantile(nested, 0.5),
    p90: quantile(nested, 0.9),
  };
}

/** ln of the geometric mean, Delta-E00: neither the few that are far off nor the many that are near rule it alone. */
function mean(errors: readonly PredictionError[]): number {
  return errors.reduce((sum, { deltaE00 }) => sum + Math.log(deltaE00), 0) / errors.length;
}
