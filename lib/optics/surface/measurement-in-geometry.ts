import type { Statement } from "../../quantities/statement.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";
import type { Geometry, Measurement, SurfaceConstants } from "../fit/measurement.ts";
import { isNoSurface, surfaceForm } from "./surface.ts";
import { internalOf, readingOf } from "../tints/tint-reading.ts";

/**
 * Internal reflectances behind a reading [1], each kept in 0-1, and at how many
 * wavelengths the reading did not pass the surface over it (taken as 0).
 * @source saunderson-1942
 */
export function internalReflectances(
  { spectrum, geometry }: Measurement,
  surface: SurfaceConstants,
): { readonly values: readonly number[]; readonly hidden: number } {
  const form = surfaceForm(geometry, surface);
  const raw = spectrum.values.map((value) => internalOf(form, value));
  const hidden = form.offset === 0 ? 0 : raw.filter((R) => !(R > 0)).length;
  return { values: raw.map((R) => Math.min(Math.max(R, 0), 1)), hidden };
}

/**
 * What another geometry would read of the same film: with only a gloss-included
 * reading, the darker one that the eye meets.
 *
 * @param surface constants of the film; no correction can't tell one geometry from another.
 * @returns the spectrum; rule `geometry-needs-surface`, or `masstone-not-told-from-surface` when the
 *   reading does not pass k1 at most wavelengths.
 * @validity a smooth, glossy film: a matte one throws its surface light in every direction.
 * @source saunderson-1942
 */
export function readingInGeometry(
  reading: Measurement,
  geometry: Geometry,
  surface: SurfaceConstants,
): Spectrum | Statement {
  const { grid } = reading.spectrum;
  if (reading.geometry === geometry) return reading.spectrum;
  if (isNoSurface(surface))
    return {
      rule: "geometry-needs-surface",
      values: { from: reading.geometry, to: geometry },
      source: "saunderson-1942",
    };
  const { values, hidden } = internalReflectances(reading, surface);
  if (hidden > grid.count / 2)
    return {
      rule: "masstone-not-told-from-surface",
      values: { k1: surface.k1, wavelengths: hidden },
      source: "saunderson-1942",
    };
  const form = surfaceForm(geometry, surface);
  return { grid, values: values.map((R) => readingOf(form, R)) };
}
