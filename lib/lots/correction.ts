/** What would bring a lot back to its standard: how much of which paint, and what would then be read. */
import { deltaE00 } from "../colorimetry/difference.ts";
import type { Lab } from "../colorimetry/viewing.ts";
import { at } from "../quantities/at.ts";
import { leastAt } from "../quantities/golden-section.ts";
import type { Interval } from "../quantities/interval.ts";
import { eyeWeights } from "./lot-strength.ts";
import { labOfAbsorption, type Bench } from "./let-down-absorption.ts";
import {
  letDownAbsorption,
  masstoneAbsorption,
  mixedPaint,
  type PaintCoefficients,
} from "./paint-coefficients.ts";

/** A paint that could be worked into the lot. */
export interface Candidate {
  readonly slug: string;
  readonly name: string;
  readonly kind: "white" | "extender" | "colour" | "lot";
  readonly paint: PaintCoefficients;
  /** Relative standard uncertainty of what it does by mass [1], where it is more than the scales' own. */
  readonly spread?: number;
  /** Of the mixed paint [1], as there is no more of it: 0 to 1. */
  readonly mostShare?: number;
}

/** The lot and its standard, as K/S with the surface taken off [1], shape (count) each. */
export interface OffLot {
  readonly paint: PaintCoefficients;
  /** As read: what the model misses of it is carried along. */
  readonly masstone: readonly number[];
  readonly letDown: readonly number[];
  readonly standard: { readonly masstone: readonly number[]; readonly letDown: readonly number[] };
  readonly white: readonly number[];
  readonly massRatio: number;
  readonly bench: Bench;
  /** Relative standard uncertainty of the lot's K/S [1], by replicates or the instrument. */
  readonly uncertainty: number;
}

export interface Predicted {
  readonly masstoneDeltaE00: number;
  readonly letDownDeltaE00: number;
  readonly strengthPercent: number;
}

export interface Correction {
  readonly candidate: Candidate;
  /** To 100 g of the lot [g]. */
  readonly gramsPer100g: number;
  readonly predicted: Predicted;
  /** Over a dose five percent off, or as much as the candidate is known to, and the reading's uncertainty, coverage factor 2. */
  readonly range: { readonly [K in keyof Predicted]: Interval };
}

/** More of another paint than this share [1] makes another colour. Our own limit. */
export const MOST_SHARE = 0.25;
/** Another lot is the same colour: the one that is off may go into it. */
const MOST_SHARE_OF_LOT = 0.75;
/** What the scales and the strength of the paint that is added may be off by [1]. Our own estimate. */
const DOSE_SPREAD = 0.05;
/** So many whites, extenders, colours or lots are proposed: a choice among kinds. */
const MOST_OF_A_KIND = 2;
const COARSE_STEPS = 50;
/** Of a lot's miss [1]: what halves it at its best dose comes below this at a dose within a factor of two. Our own limit. */
const WORTH_A_LOOK = 0.85;
/** The least dose of the mixed paint that is looked at [1]. */
const LEAST_SHARE = 1e-4;
/** To which share its best dose is looked for [1]. */
const FOUND_WITHIN = 1e-6;

/**
 * The dose of a candidate that brings masstone and let-down nearest to the standard's: least root mean
 * square of the two Delta-E00 over shares of 0 to {@link MOST_SHARE} of the mixed paint, of another lot to {@link MOST_SHARE_OF_LOT}.
 *
 * @returns undefined when none of it is best.
 * @source walowit-1987, kubelka-munk-1931 : coefficients of a mixture add by mass of paint
 */
export function correctionWith(lot: OffLot, candidate: Candidate): Correction | undefined {
  const target = targetOf(lot);
  const miss = missWith(lot, candidate, target);
  const most = mostShare(candidate);
  const shares = Array.from({ length: COARSE_STEPS + 1 }, (_, i) => (i / COARSE_STEPS) * most);
  const misses = shares.map(miss);
  const best = misses.indexOf(Math.min(...misses));
  const step = most / COARSE_STEPS;
  const share = leastAt(
    miss,
    Math.max(at(shares, best) - step, 0),
    Math.min(at(shares, best) + step, most),
    FOUND_WITHIN,
  );
  if (!(share > 1e-4 && miss(share) < miss(0))) return undefined;
  const spread = Math.max(DOSE_SPREAD, candidate.spread ?? 0);
  const corners = [-1, 1].flatMap((dose) =>
    [-2, 0, 2].map((reading) =>
      predictedAt(
        scaledLot(lot, 1 + reading * lot.uncertainty),
        candidate.paint,
        Math.min(share * (1 + dose * spread), 1),
        target,
      ),
    ),
  );
  const predicted = predictedAt(lot, candidate.paint, share, target);
  const over = (key: keyof Predicted): Interval => {
    const values = [predicted, ...corners].map((one) => one[key]);
    return [Math.min(...values), Math.max(...values)];
  };
  return {
    candidate,
    gramsPer100g: (100 * share) / (1 - share),
    predicted,
    range: {
      masstoneDeltaE00: over("masstoneDeltaE00"),
      letDownDeltaE00: over("letDownDeltaE00"),
      strengthPercent: over("strengthPercent"),
    },
  };
}

