import { axisUncertainty } from "../fit/prediction-uncertainty.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { ColourFit, FitRefusal } from "../fit/colour-fit.ts";
import type { DrawdownSet } from "../fit/drawdown.ts";
import {
  EQUAL_LIGHTNESSES,
  predictedAtLightness,
  type NotAtLightness,
  type TintAtLightness,
} from "./equal-lightness.ts";
import { fittedColour } from "../fit/fitted-colour.ts";
import { ladderModel, ladderSteps, type LadderStep } from "./ladder.ts";
import {
  tintRuling,
  whitesRuling,
  type JudgedTint,
  type TintStatement,
  type WhitesStatement,
} from "./tint-statement.ts";

/** A colour's ladder in one white. */
export interface TintsInWhite {
  readonly white: string;
  readonly steps: readonly LadderStep[];
  /** By L*: the let-down there, or why there is none. */
  readonly atLightness: Readonly<
    Record<(typeof EQUAL_LIGHTNESSES)[number], TintAtLightness | NotAtLightness>
  >;
  readonly sentence: TintStatement;
}

/** All that a colour does in its whites. */
export interface TintsInWhites {
  readonly fit: ColourFit;
  readonly whites: readonly TintsInWhite[];
  /** Whether the white makes a difference, at each L* that two ladders or more reach. */
  readonly comparison: readonly WhitesStatement[];
}

/**
 * What a colour does in every white it was let down in: fit, ladders, equal
 * lightness and the sentences. What a benchmark times, one colour at a time.
 * @returns the ladders, or the fit's refusal.
 */
export function tintsInWhites(set: DrawdownSet): TintsInWhites | FitRefusal {
  const fit = fittedColour(set);
  if (fit.kind === "refused") return fit;
  const whites = fit.whites.map(({ slug }): TintsInWhite => {
    const ladder = ladderModel(fit, slug);
    const steps = ladderSteps(ladder);
    const [at70, at50, at30] = [
      predictedAtLightness(ladder, 70),
      predictedAtLightness(ladder, 50),
      predictedAtLightness(ladder, 30),
    ];
    const judged = [at70, at50, at30].flatMap((tint) =>
      isStatement(tint) ? [] : [judgedAtLightness(tint)],
    );
    return {
      white: slug,
      steps,
      atLightness: { 70: at70, 50: at50, 30: at30 },
      sentence: tintRuling(slug, [...judged, ...steps.flatMap(judgedStep)], fit.masstone.lab),
    };
  });
  const comparison = EQUAL_LIGHTNESSES.flatMap((L) => {
    const reached = whites.flatMap(({ white, atLightness }) => {
      const tint = atLightness[L];
      return isStatement(tint)
        ? []
        : [
            {
              white,
              a: tint.a,
              b: tint.b,
              uncertainty: axisUncertainty(tint.uncertainty.p68, tint),
            },
          ];
    });
    return reached.length < 2 ? [] : [whitesRuling(L, reached)];
  });
  return { fit, whites, comparison };
}

function judgedAtLightness({
  L,
  a,
  b,
  basis,
  massRatio,
  uncertainty,
}: TintAtLightness): JudgedTint {
  return { lab: { L, a, b }, basis, massRatio, uncertainty: uncertainty.p68 };
}

/** A step that a sentence may rest on: never one that the others contradict. */
function judgedStep(step: LadderStep): JudgedTint[] {
  if (step.standing === "predicted")
    return [
      {
        lab: step.lab,
        basis: "predicted",
        massRatio: step.massRatio,
        uncertainty: step.uncertainty.p68,
      },
    ];
  return step.suspect === undefined
    ? [{ lab: step.lab, basis: "measured", massRatio: step.massRatio }]
    : [];
}
