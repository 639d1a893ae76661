import type { UsableDrawdowns } from "../fit/drawdown.ts";
import type { Geometry, Measurement, SurfaceConstants } from "../fit/measurement.ts";
import { isNoSurface, NO_SURFACE, OIL_SURFACE } from "./surface.ts";

/** Which constants a fit took off, and why those. */
export interface SurfaceChoice {
  readonly surface: SurfaceConstants;
  readonly by: "stated" | "leave-one-out" | "default";
}

/** All readings of a set: masstone, whites, let-downs. */
export function readingsOf({ masstone, whites, tints }: UsableDrawdowns): Measurement[] {
  return [masstone, ...whites.map((white) => white.masstone), ...tints.map((tint) => tint.reading)];
}

/** Geometries of a set, each once. */
export function geometriesOf(set: UsableDrawdowns): Geometry[] {
  return [...new Set(readingsOf(set).map((reading) => reading.geometry))];
}

/**
 * Surface constants worth trying on a set, the default first.
 *
 * Constants that the workshop states with its readings are the only candidate.
 * Otherwise: without gloss, none before those of an oil film (on real paint-outs
 * none predicted better: stray light and geometry decide); with gloss included,
 * an oil film's before none, since the surface is most of what a black reads.
 * Readings of unlike geometry can't be brought together uncorrected.
 *
 * @returns candidates; empty when the readings state different constants.
 * @source oil-paint-outs
 */
export function surfaceCandidates(set: UsableDrawdowns): SurfaceConstants[] {
  const stated = readingsOf(set).flatMap(({ surface }) => (surface === undefined ? [] : [surface]));
  const geometries = geometriesOf(set);
  const mixed = geometries.length > 1;
  const [first] = stated;
  if (first !== undefined) {
    const alike = stated.every(
      ({ k1, k2, index }) => k1 === first.k1 && k2 === first.k2 && index === first.index,
    );
    return alike && !(mixed && isNoSurface(first)) ? [first] : [];
  }
  if (mixed) return [OIL_SURFACE];
  return geometries.includes("d/8 included")
    ? [OIL_SURFACE, NO_SURFACE]
    : [NO_SURFACE, OIL_SURFACE];
}
