/** One surface for all readings that a workshop took alike, so that any two of its colours can be mixed. */
import type { Geometry, Measurement, SurfaceConstants } from "../fit/measurement.ts";
import { isNoSurface, NO_SURFACE, OIL_SURFACE } from "./surface.ts";

/** Which constants were taken off, and why those. */
export interface SurfaceChoice {
  readonly surface: SurfaceConstants;
  /**
   * As recorded; the pair that predicts left-out let-downs of all colours read alike best; the usual one of
   * the geometry; that one with k1 kept under the darkest reading with gloss included.
   */
  readonly by: "stated" | "leave-one-out" | "default" | "darkest-reading";
}

/** Share of the darkest reading with gloss included [1] that k1 may not pass: some light comes out of any paint. */
const K1_OF_DARKEST = 0.97;

/** Colours whose masstones were read alike, so that any two of them may be mixed. */
export interface ReadingGroup {
  /** Of all their readings, let-downs and whites too. */
  readonly geometries: ReadonlySet<Geometry>;
  readonly readings: readonly Measurement[];
}

/** The group that readings of several colours make. */
export function readingGroup(readings: readonly Measurement[]): ReadingGroup {
  return { geometries: new Set(readings.map(({ geometry }) => geometry)), readings };
}

/**
 * Surface constants worth trying on a group, the default first.
 *
 * Constants that the workshop states with its readings are the only candidate. With
 * gloss included a film always has a surface: that of an oil film, its k1 kept under
 * the darkest reading. Without gloss stray light and geometry decide, so that none and
 * an oil film's are both tried. Readings of unlike geometry need a surface to be brought
 * together.
 *
 * @returns candidates; empty when the readings state different constants, or none for unlike geometries.
 * @source saunderson-1942, oil-paint-outs
 */
export function surfaceCandidates({ geometries, readings }: ReadingGroup): SurfaceChoice[] {
  const stated = readings.flatMap(({ surface }) => (surface === undefined ? [] : [surface]));
  const [first] = stated;
  if (first !== undefined) {
    const alike = stated.every(
      ({ k1, k2, index }) => k1 === first.k1 && k2 === first.k2 && index === first.index,
    );
    return alike && !(geometries.size > 1 && isNoSurface(first))
      ? [{ surface: first, by: "stated" }]
      : [];
  }
  if (geometries.has("d/8 included")) return [surfaceUnder(darkestIncluded(readings))];
  const oil: SurfaceChoice = { surface: OIL_SURFACE, by: "default" };
  return geometries.size > 1 ? [oil] : [{ surface: NO_SURFACE, by: "default" }, oil];
}

/**
 * An oil film's constants with k1 kept under a darkest reading.
 * @param darkest reflectance factor [1]; Infinity for none.
 */
function surfaceUnder(darkest: number): SurfaceChoice {
  const k1 = Math.max(K1_OF_DARKEST * darkest, 0);
  return k1 < OIL_SURFACE.k1
    ? { surface: { k1, k2: OIL_SURFACE.k2 }, by: "darkest-reading" }
    : { surface: OIL_SURFACE, by: "default" };
}

/** Surface of a paint that was drawn down as films: as stated, else an oil film's, its k1 kept under the darkest of them. */
export function filmSurface(films: readonly Measurement[]): SurfaceConstants {
  return films[0]?.surface ?? surfaceUnder(darkestIncluded(films)).surface;
}

function darkestIncluded(readings: readonly Measurement[]): number {
  return Math.min(
    ...readings
      .filter(({ geometry }) => geometry === "d/8 included")
      .flatMap(({ spectrum }) => spectrum.values),
  );
}
