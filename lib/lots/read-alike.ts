/** Readings brought to where they can be held against each other: one geometry, one grid. */
import { commonGrid, measurementOnGrid } from "../optics/fit/common-grid.ts";
import type { Measurement } from "../optics/fit/measurement.ts";
import { unstatedSurface } from "../optics/surface/measurement-in-geometry.ts";
import type { Bench } from "./let-down-absorption.ts";

/** How readings like this one are taken, its surface as recorded or the usual one. */
export function benchOf(reading: Measurement): Bench {
  return {
    grid: reading.spectrum.grid,
    geometry: reading.geometry,
    surface: reading.surface ?? unstatedSurface(reading),
  };
}

/**
 * Where several readings meet: the surface of the first, and the wavelengths that all have, in the coarsest of their steps.
 * @returns undefined where they are of several geometries.
 */
export function commonBench(
  first: Measurement,
  ...others: readonly Measurement[]
): Bench | undefined {
  const readings = [first, ...others];
  if (!readings.every(({ geometry }) => geometry === first.geometry)) return undefined;
  const grid = commonGrid(readings.map(({ spectrum }) => spectrum.grid));
  return grid && { ...benchOf(first), grid };
}

/** A reading as a bench takes it; undefined where it is of another geometry, or does not reach over the bench's wavelengths. */
export function onBench<M extends Measurement>(
  reading: M,
  { geometry, grid }: Pick<Bench, "geometry" | "grid">,
): M | undefined {
  return reading.geometry === geometry ? measurementOnGrid(reading, grid) : undefined;
}
