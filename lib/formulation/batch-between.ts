/** A batch whose oil or densities are estimates: from the least to the most that it can come to. For a sheet's reckoner in the browser. */
import { ends, spanning, type Quantity, type Interval } from "../quantities/interval.ts";
import { batch, type Batch, type BatchSize } from "./batch.ts";
import { at, certain } from "../quantities/at.ts";

/** Plain data, so that a page can carry it. */
export interface SpannedRecipe {
  readonly pigments: readonly { readonly massFraction: number; readonly pricePerKg?: number }[];
  /** Densities are left out where they are not known: then nothing is said by volume. */
  readonly pigmentDensityGPerCm3?: Quantity;
  /** As the paint was weighed: the densities of its parts then tell no volume. */
  readonly paintDensityGPerCm3?: number;
  readonly oilIndexGPer100g: Quantity;
  readonly oil: { readonly densityGPerCm3?: Quantity; readonly pricePerKg?: number };
  /** By mass on the oil [%]. */
  readonly additions: readonly {
    readonly percent: number;
    readonly densityGPerCm3?: Quantity;
    readonly pricePerKg?: number;
  }[];
  readonly holdBack: Interval;
  readonly loss: Interval;
}

export interface SpannedBatch {
  readonly pigments: readonly Quantity[];
  readonly oilG: Quantity;
  readonly oilAtFirstG: Quantity;
  readonly oilHeldBackG: Quantity;
  readonly additions: readonly Quantity[];
  readonly paintG: Quantity;
  /** Volumes are absent where a density is not known. */
  readonly paintMl?: Quantity;
  readonly lossMl?: Quantity;
  readonly yieldMl?: Quantity;
  readonly tubes?: Quantity;
  /** Absent when nothing is priced. */
  readonly cost?: Quantity;
}

/**
 * @param tubeMl volume of a tube [ml], > 0.
 * @throws RangeError as {@link batch}.
 */
export function batchBetween(recipe: SpannedRecipe, size: BatchSize, tubeMl: number): SpannedBatch {
  const estimates = [
    recipe.oilIndexGPer100g,
    recipe.pigmentDensityGPerCm3,
    recipe.oil.densityGPerCm3,
    ...recipe.additions.map(({ densityGPerCm3 }) => densityGPerCm3),
  ];
  const batches = corners(estimates).map((values) => batchAt(recipe, values, size, tubeMl));
  const over = (pick: (one: Batch) => Quantity): Quantity => {
    const [lower, upper] = spanning(batches.map((one) => ends(pick(one))));
    return lower === upper ? lower : [lower, upper];
  };
  return {
    pigments: recipe.pigments.map((_, i) => over(({ pigments }) => at(pigments, i).massG)),
    oilG: over(({ oilG }) => oilG),
    oilAtFirstG: over(({ oilAtFirstG }) => oilAtFirstG),
    oilHeldBackG: over(({ oilHeldBackG }) => oilHeldBackG),
    additions: recipe.additions.map((_, i) => over(({ additions }) => at(additions, i).massG)),
    paintG: over(({ paintG }) => paintG),
    ...(!batches.some(({ volumes }) => volumes === undefined) && {
      paintMl: over(({ volumes }) => certain(volumes).paintMl),
      lossMl: over(({ volumes }) => certain(volumes).lossMl),
      yieldMl: over(({ volumes }) => certain(volumes).yieldMl),
      tubes: over(({ volumes }) => certain(volumes).tubes),
    }),
    ...(!batches.some(({ cost }) => cost === undefined) && {
      cost: over(({ cost = NaN }) => cost),
    }),
  };
}

function batchAt(
  { pigments, paintDensityGPerCm3, oil, additions, holdBack, loss }: SpannedRecipe,
  [oilIndex = NaN, pigmentDensity, oilDensity, ...densities]: readonly (number | undefined)[],
  size: BatchSize,
  tubeMl: number,
): Batch {
  return batch(
    {
      pigments: pigments.map(({ massFraction, pricePerKg }, i) => ({
        name: `pigment ${i}`,
        massFraction,
        pricePerKg,
        densityGPerCm3: pigmentDensity,
      })),
      oilIndexGPer100g: oilIndex,
      oil: { name: "oil", densityGPerCm3: oilDensity, pricePerKg: oil.pricePerKg },
      additions: additions.map(({ percent, pricePerKg }, i) => ({
        name: `addition ${i}`,
        percent,
        of: "oil" as const,
        densityGPerCm3: densities[i],
        pricePerKg,
      })),
      paintDensityGPerCm3,
      holdBack,
      loss,
      tubeMl,
    },
    size,
  );
}

/** Every combination of one end of each; what is not known stays so. */
function corners(quantities: readonly (Quantity | undefined)[]): (number | undefined)[][] {
  return quantities.reduce<(number | undefined)[][]>(
    (rows, quantity) =>
      rows.flatMap((row) =>
        [...new Set(quantity === undefined ? [undefined] : ends(quantity))].map((end) => [
          ...row,
          end,
        ]),
      ),
    [[]],
  );
}
