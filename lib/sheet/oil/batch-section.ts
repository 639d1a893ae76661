import { batchLoss, lossOfLots } from "../../formulation/batch-loss.ts";
import { batch, type Batch, type BatchRecipe } from "../../formulation/batch.ts";
import { oilHeldBack } from "../../formulation/oil-held-back.ts";
import { learntLoss } from "../../lots/learnt-yield.ts";
import { at, certain } from "../../quantities/at.ts";
import {
  exactly,
  isKnown,
  sourceFigure,
  type Figure,
  type Input,
} from "../../quantities/figure.ts";
import { isInterval, midpoint, type Interval, type Quantity } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import type { Colour } from "../../records/records.ts";
import type { BatchSection, BatchSize } from "./batch-figures.ts";
import type { OilSection } from "./oil-figures.ts";
import type { PaintOfColour } from "../paint-as-made.ts";
import { colourRecord } from "../record-inputs.ts";
import { mainOil } from "./main-oil.ts";
import { inputs, massInputs } from "./paint-volumes.ts";
import type { AdditionPart, PigmentPart, VehiclePart } from "../pigments/pigment-figures.ts";

/** Pigment of the batches that a sheet works out [g]: a trial on the slab, a morning's mulling, a run of the mill. */
const BATCH_SIZES_G: readonly number[] = [100, 500, 1000];

/** Batches in three sizes; nothing where oil or parts are not known, and no volumes where a density is not. */
export function batchSection({
  colour,
  pigments: parts,
  vehicle,
  additions,
  oil,
  records,
}: PaintOfColour): BatchSection | undefined {
  if (
    vehicle === undefined ||
    !isKnown(oil.oilIndexGPer100g) ||
    parts.some(({ massFraction }) => !isKnown(massFraction))
  )
    return undefined;
  const held = heldBack(oil);
  const learnt = learntLoss(colour.lotYields);
  const lost =
    learnt === undefined
      ? batchLoss(colour.record.dispersion)
      : lossOfLots(learnt, colour.lotYields.length);
  const holdBack = share(held.fraction, "customary share kept by", held.reason, [
    oil.oilIndexGPer100g,
    oil.oilAbsorptionGPer100g,
  ]);
  const loss =
    learnt === undefined
      ? share(
          lost.fraction,
          "customary loss at slab or mill",
          lost.reason,
          colourRecord(colour, "dispersion"),
        )
      : sourceFigure<Quantity>("measured", oneOrBoth(learnt), {
          unit: "1",
          method: "what lots lost, least and most",
          inputs: colour.lotYields.map(({ lot }) => ({ kind: "lot", slug: lot })),
        });
  const made = {
    colour,
    parts,
    vehicle,
    additions,
    oil,
    holdBack,
    loss,
    currency: records.workshop.currency,
  };
  return {
    holdBack,
    loss,
    reasons: [held.reason, lost.reason],
    sizes: BATCH_SIZES_G.map((pigmentG) => batchSize(pigmentG, made)),
  };
}

/** Down to the rub-out figure and no further, where both are single figures; else what is customary. */
function heldBack({
  oilIndexGPer100g,
  oilAbsorptionGPer100g,
}: OilSection): ReturnType<typeof oilHeldBack> {
  const oilIndex = isKnown(oilIndexGPer100g) ? oilIndexGPer100g.value : NaN;
  const rubOut = isKnown(oilAbsorptionGPer100g) ? oilAbsorptionGPer100g.value : undefined;
  return isInterval(oilIndex) || rubOut === undefined || isInterval(rubOut)
    ? oilHeldBack(midpoint(oilIndex))
    : oilHeldBack(oilIndex, rubOut);
}

function share(
  fraction: Interval,
  method: string,
  { source }: Statement,
  inputs: readonly Input[],
): Figure<Quantity> {
  return sourceFigure<Quantity>("estimated", oneOrBoth(fraction), {
    unit: "1",
    method,
    source,
    inputs,
  });
}

function oneOrBoth([least, most]: Interval): Quantity {
  return least === most ? least : [least, most];
}

interface Made {
  readonly colour: Colour;
  readonly parts: readonly PigmentPart[];
  readonly vehicle: VehiclePart;
  readonly additions: readonly AdditionPart[];
  readonly oil: OilSection;
  readonly holdBack: Figure<Quantity>;
  readonly loss: Figure<Quantity>;
  readonly currency: string | undefined;
}

