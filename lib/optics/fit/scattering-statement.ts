import { tristimulus } from "../../colorimetry/tristimulus.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import type { Measurement } from "./measurement.ts";
import type { FitSolution } from "./two-constant-fit.ts";
import { median } from "../../quantities/median.ts";

/**
 * When a colour's S is told only as a bound. A let-down fixes a black's K well,
 * but its S hangs on the last digit of its masstone: a reading off by .001 moves
 * a lamp black's K by .1 % and its S by 18 %.
 * @source optics-practice
 */
export const SCATTERING_BOUND = {
  /** Luminous reflectance of the masstone as read [1] below which stray light decides. */
  masstoneYMin: 0.05,
  /** Relative standard uncertainty of S [1]. */
  relativeUncertaintyMax: 0.25,
} as const;

export type ScatteringStatement = StatementOf<
  "scattering-known" | "scattering-is-bound",
  { relativeUncertainty: number; masstoneY: number }
>;

/**
 * Whether S of a fit is a figure or only a bound.
 * @returns `scattering-known` or `scattering-is-bound`, with median relative uncertainty and masstone Y [1].
 */
export function scatteringRuling(
  masstone: Measurement,
  { whites, chiSquare }: FitSolution,
): ScatteringStatement {
  const masstoneY = tristimulus(masstone.spectrum, "D65/10").Y / 100;
  const variance = median(whites.flatMap(({ varianceS }) => [...varianceS]));
  const relativeUncertainty = Math.sqrt(variance * Math.max(1, chiSquare));
  const isKnown =
    masstoneY >= SCATTERING_BOUND.masstoneYMin &&
    relativeUncertainty <= SCATTERING_BOUND.relativeUncertaintyMax;
  return {
    rule: isKnown ? "scattering-known" : "scattering-is-bound",
    values: { relativeUncertainty, masstoneY },
    source: "optics-practice",
  };
}
