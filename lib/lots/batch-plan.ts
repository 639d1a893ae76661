/** What to weigh for a lot, to the step of the balance, from what is wanted. */
import { domainError } from "../diagnostics/diagnostic.ts";
import { batch, type BatchRecipe } from "../formulation/batch.ts";
import type { Interval } from "../quantities/interval.ts";

/** Tubes that are wanted, or what a mass of pigment makes. */
export type Wanted =
  { readonly tubes: number; readonly ml: number } | { readonly pigmentG: number };

export interface PlannedWeighing {
  readonly name: string;
  readonly massG: number;
}

export interface BatchPlan {
  readonly pigments: readonly PlannedWeighing[];
  readonly oilG: number;
  /** To begin with, and to keep back until the paste asks for it: together the oil. */
  readonly oilAtFirstG: number;
  readonly oilHeldBackG: number;
  readonly additions: readonly PlannedWeighing[];
  readonly paintG: number;
  /** What should come out [ml]; absent where a density is not known. */
  readonly yieldMl?: Interval;
}

/**
 * @param fillMl what a tube really takes, of `learntFillMl`, else its nominal size.
 * @param stepG step of the balance [g], > 0: each mass is a whole number of steps.
 * @throws RangeError when the recipe is not one, the step is not above 0, or tubes are wanted of a recipe
 *   that lacks a density.
 */
export function batchPlan(
  recipe: Omit<BatchRecipe, "tubeMl">,
  wanted: Wanted,
  fillMl: number,
  stepG: number,
): BatchPlan {
  if (!(stepG > 0)) throw domainError("step of the balance", stepG, "> 0 g");
  const made = batch(
    { ...recipe, tubeMl: fillMl },
    "pigmentG" in wanted ? { pigmentG: wanted.pigmentG } : { tubes: wanted.tubes },
  );
  const stepped = (massG: number): number => inSteps(massG, stepG);
  const oilG = stepped(made.oilG);
  const heldBackG = stepped((made.oilHeldBackG[0] + made.oilHeldBackG[1]) / 2);
  const pigments = made.pigments.map(({ name, massG }) => ({ name, massG: stepped(massG) }));
  const additions = made.additions.map(({ name, massG }) => ({ name, massG: stepped(massG) }));
  const paintG = [...pigments, ...additions].reduce((sum, { massG }) => sum + massG, oilG);
  return {
    pigments,
    oilG,
    oilAtFirstG: inSteps(oilG - heldBackG, stepG),
    oilHeldBackG: heldBackG,
    additions,
    paintG: inSteps(paintG, stepG),
    ...(made.volumes !== undefined && { yieldMl: made.volumes.yieldMl }),
  };
}

/** A mass as whole steps of the balance: a small one is at least a step. */
export function inSteps(massG: number, stepG: number): number {
  const steps = Math.round(massG / stepG);
  return Number((Math.max(steps, massG > 0 ? 1 : 0) * stepG).toPrecision(12));
}
