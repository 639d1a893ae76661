import { batchLoss } from "../../formulation/batch-loss.ts";
import { batch, type Batch, type BatchRecipe } from "../../formulation/batch.ts";
import { oilHeldBack } from "../../formulation/oil-held-back.ts";
import { isKnown, sourceFigure, type Figure, type FigureRef } from "../../quantities/figure.ts";
import { isInterval, midpoint, type Quantity } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";
import { derivedFigure } from "../../quantities/derived-figure.ts";
import type { Colour, Records } from "../../records/records.ts";
import type { BatchSection, BatchSize, OilSection } from "../paint-section-types.ts";
import { inputs } from "./paint-volumes.ts";
import type { AdditionPart, PigmentPart, VehiclePart } from "../sheet.ts";

/** Pigment of the batches that a sheet works out [g]: a trial on the slab, a morning's mulling, a run of the mill. */
export const BATCH_SIZES_G: readonly number[] = [100, 500, 1000];

/** Batches in three sizes; nothing where oil, density or parts are not known. */
export function batchSection(
  colour: Colour,
  parts: readonly PigmentPart[],
  vehicle: VehiclePart | undefined,
  additions: readonly AdditionPart[],
  oil: OilSection,
  records: Records,
): BatchSection | undefined {
  if (
    vehicle === undefined ||
    !isKnown(oil.paintDensityGPerCm3) ||
    !isKnown(oil.oilIndexGPer100g) ||
    parts.some(({ massFraction }) => !isKnown(massFraction))
  )
    return undefined;
  const held = heldBack(oil);
  const lost = batchLoss(colour.record.dispersion);
  const holdBack = share(held.fraction, "customary share kept by", held.reason);
  const loss = share(lost.fraction, "customary loss at slab or mill", lost.reason);
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
  [lower, upper]: readonly [number, number],
  method: string,
  { source }: Statement,
): Figure<Quantity> {
  return sourceFigure<Quantity>("estimated", lower === upper ? lower : [lower, upper], {
    unit: "1",
    method,
    source,
  });
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
  const tubesMl = [...new Set((colour.record.sizes ?? []).map(({ ml }) => ml))];
  const priced = [...parts, made.vehicle, ...additions].filter(
    ({ pricePerKg }) => pricePerKg !== undefined,
  );
  return {
    slug: `${pigmentG}-g`,
    pigmentG,
    pigments: parts.map(({ slug }, i) => ({
      slug,
      massG: figure("share of the pigment", "g", [], (made) => made.pigments[i]?.massG ?? NaN),
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
        (made) => made.additions[i]?.massG ?? NaN,
      ),
    })),
    paintG: figure(
      "all that is weighed",
      "g",
      ["oilIndex", ...additions.map(({ slug }) => `percent ${slug}`)],
      ({ paintG }) => paintG,
    ),
    paintMl: figure("each mass over its density", "ml", VOLUME, ({ paintMl }) => paintMl),
    lossMl: figure("share of the batch", "ml", [...VOLUME, "loss"], ({ lossMl }) => lossMl[0]),
    yieldMl: figure("batch less its loss", "ml", [...VOLUME, "loss"], ({ yieldMl }) => yieldMl[0]),
    tubes: tubesMl.map((ml) => ({
      slug: `${ml}-ml`,
      ml,
      count: figure(
        "whole tubes of the yield",
        "1",
        [...VOLUME, "loss"],
        ({ tubes }) => tubes[0],
        ml,
      ),
    })),
    ...(priced.length === 0
      ? {}
      : {
          cost: inFull(
            figure(
              "masses x prices",
              made.currency ?? "",
              ["oilIndex", "prices", ...additions.map(({ slug }) => `percent ${slug}`)],
              ({ cost }) => cost ?? NaN,
            ),
          ),
        }),
    unpriced: [...parts, made.vehicle, ...additions]
      .filter((one) => !priced.includes(one))
      .map(({ slug }) => slug),
  };
}

/** Money is said to the smallest coin, whatever the scatter of the oil. */
function inFull(figure: Figure<Quantity>): Figure<Quantity> {
  if (!isKnown(figure)) return figure;
  const { standing, value, unit, method, inputs: from, restsOn } = figure;
  return { standing, value, unit, method, inputs: from, restsOn };
}

/** Stands for oil, densities and every addition: what the volume of a batch follows from. */
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
  const placed = (path: string, figure: Figure<Quantity>): FigureRef<Quantity> => ({
    path,
    figure,
  });
  const volume = inputs(
    {
      oilIndex: placed("oil.oilIndexGPer100g", oil.oilIndexGPer100g),
      oilDensity: placed("vehicle.densityGPerCm3", vehicle.densityGPerCm3),
      pigmentDensity: placed("oil.pigmentDensityGPerCm3", oil.pigmentDensityGPerCm3),
    },
    additions,
  );
  const fractions = Object.fromEntries(
    parts.map(({ slug, massFraction }) => [
      `fraction ${slug}`,
      placed(`pigments.${slug}.massFraction`, massFraction as Figure<Quantity>),
    ]),
  );
  const prices = pricesOf(parts, vehicle, additions);
  const rest: Record<string, FigureRef<Quantity>> = {
    holdBack: placed("batch.holdBack", holdBack),
    loss: placed("batch.loss", loss),
  };
  const all = { ...volume, ...fractions, ...prices, ...rest };

  const recipe = (v: Readonly<Record<string, number>>, tubeMl: number): BatchRecipe => {
    const value = (name: string): number => v[name] ?? middleOf(all[name]);
    const price = (owner: string): number | undefined =>
      prices[`price ${owner}`] === undefined ? undefined : value(`price ${owner}`);
    return {
      pigments: parts.map(({ slug }) => ({
        name: slug,
        massFraction: value(`fraction ${slug}`),
        densityGPerCm3: value("pigmentDensity"),
        pricePerKg: price(`pigments.${slug}`),
      })),
      oilIndexGPer100g: value("oilIndex"),
      oil: {
        name: vehicle.slug,
        densityGPerCm3: value("oilDensity"),
        pricePerKg: price("vehicle"),
      },
      additions: additions.map(({ slug }) => ({
        name: slug,
        percent: value(`percent ${slug}`),
        of: "oil" as const,
        densityGPerCm3: value(`density ${slug}`),
        pricePerKg: price(`additions.${slug}`),
      })),
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
): Record<string, FigureRef<Quantity>> {
  const price = (
    owner: string,
    { pricePerKg }: { readonly pricePerKg?: Figure<number> },
  ): [string, FigureRef<Quantity>][] =>
    pricePerKg === undefined
      ? []
      : [[`price ${owner}`, { path: `${owner}.pricePerKg`, figure: pricePerKg }]];
  return Object.fromEntries([
    ...parts.flatMap((part) => price(`pigments.${part.slug}`, part)),
    ...price("vehicle", vehicle),
    ...additions.flatMap((one) => price(`additions.${one.slug}`, one)),
  ]);
}

/** Stands in for what a figure does not need: it has no part in the figure. */
function middleOf(input: FigureRef<Quantity> | undefined): number {
  return input !== undefined && isKnown(input.figure) ? midpoint(input.figure.value) : NaN;
}
