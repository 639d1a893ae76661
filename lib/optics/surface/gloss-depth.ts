/** What gloss does to a colour's depth: the same film glossy, satin and matte, as eye and instrument meet it. */
import { certain } from "../../quantities/at.ts";
import { munsellValue } from "../../colorimetry/munsell-value.ts";
import { tristimulus } from "../../colorimetry/tristimulus.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import type { Interval } from "../../quantities/interval.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import {
  internalReflectances,
  surfaceStatement,
  unstatedSurface,
  type GeometryStatement,
} from "./measurement-in-geometry.ts";
import type { Measurement, SurfaceConstants } from "../fit/measurement.ts";
import { isNoSurface, surfaceForm } from "./surface.ts";

export const FINISHES = ["glossy", "satin", "matte"] as const;
export type Finish = (typeof FINISHES)[number];

/**
 * Share of the surface light [1] that reaches an eye (or an instrument, gloss
 * excluded) which looks away from the mirror direction: none from a mirror, all
 * from a matte surface; satin between, an estimate with no source.
 * @source optics-practice
 */
export const SURFACE_LIGHT_SEEN: Readonly<Record<Finish, Interval>> = {
  glossy: [0, 0],
  satin: [0.05, 0.5],
  matte: [1, 1],
};

/** Difference of Munsell value under which gloss is not spoken of. */
const VALUE_CHANGE_MIN = 0.3;

/** Lightness of a finish: one figure, or an estimate's two ends. */
export interface Depth {
  readonly finish: Finish;
  readonly specular: "excluded" | "included";
  /** L* (D65/10). */
  readonly L: Interval;
  /** Munsell value (C/2). */
  readonly value: Interval;
  /** Reading [1] at either end, for a strip; shape (2, count). */
  readonly values: readonly [readonly number[], readonly number[]];
}

export type GlossDepthStatement = StatementOf<
  "gloss-deepens" | "gloss-hardly-deepens",
  { glossyL: number; matteL: number; LChange: number; valueChange: number }
>;

export interface GlossDepth {
  readonly depths: readonly Depth[];
  readonly ruling: GlossDepthStatement;
}

/**
 * A colour in three finishes, gloss excluded and included.
 *
 * An instrument that lets the gloss in reads all three alike; the eye, looking past
 * the glare, does not. Glossy is excluded, matte is included, whatever the geometry.
 *
 * @param masstone reading of a glossy film; its surface constants, else those of an oil film.
 * @returns depths in the order glossy, satin, matte, excluded before included, with rule `gloss-deepens`
 *   or `gloss-hardly-deepens`; or rule `masstone-not-told-from-surface`, `masstone-near-its-surface`, `geometry-needs-surface`.
 * @validity smooth films; a matte film by voids also scatters more inside, and is paler still.
 * @source saunderson-1942
 */
export function glossDepth(masstone: Measurement): GlossDepth | GeometryStatement {
  const surface: SurfaceConstants = masstone.surface ?? unstatedSurface(masstone);
  if (isNoSurface(surface))
    return {
      rule: "geometry-needs-surface",
      values: { from: masstone.geometry, to: "d/8 excluded" },
      source: "saunderson-1942",
    };
  const { grid } = masstone.spectrum;
  const untold = surfaceStatement(masstone, surface);
  if (untold !== undefined) return untold;
  const { values: internal } = internalReflectances(masstone, surface);
  const depths = FINISHES.flatMap((finish) =>
    (["excluded", "included"] as const).map((specular) =>
      depth(grid, internal, surface, finish, specular),
    ),
  );
  return { depths, ruling: glossRuling(depths) };
}

function depth(
  grid: WavelengthGrid,
  internal: readonly number[],
  surface: SurfaceConstants,
  finish: Finish,
  specular: Depth["specular"],
): Depth {
  const { gain, k2 } = surfaceForm("d/8 excluded", surface);
  const seen: Interval = specular === "included" ? [1, 1] : SURFACE_LIGHT_SEEN[finish];
  const at = (share: number): number[] =>
    internal.map((R) => share * surface.k1 + (gain * R) / (1 - k2 * R));
  const [least, most] = [at(seen[0]), at(seen[1])];
  return {
    finish,
    specular,
    values: [least, most],
    L: [lightness(grid, least), lightness(grid, most)],
    value: [value(grid, least), value(grid, most)],
  };
}

function lightness(grid: WavelengthGrid, values: readonly number[]): number {
  return spectrumLab({ grid, values }).L;
}

function value(grid: WavelengthGrid, values: readonly number[]): number {
  return munsellValue(Math.min(tristimulus({ grid, values }, "C/2").Y, 100));
}

function glossRuling(depths: readonly Depth[]): GlossDepthStatement {
  const excluded = (finish: Finish): Depth | undefined =>
    depths.find((one) => one.finish === finish && one.specular === "excluded");
  const [glossy, matte] = [certain(excluded("glossy")), certain(excluded("matte"))];
  const [glossyL, matteL] = [glossy.L[0], matte.L[0]];
  const valueChange = matte.value[0] - glossy.value[0];
  return {
    rule: valueChange >= VALUE_CHANGE_MIN ? "gloss-deepens" : "gloss-hardly-deepens",
    source: "saunderson-1942",
    values: { glossyL, matteL, LChange: matteL - glossyL, valueChange },
  };
}
