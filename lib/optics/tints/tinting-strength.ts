/** How far a colour goes in a white, beside another colour of the workshop. */
import { requirePositive } from "../../quantities/positive.ts";
import { at, certain } from "../../quantities/at.ts";
import { deltaE00 } from "../../colorimetry/difference.ts";
import { labToLch } from "../../colorimetry/lab.ts";
import { tristimulus } from "../../colorimetry/tristimulus.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import type { UnlikeReadings } from "../unlike-readings.ts";
import { sameGrid, wavelengthNm } from "../../quantities/spectrum.ts";
import { predictedAtLightness } from "./equal-lightness.ts";
import { predictedTint, type LadderModel } from "./ladder.ts";
import { massRatioUncertainty } from "./mass-ratio-uncertainty.ts";
import { internalOf, keptRatio } from "./tint-reading.ts";
import { TINT_RULES } from "./tint-statement.ts";

/** Wavelengths of greatest absorption further apart than this [nm] belong to colours that no figure compares. */
const COMPARABLE_NM = 40;

/** Why strength is not compared. */
export type NotCompared =
  | UnlikeReadings
  | StatementOf<"grey-beside-colour", { grey: "sample" | "reference" }>
  | StatementOf<"hues-not-comparable", { sampleNm: number; referenceNm: number }>;

/** Strength of a let-down beside one of the reference, and where K/S was taken. */
export interface StrengthAtRatios {
  readonly strength: number;
  readonly at: number | "y-bar";
}

/**
 * Relative tinting strength by K/S of two let-downs, the white's own K/S taken off, which the caller
 * holds to be alike: by mass, by volume, by pigment in the paint.
 *
 *     strength = (theta - theta_w) / (theta_ref - theta_w,ref)
 *
 * taken at the wavelength of the reference's greatest absorption in the let-down;
 * for two greys each K/S is weighted by y-bar, since a grey absorbs everywhere.
 *
 * @param sampleRatio, referenceRatio colour to white [1] of each, in the kind that each was weighed in, > 0.
 * @returns strength; rules `whites-differ`, `grey-beside-colour`, `hues-not-comparable`.
 * @throws RangeError when a ratio is not positive, or the fits are not of one grid.
 */
export function strengthAtRatios(
  sample: LadderModel,
  reference: LadderModel,
  sampleRatio: number,
  referenceRatio: number,
): StrengthAtRatios | NotCompared {
  for (const ratio of [sampleRatio, referenceRatio])
    requirePositive("mass ratio", ratio, "", "ratio");
  if (sample.white.slug !== reference.white.slug)
    return {
      rule: "whites-differ",
      values: { sample: sample.white.slug, reference: reference.white.slug },
    };
  if (!sameGrid(sample.fit.grid, reference.fit.grid))
    throw new RangeError("The two fits are of several grids; right would be one");

  const [ofReference, ofSample] = [
    absorption(reference, referenceRatio),
    absorption(sample, sampleRatio),
  ];
  const areGreys = ofReference.isGrey && ofSample.isGrey;
  if (ofReference.isGrey !== ofSample.isGrey)
    return {
      rule: "grey-beside-colour",
      values: { grey: ofSample.isGrey ? "sample" : "reference" },
    };
  const peaks = [ofSample, ofReference].map(({ ratios }) =>
    wavelengthNm(reference.fit.grid, ratios.indexOf(Math.max(...ratios))),
  ) as [number, number];
  if (!areGreys && Math.abs(peaks[0] - peaks[1]) > COMPARABLE_NM)
    return { rule: "hues-not-comparable", values: { sampleNm: peaks[0], referenceNm: peaks[1] } };
  const at = areGreys ? "y-bar" : peaks[1];
  return { strength: depthAt(at, reference, ofSample) / depthAt(at, reference, ofReference), at };
}

/**
 * What still differs between two colours in a white once both are let down to equal strength.
 * @source iso-18314-2 : residual colour difference
 */
export function strengthResidualRuling(
  { by, residualDeltaE00 }: ComparedStrength,
  reference: string,
  white: string,
): StrengthResidualStatement {
  return {
    rule: by === "depth" ? "strength-by-equal-depth" : "strength-by-absorption",
    values: { reference, white, residualDeltaE00 },
    source: "iso-18314-2",
  };
}

export type StrengthResidualStatement = StatementOf<
  "strength-by-absorption" | "strength-by-equal-depth",
  { reference: string; white: string; residualDeltaE00: number }
