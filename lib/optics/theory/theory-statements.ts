/** Which of the things that theory says hold whatever the unknowns, each with the share of runs in which it does. */
import { domainError } from "../../diagnostics/diagnostic.ts";
import type { Interval } from "../../quantities/interval.ts";
import { estimated, type StatementOf } from "../../quantities/statement.ts";
import { band, type Band, type TheoryLightness, type TheoryTint } from "./mie-tint.ts";
import type { ParticleRun } from "./particle-runs.ts";
import { at } from "../../quantities/at.ts";

/** Share of runs [1] in which a sign has to hold for it to be called robust. */
export const ROBUST_SHARE = 0.9;

type BlueChange = {
  readonly first: string;
  readonly second: string;
  readonly L: TheoryLightness;
  readonly bluerShare: number;
  /** Of b* [1]. */
  readonly change: Interval;
  readonly runs: number;
};

export type BlueStatement = StatementOf<
  "theory-bluer" | "theory-warmer" | "theory-sign-not-known",
  BlueChange
>;

export type AllBluerStatement = StatementOf<
  "theory-all-bluer",
  BlueChange & { readonly members: readonly string[]; readonly how: "with" | "in" }
>;

export type LeanStatement = StatementOf<
  "theory-leans" | "theory-lean-not-known",
  { black: string; white: string; L: TheoryLightness; blueShare: number; b: Interval }
>;

/** b* of one tint less b* of another, run by run: below 0 the first is the bluer. */
export interface BlueDifference {
  readonly L: TheoryLightness;
  /** Share of runs in which the first is the bluer [1]. */
  readonly bluerShare: number;
  readonly change: Band;
  readonly runs: number;
}

/** @throws RangeError when the tints are of unlike L* or count of runs: nothing to compare. */
export function blueDifference(one: TheoryTint, other: TheoryTint): BlueDifference {
  if (one.L !== other.L) throw domainError("lightness L*", one.L, `the other's, ${other.L}`);
  if (one.bRuns.length !== other.bRuns.length)
    throw domainError("count of runs", one.bRuns.length, `the other's, ${other.bRuns.length}`);
  const differences = one.bRuns.map((b, i) => b - at(other.bRuns, i));
  return {
    L: one.L,
    bluerShare: differences.filter((difference) => difference < 0).length / differences.length,
    change: band(differences),
    runs: differences.length,
  };
}

/**
 * What a difference allows to be said.
 * @param first, second what is compared, by name.
 * @returns `theory-bluer` or `theory-warmer` when the sign holds in nine runs of ten, `theory-sign-not-known` otherwise; with the
 *   share in which the first is the bluer and the band of the change of b*.
 */
export function blueRuling(
  first: string,
  second: string,
  { L, bluerShare, change, runs }: BlueDifference,
): BlueStatement {
  const rule =
    bluerShare >= ROBUST_SHARE
      ? "theory-bluer"
      : 1 - bluerShare >= ROBUST_SHARE
        ? "theory-warmer"
        : "theory-sign-not-known";
  return estimated(
    rule,
    { first, second, L, bluerShare, change: [change.low, change.high], runs },
    "bohren-huffman-1983",
  );
}

/**
 * One statement in place of many: what is told the same way of every member of a range.
 * @param members what it is told of: blacks that are let down "with", or whites that they are let down "in".
 * @param differences of each member, first less second.
 * @returns `theory-all-bluer`, with the least share in which it holds and the band of all; undefined when it is not told of each.
 */
export function allBluerRuling(
  members: readonly string[],
  how: "with" | "in",
  first: string,
  second: string,
  differences: readonly BlueDifference[],
): AllBluerStatement | undefined {
  const [one] = differences;
  if (
    one === undefined ||
    differences.some((difference) => difference.L !== one.L || difference.bluerShare < ROBUST_SHARE)
  )
    return undefined;
  const share = Math.min(...differences.map(({ bluerShare }) => bluerShare));
  const change: [number, number] = [
    Math.min(...differences.map(({ change: { low } }) => low)),
    Math.max(...differences.map(({ change: { high } }) => high)),
  ];
  return estimated(
    "theory-all-bluer",
    { members, how, first, second, L: one.L, bluerShare: share, change, runs: one.runs },
    "bohren-huffman-1983",
  );
}

/**
 * What may be said of one black in one white by itself.
 * @returns `theory-leans` when the sign of b* holds in nine runs of ten, `theory-lean-not-known` otherwise, with the band.
 */
export function leanRuling(
  black: string,
  white: string,
  { L, b, bRuns }: TheoryTint,
): LeanStatement {
  const blueShare = bRuns.filter((value) => value < 0).length / bRuns.length;
  const isTold = blueShare >= ROBUST_SHARE || 1 - blueShare >= ROBUST_SHARE;
  return estimated(
    isTold ? "theory-leans" : "theory-lean-not-known",
    { black, white, L, blueShare, b: [b.low, b.high] },
    "bohren-huffman-1983",
  );
}

/**
 * Scattering over the spectrum, relative to 560 nm: what a white does to each colour of light.
 * @param runs of one pigment.
 * @returns a band for each wavelength of the grid; its absolute height is of no use (dense films scatter less).
 * @throws RangeError when there are no runs.
 */
export function scatteringBands(runs: readonly ParticleRun[]): Band[] {
  const [first] = runs;
  if (first === undefined) throw domainError("count of runs", 0, "at least one");
  const reference = first.S.length >> 1;
  return first.S.map((_, i) => band(runs.map(({ S }) => at(S, i) / at(S, reference))));
}
