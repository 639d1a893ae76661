import type { ReadingNoise } from "../../colorimetry/reading-noise.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";

/**
 * How an instrument lights and looks: at 45 degrees and along the normal, or
 * diffusely and at 8 degrees with the mirror reflection let in or shut out.
 */
export const GEOMETRIES = ["45/0", "d/8 included", "d/8 excluded"] as const;
export type Geometry = (typeof GEOMETRIES)[number];

/**
 * Surface constants of Saunderson's correction [1]: `k1` the share of outer light
 * that the surface throws back, `k2` the share of inner light that it throws back
 * inwards; both 0 for no correction. `index` is the refractive index n of the
 * film; left out, it is the one whose normal reflectance is k1.
 */
export interface SurfaceConstants {
  readonly k1: number;
  readonly k2: number;
  readonly index?: number;
}

/** Measured reflectance factors with what belongs to them; `surface` where the workshop knows it. */
export interface Measurement {
  readonly spectrum: Spectrum;
  readonly geometry: Geometry;
  readonly surface?: SurfaceConstants;
  /** Left out, that of a hand-held instrument in good order. */
  readonly noise?: ReadingNoise;
}