function batchSize(pigmentG: number, made: Made): BatchSize {
  const { colour, parts, additions } = made;
  const figure = figureOf(pigmentG, made);
  const tubesMl = [...new Set(colour.sizes.map(({ ml }) => ml))];
  const priced = [...parts, made.vehicle, ...additions].filter(
    ({ pricePerKg }) => pricePerKg !== undefined,
  );
  return {
    slug: `${pigmentG}-g`,
    pigmentG,
    pigments: parts.map(({ slug }, i) => ({
      slug,
      massG: figure("share of the pigment", "g", [], (made) => at(made.pigments, i).massG),
    })),
    oilG: figure("oil index x pigment", "g", ["oilIndex"], ({ oilG }) => oilG),
    oilAtFirstG: figure(
      "oil less what is held back",
      "g",
      ["oilIndex", "holdBack"],
      ({ oilAtFirstG }) => oilAtFirstG[0],
    ),
    oilHeldBackG: figure(
      "share of the oil",
      "g",
      ["oilIndex", "holdBack"],
      ({ oilHeldBackG }) => oilHeldBackG[0],
    ),
    additions: additions.map(({ slug }, i) => ({
      slug,
      massG: figure(
        "share of the oil",
        "g",
        ["oilIndex", `percent ${slug}`],
        (made) => at(made.additions, i).massG,
      ),
    })),
    paintG: figure(
      "all that is weighed",
      "g",
      ["oilIndex", ...additions.map(({ slug }) => `percent ${slug}`)],
      ({ paintG }) => paintG,
    ),
    paintMl: figure(
      "each mass over its density",
      "ml",
      VOLUME,
      ({ volumes }) => certain(volumes).paintMl,
    ),
    lossMl: figure("share of the batch", "ml", [...VOLUME, "loss"], ({ volumes }) =>
      at(certain(volumes).lossMl, 0),
    ),
    yieldMl: figure("batch less its loss", "ml", [...VOLUME, "loss"], ({ volumes }) =>
      at(certain(volumes).yieldMl, 0),
    ),
    tubes: tubesMl.map((ml) => ({
      slug: `${ml}-ml`,
      ml,
      count: figure(
        "whole tubes of the yield",
        "1",
        [...VOLUME, "loss"],
        ({ volumes }) => at(certain(volumes).tubes, 0),
        ml,
      ),
    })),
    ...(priced.length === 0
      ? {}
      : {
          cost: exactly(
            figure(
              "masses x prices",
              made.currency ?? "",
              ["oilIndex", "prices", ...additions.map(({ slug }) => `percent ${slug}`)],
              ({ cost = 0 }) => cost,
            ),
          ),
        }),
    unpriced: [...parts, made.vehicle, ...additions]
      .filter((one) => !priced.includes(one))
      .map(({ slug }) => slug),
  };
}

/** Stands for oil, every addition, and densities, of the parts or of the paint as weighed: what the volume of a batch follows from. */
const VOLUME = ["volume"];

type BatchFigure = (
  name: string,
  unit: string,
  needs: readonly string[],
  pick: (batch: Batch) => number,
  tubeMl?: number,
) => Figure<Quantity>;

/** Figures of one size: an estimate's ends go through the batch one by one, and each names what it needs. */
function figureOf(
  pigmentG: number,
  { parts, vehicle, additions, oil, holdBack, loss }: Made,
): BatchFigure {
  const isWeighed = oil.paintDensityGPerCm3.standing === "measured";
  const volume = isWeighed
    ? {
        ...massInputs({ mainOil: mainOil(oil) }, additions),
        paintDensity: oil.paintDensityGPerCm3,
      }
    : inputs({ ...oil, mainOil: mainOil(oil), oilDensity: vehicle.densityGPerCm3 }, additions);
  const fractions = Object.fromEntries(
    parts.map(({ slug, massFraction }) => [`fraction ${slug}`, massFraction]),
  );
  const prices = pricesOf(parts, vehicle, additions);
  const rest: Record<string, Figure<Quantity>> = {
    holdBack: holdBack,
    loss: loss,
  };
  const all = { ...volume, ...fractions, ...prices, ...rest };

  const recipe = (v: Readonly<Record<string, number>>, tubeMl: number): BatchRecipe => {
    const value = (name: string): number => v[name] ?? certain(middleOf(all[name]));
    const density = (name: string): number | undefined => v[name] ?? middleOf(all[name]);
    const price = (owner: string): number | undefined =>
      prices[`price ${owner}`] === undefined ? undefined : value(`price ${owner}`);
    return {
      pigments: parts.map(({ slug }) => ({
        name: slug,
        massFraction: value(`fraction ${slug}`),
        densityGPerCm3: density("pigmentDensity"),
        pricePerKg: price(`pigments.${slug}`),
      })),
      oilIndexGPer100g: value("oilIndex"),
      oil: {
        name: vehicle.slug,
        densityGPerCm3: density("oilDensity"),
        pricePerKg: price("vehicle"),
      },
      additions: additions.map(({ slug }) => ({
        name: slug,
        percent: value(`percent ${slug}`),
        of: "oil" as const,
        densityGPerCm3: density(`density ${slug}`),
        pricePerKg: price(`additions.${slug}`),
      })),
      paintDensityGPerCm3: density("paintDensity"),
      holdBack: [value("holdBack"), value("holdBack")],
      loss: [value("loss"), value("loss")],
      tubeMl,
    };
  };
  return (name, unit, needs, pick, tubeMl = 1) => {
    const wanted = new Set([
      ...Object.keys(fractions),
      ...needs.flatMap((need) =>
        need === "volume" ? Object.keys(volume) : need === "prices" ? Object.keys(prices) : [need],
      ),
    ]);
    const chosen = Object.fromEntries(Object.entries(all).filter(([key]) => wanted.has(key)));
    return derivedFigure({ name, unit }, chosen, (v) =>
      pick(batch(recipe(v, tubeMl), { pigmentG })),
    );
  };
}

function pricesOf(
  parts: readonly PigmentPart[],
  vehicle: VehiclePart,
  additions: readonly AdditionPart[],
): Record<string, Figure<Quantity>> {
  const price = (
    owner: string,
    { pricePerKg }: { readonly pricePerKg?: Figure<number> },
  ): [string, Figure<Quantity>][] =>
    pricePerKg === undefined ? [] : [[`price ${owner}`, pricePerKg]];
  return Object.fromEntries([
    ...parts.flatMap((part) => price(`pigments.${part.slug}`, part)),
    ...price("vehicle", vehicle),
    ...additions.flatMap((one) => price(`additions.${one.slug}`, one)),
  ]);
}

/** Stands in for what a figure does not need: it has no part in the figure. */
function middleOf(input: Figure<Quantity> | undefined): number | undefined {
  return input !== undefined && isKnown(input) ? midpoint(input.value) : undefined;
}
