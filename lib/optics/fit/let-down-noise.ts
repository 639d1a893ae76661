import { deltaE00 } from "../../colorimetry/difference.ts";
import { labUncertainty } from "../../colorimetry/lab-uncertainty.ts";
import { HAND_HELD_NOISE } from "../../colorimetry/reading-noise.ts";
import { weighingShift } from "../tints/weighing-shift.ts";
import type { FittedWhite, MeasuredStep, PredictingFit } from "./colour-fit.ts";
import type { Measurement } from "./measurement.ts";
import { DRAWDOWN_NOISE } from "./reading-noise.ts";

/** What a fit tells of how its let-downs were read and of what they were weighed from. */
type MadeFrom = Pick<PredictingFit, "grid" | "geometry"> & {
  readonly masstone: Pick<PredictingFit["masstone"], "measured">;
};

/**
 * By how much a let-down made and read once more would differ: by its weighing, its film and the reading.
 *
 * @returns one standard uncertainty, Delta-E00 under D65/10, > 0.
 * @source oil-paint-outs, drawdown-practice
 */
export function letDownNoise(
  { measured, lab }: Pick<MeasuredStep, "measured" | "lab">,
  white: Pick<FittedWhite, "measured">,
  { grid, geometry, masstone }: MadeFrom,
): number {
  const read = (values: readonly number[]): Measurement => ({
    spectrum: { grid, values },
    geometry,
  });
  const tint = read(measured);
  const { L, a, b } = labUncertainty(tint.spectrum, "D65/10", HAND_HELD_NOISE, [
    weighingShift(tint, read(white.measured), read(masstone.measured)),
    measured.map((value) => DRAWDOWN_NOISE.relative * value),
  ]);
  return deltaE00(lab, { L: lab.L + L, a: lab.a + a, b: lab.b + b });
}
