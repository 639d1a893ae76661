/** Fits that remember what they gave: many workshops here differ in one colour alone. */
import type { ColourFit } from "../../lib/optics/fit/colour-fit.ts";
import { finishedFit } from "../../lib/optics/fit/finished-fit.ts";
import { surfaceTrial, type SurfaceTrial } from "../../lib/optics/fit/surface-trial.ts";

const trials = new Map<string, ReturnType<typeof surfaceTrial>>();
// A trial holds the drawdowns that it was made of, so that these need no comparing again.
const fitsByTrial = new WeakMap<SurfaceTrial, Map<string, ColourFit>>();

export const rememberedTrial: typeof surfaceTrial = (...inputs) =>
  knownOrMade(trials, inputs, () => surfaceTrial(...inputs));

export const rememberedFit: typeof finishedFit = (usable, trial, ...beside) => {
  const fits = fitsByTrial.get(trial) ?? new Map<string, ColourFit>();
  fitsByTrial.set(trial, fits);
  return knownOrMade(fits, beside, () => finishedFit(usable, trial, ...beside));
};

function knownOrMade<V>(known: Map<string, V>, inputs: readonly unknown[], made: () => V): V {
  const key = JSON.stringify(inputs);
  const value = known.get(key) ?? made();
  known.set(key, value);
  return value;
}
