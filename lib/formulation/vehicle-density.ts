/**
 * Densities of drying oils at room temperature [g/cm3], where a record is silent.
 *
 * @source memory-formulation
 */
import type { Interval } from "../quantities/interval.ts";

export type Oil = "linseed" | "walnut" | "safflower" | "poppy" | "stand linseed";

export const OIL_DENSITY_G_PER_CM3: Readonly<Record<Oil, Interval>> = {
  linseed: [0.925, 0.935],
  walnut: [0.92, 0.93],
  safflower: [0.92, 0.93],
  poppy: [0.92, 0.93],
  "stand linseed": [0.955, 0.975],
};
