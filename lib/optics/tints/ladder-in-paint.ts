import { domainError } from "../../diagnostics/diagnostic.ts";
import { remembered } from "../../quantities/remembered.ts";
import type { LadderModel } from "./ladder.ts";

/**
 * A ladder whose ratios count dry pigment, made to count paint, so that it mixes with one that always did.
 *
 *     r of pigment = r of paint x colour fraction / white fraction
 *
 * @param colourFraction, whiteFraction pigment mass in the mass of each paint [1], 0 < f <= 1.
 * @returns the same ladder by paint; one that counts paint already is returned as it is.
 * @throws RangeError when a fraction is outside its domain, or NaN.
 */
export const ladderInPaint = remembered(
  (ladder: LadderModel, colourFraction: number, whiteFraction: number): LadderModel => {
    for (const fraction of [colourFraction, whiteFraction])
      if (!(fraction > 0 && fraction <= 1))
        throw domainError("mass fraction of pigment", fraction, "0 < fraction <= 1");
    if (ladder.white.ratioKind === "paint") return ladder;
    const scale = colourFraction / whiteFraction;
    const scaled = (values: readonly number[]): number[] => values.map((value) => value * scale);
    const { white, model, used } = ladder;
    const weighed = (steps: typeof used): typeof used =>
      steps.map((step) => ({ ...step, massRatio: step.massRatio / scale }));
    return {
      ...ladder,
      white: {
        ...white,
        ratioKind: "paint",
        K: scaled(white.K),
        S: scaled(white.S),
        ...(white.SAlone !== undefined && { SAlone: scaled(white.SAlone) }),
        SUpper: scaled(white.SUpper),
        steps: weighed(white.steps),
      },
      model: {
        ...model,
        extinction: Array.from(model.extinction, (value) => value * scale),
        strengths: model.strengths.map(({ logRatio, change }) => ({
          logRatio: logRatio - Math.log(scale),
          change,
        })),
      },
      used: weighed(used),
    };
  },
);