>;

/** Strength of two ladders that {@link strengthAtRatios} found to compare, at other ratios: K/S is taken where it took it. */
export function strengthTakenAt(
  at: number | "y-bar",
  sample: LadderModel,
  reference: LadderModel,
  sampleRatio: number,
  referenceRatio: number,
): number {
  return (
    depthAt(at, reference, absorption(sample, sampleRatio)) /
    depthAt(at, reference, absorption(reference, referenceRatio))
  );
}

/** How many times beyond its let-downs a ladder's K/S is no longer taken for measured. */
const BEYOND_LET_DOWNS = 2;

/** Strength of one ladder beside another, how it was taken, how sure it is, and what then still differs. */
export interface ComparedStrength {
  readonly strength: number;
  readonly by: "absorption" | "depth";
  /** Relative standard uncertainty [1]. */
  readonly uncertainty: number;
  /** Delta-E00 (D65/10) between the reference's let-down and the sample's of equal strength. */
  readonly residualDeltaE00: number;
}

/**
 * Strength of two ladders that {@link strengthAtRatios} found to compare. Where the sample's K/S would lie
 * beyond its let-downs it is taken by equal depth: by the masses that bring both to one L*.
 *
 *     strength = r_sample held alike / r_sample at the reference's L*
 *
 * The uncertainty is what the printed 68 % of both predictions, and the weighing of both, move it by.
 *
 * @param sampleRatio, referenceRatio colour to white [1] that are held to be alike, > 0.
 * @source iso-18314-2, duncan-1940, drawdown-practice
 */
export function comparedStrength(
  at: number | "y-bar",
  sample: LadderModel,
  reference: LadderModel,
  sampleRatio: number,
  referenceRatio: number,
): ComparedStrength {
  const depth = predictedTint(reference, referenceRatio);
  const equal = isBeyond(sample, sampleRatio)
    ? predictedAtLightness(sample, depth.lab.L)
    : undefined;
  const isByDepth = equal !== undefined && !("rule" in equal);
  const strength = isByDepth
    ? sampleRatio / equal.massRatio
    : strengthTakenAt(at, sample, reference, sampleRatio, referenceRatio);
  const ratio = sampleRatio / strength;
  return {
    strength,
    by: isByDepth ? "depth" : "absorption",
    uncertainty: Math.hypot(
      massRatioUncertainty(sample, ratio),
      massRatioUncertainty(reference, referenceRatio),
    ),
    residualDeltaE00: deltaE00(predictedTint(sample, ratio).lab, depth.lab),
  };
}

function isBeyond({ used }: LadderModel, massRatio: number): boolean {
  const ratios = used.map((step) => step.massRatio);
  return (
    massRatio > BEYOND_LET_DOWNS * Math.max(...ratios) ||
    massRatio < Math.min(...ratios) / BEYOND_LET_DOWNS
  );
}

function depthAt(
  at: number | "y-bar",
  reference: LadderModel,
  { ratios }: { readonly ratios: readonly number[] },
): number {
  const { grid } = reference.fit;
  return at === "y-bar"
    ? weighted(reference, ratios)
    : certain(ratios[Math.round((at - grid.startNm) / grid.stepNm)]);
}

/** K/S that the colour adds to its white in a let-down, shape (count), and whether the colour counts as a grey. */
function absorption(ladder: LadderModel, massRatio: number): { ratios: number[]; isGrey: boolean } {
  const { spectrum, lab } = predictedTint(ladder, massRatio);
  const ratios = spectrum.values.map(
    (value, i) => keptRatio(internalOf(ladder.model.form, value)) - at(ladder.white.whiteRatio, i),
  );
  const { masstoneChromaMax, tintChromaMax } = TINT_RULES.grey;
  return {
    ratios,
    isGrey:
      labToLch(lab).C <= tintChromaMax && labToLch(ladder.fit.masstone.lab).C <= masstoneChromaMax,
  };
}

/** Mean weighted by D65 times y-bar: Y is linear in what it is given, so K/S scaled into its domain will do. */
function weighted({ fit }: LadderModel, ratios: readonly number[]): number {
  const largest = Math.max(...ratios);
  return (
    (tristimulus(
      { grid: fit.grid, values: ratios.map((ratio) => Math.max(ratio / largest, 0)) },
      "D65/10",
    ).Y *
      largest) /
    100
  );
}
