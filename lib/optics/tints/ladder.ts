import { requirePositive } from "../../quantities/positive.ts";
import { remembered } from "../../quantities/remembered.ts";
import { deltaE00 } from "../../colorimetry/difference.ts";
import type { Lab } from "../../colorimetry/viewing.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";
import type { PredictingFit, FittedWhite, MeasuredStep } from "../fit/colour-fit.ts";
import { isUsed, type SuspectStatement } from "../fit/outlier-drawdown.ts";
import {
  predictionUncertainty,
  type Doubts,
  type PredictionUncertainty,
} from "../fit/prediction-uncertainty.ts";
import { letDownNoise } from "../fit/let-down-noise.ts";
import { drawnDoubts } from "../fit/workshop-experience.ts";
import { surfaceForm } from "../surface/surface.ts";
import { tintModel, tintReadings, type TintModel } from "./tint-model.ts";
import { at } from "../../quantities/at.ts";
import { median } from "../../quantities/median.ts";

/** Colour to white by mass of the steps that are predicted where none was measured. */
const LADDER_RATIOS: readonly number[] = [
  10,
  5,
  2,
  1,
  1 / 2,
  1 / 5,
  1 / 10,
  1 / 20,
  1 / 50,
  1 / 100,
  1 / 200,
  1 / 500,
  1 / 1000,
];

/** How many times paler than the palest measured let-down a ladder still predicts: a little beyond. */
export const LADDER_BEYOND = 2;

/** Ratios nearer than this share of a measured one are that measured one. */
const SAME_RATIO = 0.1;

/** A let-down as the fit predicts it. */
export interface PredictedTint {
  readonly standing: "predicted";
  readonly massRatio: number;
  /** In the fit's geometry. */
  readonly spectrum: Spectrum;
  /** D65/10. */
  readonly lab: Lab;
  /** The nearest measured let-down in the same white, and how far it is. */
  readonly nearest: { readonly massRatio: number; readonly deltaE00: number };
  readonly uncertainty: PredictionUncertainty;
  /** Paler than any measured let-down. */
  readonly beyond: boolean;
}

/** A let-down as it was measured; `suspect` when the others contradict it. */
export interface MeasuredTint {
  readonly standing: "measured";
  readonly tint: string;
  readonly massRatio: number;
  readonly spectrum: Spectrum;
  readonly lab: Lab;
  readonly suspect?: SuspectStatement;
}

export type LadderStep = MeasuredTint | PredictedTint;

/** A fit's model in one of its whites, made once and asked for many ratios. */
export interface LadderModel {
  readonly fit: PredictingFit;
  readonly white: FittedWhite;
  readonly model: TintModel;
  /** Measured let-downs that the fit used, palest first. */
  readonly used: readonly MeasuredStep[];
  /** What widens its predictions. */
  readonly doubts: Doubts;
}

/**
 * @param white slug of a white that the fit holds.
 * @throws RangeError when the fit holds no such white.
 */
export const ladderModel = remembered((fit: PredictingFit, white: string): LadderModel => {
  const fitted = fit.whites.find(({ slug }) => slug === white);
  if (fitted === undefined)
    throw new RangeError(
      `The white is ${white}; right would be one of ${fit.whites.map(({ slug }) => slug).join(", ")}`,
    );
  const used = fitted.steps
    .filter(isUsed)
    .toSorted((one, other) => one.massRatio - other.massRatio);
  const plain = {
    form: surfaceForm(fit.geometry, fit.surface.surface),
    masstone: fit.masstone.internal,
    whiteRatio: fitted.whiteRatio,
    extinction: fitted.K.map((K, i) => K + at(fitted.S, i)),
    carriedShare: fit.carriedShare,
  };
  const model = tintModel(plain, [
    { massRatio: 0, measured: fitted.measured },
    ...used,
    { massRatio: Infinity, measured: fit.masstone.measured },
  ]);
  return { fit, white: fitted, model, used, doubts: doubtsOf(fit, fitted, used) };
});

function doubtsOf(fit: PredictingFit, white: FittedWhite, used: readonly MeasuredStep[]): Doubts {
  const misses = fit.drawdowns
    .filter((drawdown) => drawdown.white === white.slug && isUsed(drawdown))
    .map(({ leaveOneOutDeltaE00 }) => leaveOneOutDeltaE00)
    .filter((miss) => typeof miss === "number");
  return {
    ...drawnDoubts(fit, white),
    experience: fit.experience,
    letDownNoise: median(used.map((step) => letDownNoise(step, white, fit))),
    ...(misses.length > 0 && { ownMiss: median(misses) }),
  };
}

/**
 * A let-down at any mass ratio, with an uncertainty that grows with its distance from the nearest measured one.
 * @param massRatio colour to white by mass [1], of the white's ratio kind, > 0.
 * @throws RangeError when the ratio is not positive, NaN or infinite.
 * @source duncan-1940, oil-paint-outs
 */
export function predictedTint(ladder: LadderModel, massRatio: number): PredictedTint {
  const { grid } = ladder.fit;
  requirePositive("mass ratio", massRatio, "", "ratio");
  const values = tintReadings(ladder.model, massRatio);
  const lab = spectrumLab({ grid, values });
  const nearest = ladder.used
    .map((step) => ({ massRatio: step.massRatio, deltaE00: deltaE00(step.lab, lab) }))
    .reduce((one, other) => (other.deltaE00 < one.deltaE00 ? other : one));
  const palest = at(ladder.used, 0).massRatio;
  return {
    standing: "predicted",
    massRatio,
    spectrum: { grid, values },
    lab,
    nearest,
    uncertainty: predictionUncertainty(nearest.deltaE00, ladder.doubts),
    beyond: massRatio < palest,
  };
}

/**
 * The ladder of a colour in a white, strongest first: measured steps as they are,
 * predicted ones between them, up to the masstone, and a little beyond the palest.
 */
export const ladderSteps = remembered((ladder: LadderModel): readonly LadderStep[] => {
  const { fit, white, used } = ladder;
  const measured = white.steps.map((step): MeasuredTint => ({
    standing: "measured",
    tint: step.tint,
    massRatio: step.massRatio,
    spectrum: { grid: fit.grid, values: step.measured },
    lab: step.lab,
    ...(step.suspect !== undefined && { suspect: step.suspect }),
  }));
  const least = (used[0]?.massRatio ?? Infinity) / LADDER_BEYOND;
  const isMeasured = (ratio: number): boolean =>
    white.steps.some(({ massRatio }) => Math.abs(massRatio / ratio - 1) < SAME_RATIO);
  // A hair's breadth of room, so that 1:200 is within a factor of two of 1:100.
  const wanted = LADDER_RATIOS.filter((ratio) => ratio >= least * (1 - 1e-9) && !isMeasured(ratio));
  const predicted = wanted.map((ratio) => predictedTint(ladder, ratio));
  return [...measured, ...predicted].toSorted((one, other) => other.massRatio - one.massRatio);
});
