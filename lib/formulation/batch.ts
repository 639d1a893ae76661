/**
 * A batch to mull or mill: what to weigh, what to hold back, what comes out.
 *
 * Driers, extenders and mediums come on top of pigment and oil; their grams are
 * reckoned on the oil or on the pigment, as the recipe says. Holds for any size,
 * in the browser too.
 */
import type { Interval } from "../quantities/interval.ts";
import { batchCost, type BatchCost, type Weighing } from "./batch-cost.ts";
import { requireFractionRange } from "./oil-held-back.ts";
import { requirePositive, requireShares } from "./required-domain.ts";

export interface BatchPigment {
  readonly name: string;
  /** Share of the dry pigment by mass, 0-1; all together 1. */
  readonly massFraction: number;
  readonly densityGPerCm3: number;
  readonly pricePerKg?: number | undefined;
}

export interface BatchAddition {
  readonly name: string;
  readonly percent: number;
  readonly of: "oil" | "pigment";
  readonly densityGPerCm3: number;
  readonly pricePerKg?: number | undefined;
}

export interface BatchRecipe {
  readonly pigments: readonly BatchPigment[];
  readonly oilIndexGPer100g: number;
  readonly oil: {
    readonly name: string;
    readonly densityGPerCm3: number;
    readonly pricePerKg?: number | undefined;
  };
  readonly additions: readonly BatchAddition[];
  /** Share of the oil [1], of oil-held-back.ts. */
  readonly holdBack: Interval;
  /** Share of the batch [1], of batch-loss.ts or the workshop's own. */
  readonly loss: Interval;
  readonly tubeMl: number;
}

/** How big: by pigment weighed, by paint made (before losses), or by tubes filled (after the larger loss). */
export type BatchSize =
  { readonly pigmentG: number } | { readonly paintMl: number } | { readonly tubes: number };

export interface Batch extends BatchCost {
  readonly pigments: readonly Weighing[];
  readonly pigmentG: number;
  readonly oilG: number;
  readonly oilHeldBackG: Interval;
  readonly oilAtFirstG: Interval;
  readonly additions: readonly Weighing[];
  readonly paintG: number;
  readonly paintMl: number;
  readonly lossMl: Interval;
  readonly yieldMl: Interval;
  /** Whole tubes that the yield fills. */
  readonly tubes: Interval;
}

/** A whole tube lost to rounding alone would be a fault: slack in tubes. */
const TUBE_SLACK = 1e-9;

/**
 * @throws RangeError when a mass, density, percent or size is not above 0, the
 *   mass fractions do not sum to 1, a price is negative, or a share of loss or hold-back lies outside 0-1.
 */
export function batch(recipe: BatchRecipe, size: BatchSize): Batch {
  requireRecipe(recipe);
  const unit = volumeOfOneGramOfPigmentMl(recipe);
  const [leastLoss, mostLoss] = recipe.loss;
  const pigmentG = pigmentMassG(recipe, size, unit);
  const oilG = (pigmentG * recipe.oilIndexGPer100g) / 100;
  const additions = recipe.additions.map(({ name, percent, of, pricePerKg }) => ({
    name,
    pricePerKg,
    massG: ((of === "oil" ? oilG : pigmentG) * percent) / 100,
  }));
  const pigments = recipe.pigments.map(({ name, massFraction, pricePerKg }) => ({
    name,
    pricePerKg,
    massG: massFraction * pigmentG,
  }));
  const paintMl = pigmentG * unit;
  const yieldMl: Interval = [paintMl * (1 - mostLoss), paintMl * (1 - leastLoss)];
  const [leastHeld, mostHeld] = recipe.holdBack;
  return {
    pigments: pigments.map(weighing),
    pigmentG,
    oilG,
    additions: additions.map(weighing),
    paintMl,
    yieldMl,
    oilHeldBackG: [oilG * leastHeld, oilG * mostHeld],
    oilAtFirstG: [oilG * (1 - mostHeld), oilG * (1 - leastHeld)],
    paintG: pigmentG + oilG + additions.reduce((total, { massG }) => total + massG, 0),
    lossMl: [paintMl * leastLoss, paintMl * mostLoss],
    tubes: [wholeTubes(yieldMl[0], recipe.tubeMl), wholeTubes(yieldMl[1], recipe.tubeMl)],
    ...batchCost([
      ...pigments,
      { name: recipe.oil.name, massG: oilG, pricePerKg: recipe.oil.pricePerKg },
      ...additions,
    ]),
  };
}

function pigmentMassG({ loss, tubeMl }: BatchRecipe, size: BatchSize, unit: number): number {
  if ("pigmentG" in size) {
    requirePositive("mass of pigment", size.pigmentG, "g");
    return size.pigmentG;
  }
  if ("paintMl" in size) {
    requirePositive("volume of paint", size.paintMl, "ml");
    return size.paintMl / unit;
  }
  requirePositive("number of tubes", size.tubes, "");
  return (size.tubes * tubeMl) / (1 - loss[1]) / unit;
}

/** Paint [ml] that comes of one gram of pigment with its oil and additions. */
function volumeOfOneGramOfPigmentMl({
  pigments,
  oilIndexGPer100g,
  oil,
  additions,
}: BatchRecipe): number {
  const oilG = oilIndexGPer100g / 100;
  const pigmentMl = pigments.reduce(
    (total, { massFraction, densityGPerCm3 }) => total + massFraction / densityGPerCm3,
    0,
  );
  const additionMl = additions.reduce(
    (total, { percent, of, densityGPerCm3 }) =>
      total + ((of === "oil" ? oilG : 1) * percent) / 100 / densityGPerCm3,
    0,
  );
  return pigmentMl + oilG / oil.densityGPerCm3 + additionMl;
}

function weighing({ name, massG }: Weighing): Weighing {
  return { name, massG };
}

function wholeTubes(yieldMl: number, tubeMl: number): number {
  return Math.floor(yieldMl / tubeMl + TUBE_SLACK);
}

function requireRecipe(recipe: BatchRecipe): void {
  requireShares(
    "mass fraction",
    recipe.pigments.map((pigment) => pigment.massFraction),
  );
  requirePositive("oil index", recipe.oilIndexGPer100g, "g/100 g");
  requirePositive("volume of a tube", recipe.tubeMl, "ml");
  requireFractionRange("held back", recipe.holdBack);
  requireFractionRange("loss", recipe.loss);
  for (const addition of recipe.additions) requirePositive("percent added", addition.percent, "%");
  for (const { densityGPerCm3 } of [...recipe.pigments, recipe.oil, ...recipe.additions]) {
    requirePositive("density", densityGPerCm3, "g/cm3");
  }
}
