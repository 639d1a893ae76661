import { tristimulus } from "../../colorimetry/tristimulus.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";
import type { Geometry, Measurement, SurfaceConstants } from "../fit/measurement.ts";
import { smoothSurface } from "./fresnel.ts";
import { isNoSurface, OIL_SURFACE, surfaceForm } from "./surface.ts";
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

/** More of its own luminance than this [1] a masstone may not lack under the surface that is taken off. */
const LACKING_MAX = 0.1;

export type NotToldFromSurface = StatementOf<
  "masstone-not-told-from-surface",
  { k1: number; wavelengths: number }
>;

/** Why nothing is said of what lies under a surface. */
export type UnderSurfaceStatement =
  NotToldFromSurface | StatementOf<"masstone-near-its-surface", { k1: number; lacking: number }>;

/** Why a reading is not brought to another geometry. */
export type GeometryStatement =
  UnderSurfaceStatement | StatementOf<"geometry-needs-surface", { from: Geometry; to: Geometry }>;

/**
 * Why a reading with gloss included does not tell what lies under its surface: at most wavelengths
 * it reads no more than the surface alone, or what it lacks there, which counts as 0, is more than
 * a tenth of the Y that remains.
 *
 * @returns `masstone-not-told-from-surface` or `masstone-near-its-surface`; undefined where it tells.
 * @source saunderson-1942
 */
export function surfaceStatement(
  reading: Measurement,
  surface: SurfaceConstants,
): UnderSurfaceStatement | undefined {
  const { spectrum, geometry } = reading;
  const { grid } = spectrum;
  const { values, hidden } = internalReflectances(reading, surface);
  if (hidden > grid.count / 2)
    return {
      rule: "masstone-not-told-from-surface",
      values: { k1: surface.k1, wavelengths: hidden },
      source: "saunderson-1942",
    };
  const { offset } = surfaceForm(geometry, surface);
  const without = surfaceForm("d/8 excluded", surface);
  const luminance = (of: readonly number[]): number =>
    tristimulus({ grid, values: of }, "D65/10").Y;
  const lacking = luminance(spectrum.values.map((value) => Math.max(offset - value, 0)));
  const left = luminance(values.map((R) => readingOf(without, R)));
  return lacking > LACKING_MAX * left
    ? {
        rule: "masstone-near-its-surface",
        values: { k1: surface.k1, lacking: left > 0 ? lacking / left : 1 },
        source: "saunderson-1942",
      }
    : undefined;
}

/** Refractive indices of dried oil and of what binds it thinner, the usual one first. @source optics-practice */
const SURFACE_INDICES = [1.5, 1.48, 1.46] as const;

/**
 * The surface of a paint that was recorded without constants: an oil film's, with gloss included as thin
 * as its darkest reading asks for, down to n 1.46.
 */
export function unstatedSurface({ spectrum, geometry }: Measurement): SurfaceConstants {
  const [usual, ...thinner] = SURFACE_INDICES.map(smoothSurface);
  if (usual === undefined || geometry !== "d/8 included") return OIL_SURFACE;
  const darkest = Math.min(...spectrum.values);
  return [usual, ...thinner].find(({ k1 }) => k1 <= darkest) ?? thinner.at(-1) ?? usual;
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
): Spectrum | GeometryStatement {
  const { grid } = reading.spectrum;
  if (reading.geometry === geometry) return reading.spectrum;
  if (isNoSurface(surface))
    return {
      rule: "geometry-needs-surface",
      values: { from: reading.geometry, to: geometry },
      source: "saunderson-1942",
    };
  const untold = surfaceStatement(reading, surface);
  if (untold !== undefined) return untold;
  const { values } = internalReflectances(reading, surface);
  const form = surfaceForm(geometry, surface);
  return { grid, values: values.map((R) => readingOf(form, R)) };
}
