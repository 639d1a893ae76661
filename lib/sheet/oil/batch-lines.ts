import type { Batch } from "../../formulation/batch.ts";
import { at, certain } from "../../quantities/at.ts";
import { exactly, type Figure } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import * as d from "../declaration.ts";
import { found } from "../found.ts";
import type { AdditionPart, PigmentPart, VehiclePart } from "../pigments/pigment-figures.ts";

/** A figure of a batch from those that it needs, by their keys; an estimate's ends go through the batch one by one. */
export type BatchFigure = (
  name: string,
  unit: string,
  needs: readonly string[],
  pick: (batch: Batch) => number,
  tubeMl?: number,
) => Figure<Quantity>;

/** A batch of one size, and whose it is. */
export interface SizedBatch {
  readonly pigmentG: number;
  readonly figure: BatchFigure;
  readonly parts: readonly PigmentPart[];
  readonly vehicle: VehiclePart;
  readonly added: readonly AdditionPart[];
  readonly tubesMl: readonly number[];
  readonly currency: string | undefined;
}

/** What the volume of a batch follows from: oil, every addition, and densities, of the parts or of the paint as weighed. */
const VOLUME = ["volume"];
const YIELD = [...VOLUME, "loss"];
const OIL_AT_FIRST = ["oilIndex", "holdBack"];
const OF_OIL = "share of the oil";

type Needs = readonly string[] | ((batch: SizedBatch) => readonly string[]);
function line(form: Omit<d.FigureForm, "word">) {
  return <const W extends string>(
    word: W,
    name: string,
    needs: Needs,
    pick: (batch: Batch) => number,
  ) => ({
    ...d.quantity({ ...form, word }),
    found: (of: SizedBatch) =>
      of.figure(name, form.unit, typeof needs === "function" ? needs(of) : needs, pick),
  });
}
const GRAMS = { unit: "g", kind: "significant", digits: 3 } as const;
const grams = line(GRAMS);
const millilitres = line({ unit: "ml", kind: "decimal", digits: 0 });
const lostMillilitres = line({ unit: "ml", kind: "significant", digits: 2 });

/** The lines of a batch, which a browser reckons anew for another size. */
export const BATCH_LINES = {
  pigments: d.quantity({ ...GRAMS, word: "batchPigment" }),
  oilG: grams("batchOil", "oil index x pigment", ["oilIndex"], ({ oilG }) => oilG),
  oilAtFirstG: grams(
    "batchOilAtFirst",
    "oil less what is held back",
    OIL_AT_FIRST,
    ({ oilAtFirstG }) => oilAtFirstG[0],
  ),
  oilHeldBackG: grams(
    "batchOilHeldBack",
    OF_OIL,
    OIL_AT_FIRST,
    ({ oilHeldBackG }) => oilHeldBackG[0],
  ),
  additions: d.quantity({ ...GRAMS, digits: 2, word: "batchAddition" }),
  paintG: grams("batchPaint", "all that is weighed", oilAndAdditions, (batch) => batch.paintG),
  paintMl: millilitres(
    "batchVolume",
    "each mass over its density",
    VOLUME,
    ({ volumes }) => certain(volumes).paintMl,
  ),
  lossMl: lostMillilitres("batchLossMl", "share of the batch", YIELD, ({ volumes }) =>
    at(certain(volumes).lossMl, 0),
  ),
  yieldMl: millilitres("batchYield", "batch less its loss", YIELD, ({ volumes }) =>
    at(certain(volumes).yieldMl, 0),
  ),
  tubes: d.quantity({ unit: "1", kind: "decimal", digits: 0, word: "batchTubes" }),
  cost: d.quantity({ unit: "currency", kind: "decimal", digits: 2, word: "batchCost" }),
};
const { pigments, additions, tubes, cost, paintG, paintMl, lossMl, yieldMl, ...OIL } = BATCH_LINES;

export const BATCH_SIZE = d.section({
  /** "100-g": by it a path finds the size. */
  slug: found(d.text, ({ pigmentG }: SizedBatch) => `${pigmentG}-g`),
  pigmentG: d.plainNumber,
  pigments: found(
    d.list(d.section({ slug: d.text, massG: pigments })),
    ({ parts, figure }: SizedBatch) =>
      parts.map(({ slug }, i) => ({
        slug,
        massG: figure("share of the pigment", "g", [], (batch) => at(batch.pigments, i).massG),
      })),
  ),
  ...OIL,
  additions: found(
    d.list(d.section({ slug: d.text, massG: additions })),
    ({ added, figure }: SizedBatch) =>
      added.map(({ slug }, i) => ({
        slug,
        massG: figure(
          OF_OIL,
          "g",
          ["oilIndex", `percent ${slug}`],
          (batch) => at(batch.additions, i).massG,
        ),
      })),
  ),
  ...{ paintG, paintMl, lossMl, yieldMl },
  /** Whole tubes of each size that it is sold in. */
  tubes: found(
    d.list(d.section({ slug: d.text, ml: d.plainNumber, count: tubes })),
    ({ tubesMl, figure }: SizedBatch) =>
      tubesMl.map((ml) => ({
        slug: `${ml}-ml`,
        ml,
        count: figure(
          "whole tubes of the yield",
          "1",
          YIELD,
          ({ volumes }) => at(certain(volumes).tubes, 0),
          ml,
        ),
      })),
  ),
  /** Of what is priced; absent when nothing is. */
  cost: found(
    d.optional(cost),
    (of: SizedBatch) =>
      ingredients(of).every(({ pricePerKg }) => pricePerKg === undefined)
        ? undefined
        : exactly(
            of.figure(
              "masses x prices",
              of.currency ?? "",
              ["prices", ...oilAndAdditions(of)],
              ({ cost: priced = 0 }) => priced,
            ),
          ),
    ["lamp-black.batch.sizes.100-g.cost", "0.1 x 38 + 0.099 x 14 + 0.000396 x 31", 5.198276],
  ),
  /** What the cost leaves out, by slug. */
  unpriced: found(d.texts, (of: SizedBatch) =>
    ingredients(of).flatMap(({ slug, pricePerKg }) => (pricePerKg === undefined ? [slug] : [])),
  ),
});
export type BatchSize = d.SectionOf<typeof BATCH_SIZE>;

function ingredients({ parts, vehicle, added }: SizedBatch) {
  return [...parts, vehicle, ...added];
}

function oilAndAdditions({ added }: SizedBatch): string[] {
  return ["oilIndex", ...added.map(({ slug }) => `percent ${slug}`)];
}
