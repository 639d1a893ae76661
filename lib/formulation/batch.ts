/**
 * A batch to mull or mill: what to weigh, what to hold back, what comes out.
 * What to weigh needs no density; volumes do.
 *
 * Driers, extenders and mediums come on top of pigment and oil; their grams are
 * reckoned on the oil or on the pigment, as the recipe says. Holds for any size,
 * in the browser too.
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import type { Interval } from "../quantities/interval.ts";
import { batchCost, type BatchCost, type Weighing } from "./batch-cost.ts";
import { requireFractionRange } from "./oil-held-back.ts";
import { requireShares } from "./required-domain.ts";
import { requirePositive } from "../quantities/positive.ts";

export interface BatchPigment {
  readonly name: string;
  /** Share of the dry pigment by mass, 0-1; all together 1. */
  readonly massFraction: number;
  readonly densityGPerCm3?: number | undefined;
  readonly pricePerKg?: number | undefined;
}

export interface BatchAddition {
  readonly name: string;
  readonly percent: number;
  readonly of: "oil" | "pigment";
  readonly densityGPerCm3?: number | undefined;
  readonly pricePerKg?: number | undefined;
}

export interface BatchRecipe {
  readonly pigments: readonly BatchPigment[];
  readonly oilIndexGPer100g: number;
  readonly oil: {
    readonly name: string;
    readonly densityGPerCm3?: number | undefined;
    readonly pricePerKg?: number | undefined;
  };
  readonly additions: readonly BatchAddition[];
  /** As the paint was weighed, in place of the density that its parts add up to. */
  readonly paintDensityGPerCm3?: number | undefined;
  /** Share of the oil [1], of oil-held-back.ts. */
  readonly holdBack: Interval;
  /** Share of the batch [1], of batch-loss.ts or the workshop's own. */
  readonly loss: Interval;
  readonly tubeMl: number;
}

/** How big: by pigment weighed, by paint made (before losses) in grams or millilitres, or by tubes filled (after the larger loss). */
export type BatchSize =
  | { readonly pigmentG: number }
  | { readonly paintG: number }
  | { readonly paintMl: number }
  | { readonly tubes: number };

export interface Batch extends BatchCost {
  readonly pigments: readonly Weighing[];
  readonly pigmentG: number;
  readonly oilG: number;
  readonly oilHeldBackG: Interval;
  readonly oilAtFirstG: Interval;
  readonly additions: readonly Weighing[];
  readonly paintG: number;
  /** Absent where a density is not known. */
  readonly volumes?: BatchVolumes;
}

export interface BatchVolumes {
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
 *   mass fractions do not sum to 1, a price is negative, a share of loss or hold-back lies outside 0-1,
 *   or a size by volume is asked of a recipe that lacks a density.
 */
export function batch(recipe: BatchRecipe, size: BatchSize): Batch {
  requireRecipe(recipe);
  const unitMl = volumeOfOneGramOfPigmentMl(recipe);
  const unitG = massOfOneGramOfPigmentG(recipe);
  const pigmentG = pigmentMassG(recipe, size, unitG, unitMl);
  const oilG = (pigmentG * recipe.oilIndexGPer100g) / 100;
  const additions = recipe.additions.map(({ name, percent, of, pricePerKg }) => ({
    name,
    pricePerKg,
    massG: additionG({ percent, of }, pigmentG, oilG),
  }));
  const pigments = recipe.pigments.map(({ name, massFraction, pricePerKg }) => ({
    name,
    pricePerKg,
    massG: massFraction * pigmentG,
  }));
  const [leastHeld, mostHeld] = recipe.holdBack;
  return {
    pigments: pigments.map(weighing),
    pigmentG,
    oilG,
    additions: additions.map(weighing),
    oilHeldBackG: [oilG * leastHeld, oilG * mostHeld],
    oilAtFirstG: [oilG * (1 - mostHeld), oilG * (1 - leastHeld)],
    paintG: pigmentG * unitG,
    ...(unitMl !== undefined && { volumes: batchVolumes(pigmentG * unitMl, recipe) }),
    ...batchCost([
      ...pigments,
      { name: recipe.oil.name, massG: oilG, pricePerKg: recipe.oil.pricePerKg },
      ...additions,
    ]),
  };
}

function batchVolumes(
  paintMl: number,
  { loss: [leastLoss, mostLoss], tubeMl }: BatchRecipe,
): BatchVolumes {
  const yieldMl: Interval = [paintMl * (1 - mostLoss), paintMl * (1 - leastLoss)];
  return {
    paintMl,
    yieldMl,
    lossMl: [paintMl * leastLoss, paintMl * mostLoss],
    tubes: [wholeTubes(yieldMl[0], tubeMl), wholeTubes(yieldMl[1], tubeMl)],
  };
}

function pigmentMassG(
  { loss, tubeMl }: BatchRecipe,
  size: BatchSize,
  unitG: number,
  unitMl: number | undefined,
): number {
  if ("pigmentG" in size) {
    requirePositive("mass of pigment", size.pigmentG, "g");
    return size.pigmentG;
  }
  if ("paintG" in size) {
    requirePositive("mass of paint", size.paintG, "g");
    return size.paintG / unitG;
  }
  if (unitMl === undefined)
    throw domainError("density", NaN, "one of every ingredient, for a batch by volume");
  if ("paintMl" in size) {
    requirePositive("volume of paint", size.paintMl, "ml");
    return size.paintMl / unitMl;
  }
  requirePositive("number of tubes", size.tubes, "");
  return (size.tubes * tubeMl) / (1 - loss[1]) / unitMl;
}

/** Paint [g] that comes of one gram of pigment with its oil and additions. */
function massOfOneGramOfPigmentG({ oilIndexGPer100g, additions }: BatchRecipe): number {
  const oilG = oilIndexGPer100g / 100;
  return additions.reduce((total, addition) => total + additionG(addition, 1, oilG), 1 + oilG);
}

/** Paint [ml] that comes of one gram of pigment with its oil and additions; undefined where a density is not known. */
function volumeOfOneGramOfPigmentMl(recipe: BatchRecipe): number | undefined {
  const { pigments, oilIndexGPer100g, oil, additions, paintDensityGPerCm3 } = recipe;
  if (paintDensityGPerCm3 !== undefined)
    return massOfOneGramOfPigmentG(recipe) / paintDensityGPerCm3;
  const oilG = oilIndexGPer100g / 100;
  const weighed = [
    ...pigments.map(({ massFraction, densityGPerCm3 }) => ({
      massG: massFraction,
      densityGPerCm3,
    })),
    { massG: oilG, densityGPerCm3: oil.densityGPerCm3 },
    ...additions.map((addition) => ({
      massG: additionG(addition, 1, oilG),
      densityGPerCm3: addition.densityGPerCm3,
    })),
  ];
  let volumeMl = 0;
  for (const { massG, densityGPerCm3 } of weighed) {
    if (densityGPerCm3 === undefined) return undefined;
    volumeMl += massG / densityGPerCm3;
  }
  return volumeMl;
}

function additionG(
  { percent, of }: Pick<BatchAddition, "percent" | "of">,
  pigmentG: number,
  oilG: number,
): number {
  return ((of === "oil" ? oilG : pigmentG) * percent) / 100;
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
  const densities = [...recipe.pigments, recipe.oil, ...recipe.additions].map(
    ({ densityGPerCm3 }) => densityGPerCm3,
  );
  for (const density of [...densities, recipe.paintDensityGPerCm3]) {
    if (density !== undefined) requirePositive("density", density, "g/cm3");
  }
}
