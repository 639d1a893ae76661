import { batchLoss, lossOfLots } from "../../formulation/batch-loss.ts";
import { batch, type BatchRecipe } from "../../formulation/batch.ts";
import { oilHeldBack } from "../../formulation/oil-held-back.ts";
import { learntLoss } from "../../lots/learnt-yield.ts";
import { certain } from "../../quantities/at.ts";
import {
  isKnown,
  knownValue,
  sourceFigure,
  type Figure,
  type Input,
} from "../../quantities/figure.ts";
import { isInterval, midpoint, type Interval, type Quantity } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import * as d from "../declaration.ts";
import { filled, foundFrom, type Amounts } from "../found.ts";
import { BATCH_SIZE, type BatchFigure } from "./batch-lines.ts";
import type { OilSection } from "./oil-figures.ts";
import type { PaintOfColour } from "../paint-as-made.ts";
import { colourRecord } from "../record-inputs.ts";
import { mainOil } from "./main-oil.ts";
import { inputs, massInputs } from "./paint-volumes.ts";
import type { AdditionPart, PigmentPart, VehiclePart } from "../pigments/pigment-figures.ts";

/** Pigment of the batches that a sheet works out [g]: a trial on the slab, a morning's mulling, a run of the mill. */
const BATCH_SIZES_G: readonly number[] = [100, 500, 1000];

/** What the figures of a paint's batches are found from. */
interface BatchOfPaint extends Pick<PaintOfColour, "colour" | "additions" | "oil" | "records"> {
  readonly parts: readonly PigmentPart[];
  readonly vehicle: VehiclePart;
  readonly held: ReturnType<typeof oilHeldBack>;
  readonly lost: ReturnType<typeof batchLoss>;
}
const batches = foundFrom<BatchOfPaint & Amounts<"holdBack" | "loss">>();

/** What to weigh for a batch, what to hold back, what comes out. */
export const BATCH = d.section({
  /** Share of the oil [1]. */
  holdBack: batches.found(d.quantity({ ...d.SHARE, word: "holdBack" }), ({ held, oil }) =>
    share(held.fraction, "customary share kept by", held.reason, [
      oil.oilIndexGPer100g,
      oil.oilAbsorptionGPer100g,
    ]),
  ),
  /** Share of the batch [1] that does not reach a tube. */
  loss: batches.found(d.quantity({ ...d.SHARE, word: "batchLoss" }), ({ colour, lost }) => {
    const learnt = learntLoss(colour.lotYields);
    return learnt === undefined
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
  }),
  reasons: batches.found(d.statements, ({ held, lost }) => [held.reason, lost.reason]),
  sizes: batches.found(d.list(BATCH_SIZE), (of) =>
    BATCH_SIZES_G.map((pigmentG) =>
      filled(BATCH_SIZE, {
        parts: of.parts,
        vehicle: of.vehicle,
        added: of.additions,
        pigmentG,
        figure: figureOf(pigmentG, of),
        tubesMl: [...new Set(of.colour.sizes.map(({ ml }) => ml))],
        currency: of.records.workshop.currency,
      }),
    ),
  ),
});
export type BatchSection = d.SectionOf<typeof BATCH>;

/** Batches in three sizes; nothing where oil or parts are not known, and no volumes where a density is not. */
export function batchSection(paint: PaintOfColour): BatchSection | undefined {
  const { colour, pigments: parts, vehicle, oil } = paint;
  if (
    vehicle === undefined ||
    !isKnown(oil.oilIndexGPer100g) ||
    parts.some(({ massFraction }) => !isKnown(massFraction))
  )
    return undefined;
  const learnt = learntLoss(colour.lotYields);
  return filled(BATCH, {
    ...paint,
    parts,
    vehicle,
    held: heldBack(oil),
    lost:
      learnt === undefined
        ? batchLoss(colour.record.dispersion)
        : lossOfLots(learnt, colour.lotYields.length),
  });
}

/** Down to the rub-out figure and no further, where both are single figures; else what is customary. */
function heldBack({
  oilIndexGPer100g,
  oilAbsorptionGPer100g,
}: OilSection): ReturnType<typeof oilHeldBack> {
  const oilIndex = knownValue(oilIndexGPer100g) ?? NaN;
  const rubOut = knownValue(oilAbsorptionGPer100g);
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

/** Figures of one size; each names what it needs. */
function figureOf(
  pigmentG: number,
  { parts, vehicle, additions, oil, holdBack, loss }: BatchOfPaint & Amounts<"holdBack" | "loss">,
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
  const all: Record<string, Figure<Quantity>> = {
    ...volume,
    ...fractions,
    ...prices,
    holdBack,
    loss,
  };

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