/** The best corrections of several candidates, the nearest to the standard first; only such as at least halve what is off, and two of a kind at most. */
export function corrections(
  lot: OffLot,
  candidates: readonly Candidate[],
  most: number,
): Correction[] {
  const { masstoneDeltaE00, letDownDeltaE00 } = uncorrected(lot);
  const now = Math.hypot(masstoneDeltaE00, letDownDeltaE00);
  return candidates
    .filter((candidate) => isWorthALook(lot, candidate, now))
    .flatMap((candidate) => correctionWith(lot, candidate) ?? [])
    .map((correction) => ({
      correction,
      left: Math.hypot(correction.predicted.masstoneDeltaE00, correction.predicted.letDownDeltaE00),
    }))
    .filter(({ left }) => left <= now / 2)
    .toSorted((one, other) => one.left - other.left)
    .filter(
      ({ correction: { candidate } }, i, sorted) =>
        sorted
          .slice(0, i)
          .filter(({ correction: before }) => before.candidate.kind === candidate.kind).length <
        MOST_OF_A_KIND,
    )
    .slice(0, most)
    .map(({ correction }) => correction);
}

/** Whether some dose of a candidate, each twice the one before, takes off enough of a lot's miss: of a large range hardly any does. */
function isWorthALook(lot: OffLot, candidate: Candidate, now: number): boolean {
  const miss = missWith(lot, candidate, targetOf(lot));
  for (let share = mostShare(candidate); share > LEAST_SHARE; share /= 2)
    if (miss(share) < WORTH_A_LOOK * now) return true;
  return false;
}

/** Root sum of squares of the two Delta-E00 that a share of a candidate [1] leaves. */
function missWith(lot: OffLot, { paint }: Candidate, target: Target): (share: number) => number {
  return (share) => {
    const { masstoneDeltaE00, letDownDeltaE00 } = predictedAt(lot, paint, share, target);
    return Math.hypot(masstoneDeltaE00, letDownDeltaE00);
  };
}

function mostShare({ kind, mostShare: left = 1 }: Candidate): number {
  return Math.min(left, kind === "lot" ? MOST_SHARE_OF_LOT : MOST_SHARE);
}

/** The lot as it is. */
export function uncorrected(lot: OffLot): Predicted {
  return predictedAt(lot, lot.paint, 0, targetOf(lot));
}

interface Target {
  readonly masstone: Lab;
  readonly letDown: Lab;
  readonly weights: readonly number[];
}

function targetOf({ standard, bench }: OffLot): Target {
  return {
    masstone: labOfAbsorption(standard.masstone, bench),
    letDown: labOfAbsorption(standard.letDown, bench),
    weights: eyeWeights(bench.grid),
  };
}

function predictedAt(
  lot: OffLot,
  added: PaintCoefficients,
  share: number,
  target: Target,
): Predicted {
  const mixed = mixedPaint(lot.paint, added, share);
  const carried = (read: readonly number[], before: readonly number[], after: readonly number[]) =>
    read.map((ratio, i) => (ratio * at(after, i)) / at(before, i));
  const masstone = carried(lot.masstone, masstoneAbsorption(lot.paint), masstoneAbsorption(mixed));
  const letDown = carried(
    lot.letDown,
    letDownAbsorption(lot.paint, lot.white, lot.massRatio),
    letDownAbsorption(mixed, lot.white, lot.massRatio),
  );
  const above = (ratios: readonly number[]): number =>
    ratios.reduce((sum, ratio, i) => sum + (ratio - at(lot.white, i)) * at(target.weights, i), 0);
  return {
    masstoneDeltaE00: deltaE00(target.masstone, labOfAbsorption(masstone, lot.bench)),
    letDownDeltaE00: deltaE00(target.letDown, labOfAbsorption(letDown, lot.bench)),
    strengthPercent: (100 * above(letDown)) / above(lot.standard.letDown),
  };
}

/** The lot as it would be if its reading were off by this factor. */
function scaledLot(lot: OffLot, factor: number): OffLot {
  return {
    ...lot,
    masstone: lot.masstone.map((ratio) => ratio * factor),
    letDown: lot.letDown.map((ratio) => ratio * factor),
  };
}
