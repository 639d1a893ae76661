import { oilIndexOfShare } from "../formulation/oil-share.ts";
import { amountEnds } from "./amount-ends.ts";
import { errorAt, warningAt, type Faults } from "./fault.ts";
import { oilIndexTolerance } from "./standard-recipe.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import type { LotRecord } from "./schema/lot.ts";

/** Densities [g/cm3] that paints reach, from oil with hardly a pigment to metal powders. Our own limits, wide. */
export const PAINT_DENSITY = [0.8, 8] as const;
/** A lot of the same colour has no more than so many times [1] another's oil, or a pigment's share. Our own limit, wide. */
const ANOTHER_PAINT = 2;

/** What a lot was weighed in, and weighs, against what any paint of its colour can. */
export function* lotWeightFaults(lot: Parsed<LotRecord>, files: ParsedFiles): Faults {
  yield* densityFaults(lot);
  const slips = [...shareFaults(lot, files)];
  yield* slips;
  if (slips.length === 0) yield* oilFaults(lot, files);
}

function* densityFaults({ record: { densityGPerCm3: density }, yaml }: Parsed<LotRecord>): Faults {
  const [least, most] = PAINT_DENSITY;
  if (density === undefined || (density >= least && density <= most)) return;
  const meant = density / 1000;
  yield errorAt(yaml.place(["densityGPerCm3"]), "records/lot-density", {
    message: `The density of this lot is ${density} g/cm3, and paints lie between ${least} and ${most} g/cm3`,
    actual: `${density} g/cm3`,
    expected: `${least} to ${most} g/cm3`,
    hint: meant >= least && meant <= most ? `${meant} g/cm3, if it was given in kg/m3` : undefined,
  });
}

/** A pigment that is far more or far less of the lot than of the colour: told of the first, since all shares move with one weight. */
function* shareFaults({ record, yaml }: Parsed<LotRecord>, { colours }: ParsedFiles): Faults {
  const parts = new Map(
    colours
      .get(record.colour)
      ?.record.pigments.flatMap((one) =>
        "parts" in one && one.parts !== undefined ? [[one.pigment, one.parts] as const] : [],
      ),
  );
  const wholeParts = sum([...parts.values()]);
  const wholeG = sum(record.pigments.map(({ massG }) => massG));
  const shares = record.pigments.flatMap(({ pigment, massG }, index) => {
    const own = parts.get(pigment);
    if (own === undefined) return [];
    const [weighed, meant] = [massG / wholeG, own / wholeParts];
    return [{ pigment, index, weighed, meant, far: Math.abs(Math.log(weighed / meant)) }];
  });
  if (parts.size !== record.pigments.length || shares.length < parts.size) return;
  const farthest = Math.max(...shares.map(({ far }) => far));
  const slipped = shares.find(({ far }) => far === farthest);
  if (slipped === undefined || !(farthest > Math.log(ANOTHER_PAINT))) return;
  const [weighed, meant] = [percent(slipped.weighed), percent(slipped.meant)];
  yield warningAt(yaml.place(["pigments", slipped.index, "massG"]), "records/lot-recipe", {
    message: `${slipped.pigment} is ${weighed} of the pigment of lot ${record.number}, and ${meant} of that of ${record.colour}`,
    actual: weighed,
    expected: `about ${meant}`,
    hint: "a weight in another unit, or a digit lost",
  });
}

/**
 * Oil to the pigment beyond the tolerance of what the colour's record says. Far beyond, it is a slip of a weight; and
 * of the lot that is the standard it is told of the record, as of every lot that agrees with a standard far beyond.
 */
function* oilFaults(
  { slug, record, yaml }: Parsed<LotRecord>,
  { colours, lots, workshop }: ParsedFiles,
): Faults {
  const colour = colours.get(record.colour)?.record;
  const index = amountEnds(colour?.oilIndexGPer100g, []);
  const [least, most] = [index[0]?.value, index.at(-1)?.value];
  if (colour === undefined || record.oil === undefined) return;
  if (least === undefined || most === undefined) return;
  const { massG } = record.oil;
  const pigmentG = pigmentMass(record);
  const weighed = (oilG: number): number => (100 * oilG) / pigmentG;
  const isFar = (own: number): boolean => own > ANOTHER_PAINT * most || own < least / ANOTHER_PAINT;
  const tolerance = oilIndexTolerance(colour, workshop?.record) / 100;
  const own = weighed(massG);
  const isWithin =
    own <= most * (1 + tolerance) + ROUNDING && own >= least * (1 - tolerance) - ROUNDING;
  if (isWithin || (colour.standard === slug && !isFar(own))) return;
  // Two lots alike, one of them the standard, are no slip of two weights.
  const alike = [...lots.values()].filter((other) => {
    const index = oilIndexOf(other.record);
    return (
      other.record.colour === record.colour &&
      index !== undefined &&
      Math.abs(index / own - 1) <= tolerance
    );
  });
  if (alike.length > 1 && alike.some((other) => other.slug === colour.standard)) return;
  const recorded = least === most ? `${least}` : `${least} to ${most}`;
  const beside = own > most ? own / most - 1 : 1 - own / least;
  yield warningAt(yaml.place(["oil", "massG"]), "records/lot-recipe", {
    message: `Lot ${record.number} has ${Number(own.toPrecision(3))} g of oil to 100 g of pigment, and the record of ${record.colour} ${recorded} g${isFar(own) ? "" : `: ${Number((100 * beside).toPrecision(2))} % ${own > most ? "more" : "less"}, where ${100 * tolerance} % may differ`}`,
    actual: `${massG} g`,
    expected: `about ${Number(((least * pigmentG) / 100).toPrecision(3))} g`,
    hint: isFar(own)
      ? slipHint(massG, (oilG) => !isFar(weighed(oilG)))
      : least < 100 && Math.abs(own / oilIndexOfShare(least) - 1) <= tolerance
        ? `${oilIndexOfShare(least)} g/100 g, if the record's ${least} is in percent of the paint`
        : undefined,
  });
}

function pigmentMass({ pigments }: LotRecord): number {
  return sum(pigments.map(({ massG }) => massG));
}

/** Oil to 100 g of pigment [g], as weighed. */
function oilIndexOf(lot: LotRecord): number | undefined {
  return lot.oil && (100 * lot.oil.massG) / pigmentMass(lot);
}

/** Room for what a decimal's binary form adds [g/100 g]. */
const ROUNDING = 1e-9;

function slipHint(massG: number, isNear: (oilG: number) => boolean): string {
  const meant = (oilG: number): string => `${Number(oilG.toPrecision(4))} g`;
  if (isNear(1000 * massG)) return `${meant(1000 * massG)}, if it was weighed in kg`;
  if (isNear(massG / 10)) return `${meant(massG / 10)}, if a digit slipped in`;
  return "a digit lost, or the oil index is of another paint";
}

function sum(values: readonly number[]): number {
  return values.reduce((whole, value) => whole + value, 0);
}

function percent(share: number): string {
  return `${Number((100 * share).toPrecision(3))} %`;
}
