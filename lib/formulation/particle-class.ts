/**
 * How a pigment's grain behaves under the muller: whether it holds together in
 * clumps that shearing by hand does not open.
 *
 * @source practice-formulation : an estimate, to be overridden by a fineness of grind.
 */
import { requirePositive } from "../quantities/positive.ts";

export type ParticleClass = "fine carbon" | "fine" | "coarse";

/** A grain of this size or more [um] is mulled out by hand as well as by a mill. */
const COARSE_FROM_UM = 5;

export interface Particle {
  /** A carbon of smoke or gas: grains far below a micrometre, in chains and clumps. */
  readonly isFineCarbon: boolean;
  /** Median diameter of the grain [um]. */
  readonly sizeUm?: number | undefined;
}

/**
 * @returns `fine` when nothing is known: the usual case for a pigment of the trade.
 * @throws RangeError when a size is given that is not a finite number above 0.
 */
export function particleClass({ isFineCarbon, sizeUm }: Particle): ParticleClass {
  if (sizeUm !== undefined) {
    requirePositive("particle size", sizeUm, "um");
    if (sizeUm >= COARSE_FROM_UM) return "coarse";
  }
  return isFineCarbon ? "fine carbon" : "fine";
}
