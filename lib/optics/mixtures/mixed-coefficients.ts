/** K and S of what is made of paints whose K and S are known, by volume. */
import { requirePositive } from "../../quantities/positive.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import { sameGrid } from "../../quantities/spectrum.ts";
import type { PredictingFit } from "../fit/colour-fit.ts";
import type { FilmCoefficients } from "../films/film-coefficients.ts";
import { spectrumLab } from "../../colorimetry/spectrum-lab.ts";
import { masstoneReflectance } from "../kubelka-munk.ts";
import { surfaceForm } from "../surface/surface.ts";
import { readingOf } from "../tints/tint-reading.ts";
import { at } from "../../quantities/at.ts";

/**
 * Absolute K and S of a colour that was let down in a white whose own are known.
 *
 *     K = K_rel S_w d,  S = S_rel S_w d
 *
 * @param density d [1]: of the colour over that of the white, of the paints where paint was weighed, of the
 *   pigment in a cm3 of each paint where pigment was weighed.
 * @returns coefficients [1/um]; rules `no-such-white`, `scattering-is-bound` is the fit's own
 *   and goes with them: of a black only K holds.
 * @throws RangeError when the ratio of densities is not positive, or the white's film is on another grid than the fit.
 * @source duncan-1940
 */
export function absoluteCoefficients(
  fit: PredictingFit,
  white: string,
  whitePaint: FilmCoefficients,
  density: number,
): FilmCoefficients | NoSuchWhite {
  requirePositive("ratio of densities", density, "", "ratio");
  const fitted = fit.whites.find(({ slug }) => slug === white);
  if (fitted === undefined) return { rule: "no-such-white", values: { white } };
  if (!sameGrid(fit.grid, whitePaint.grid))
    throw new RangeError("Fit and film of the white are of several grids; right would be one");
  const absolute = (relative: readonly number[]): number[] =>
    relative.map((value, i) => value * at(whitePaint.S, i) * density);
  return {
    grid: fit.grid,
    K: absolute(fitted.K),
    S: absolute(fitted.S),
    surface: whitePaint.surface,
    atLeast: whitePaint.atLeast,
    scaleUncertainty: whitePaint.scaleUncertainty,
  };
}

export type NoSuchWhite = StatementOf<"no-such-white", { white: string }>;

/** What a medium does to the L* of a paint, gloss included. */
export type ExtenderStatement = StatementOf<
  "extender-hardly-lightens" | "extender-lightens",
  {
    volumes: number;
    fromL: number;
    toL: number;
    change: number;
    /** Its name, where the caller knows it. */
    colour?: string;
  }
>;

/** One paint of a mixture and its parts by volume. */
export interface VolumePart {
  readonly paint: FilmCoefficients;
  readonly parts: number;
}

/**
 * K and S of a mixture by volume.
 *
 *     K = Sum c_i K_i, S = Sum c_i S_i
 *
 * @throws RangeError when a part is negative, all are 0, or the grids differ.
 * @source duncan-1940
 */
export function mixedCoefficients(parts: readonly VolumePart[]): FilmCoefficients {
  const [first] = parts;
  const total = parts.reduce((sum, part) => sum + part.parts, 0);
  if (first === undefined || !(total > 0 && total < Infinity))
    throw domainError("sum of parts by volume", total, "0 < sum < Infinity");
  for (const { parts: share, paint } of parts) {
    if (!(share >= 0)) throw domainError("part by volume", share, "part >= 0");
    if (!sameGrid(paint.grid, first.paint.grid))
      throw domainError(
        "count of wavelengths",
        paint.grid.count,
        `the grid of the others, ${first.paint.grid.count}`,
      );
  }
  const mixed = (pick: (paint: FilmCoefficients) => readonly number[]): number[] =>
    first.paint.K.map((_, i) =>
      parts.reduce((sum, { paint, parts: share }) => sum + (share / total) * at(pick(paint), i), 0),
    );
  return {
    grid: first.paint.grid,
    K: mixed(({ K }) => K),
    S: mixed(({ S }) => S),
    surface: first.paint.surface,
    scaleUncertainty: Math.max(...parts.map(({ paint }) => paint.scaleUncertainty)),
    atLeast: [...new Set(parts.flatMap(({ paint }) => paint.atLeast))].sort(
      (one, other) => one - other,
    ),
  };
}

/** A paint let down with so many volumes of an extender medium, as a masstone. */
export interface ExtendedStep {
  readonly volumes: number;
  /** L* (D65/10), gloss included: gloss excluded, a black is too dark for the difference to be seen. */
  readonly L: number;
}

/** Volumes of medium to one of paint. */
const EXTENDER_VOLUMES: readonly number[] = [0, 1, 2, 5, 10];
/** Rise of L* [1] under which a large addition hardly lightens. */
const HARDLY_LIGHTENS = 5;

/**
 * An extender medium shown for what it is: how little even a large addition lightens a strong colour.
 * @returns steps, and rule `extender-hardly-lightens` or `extender-lightens` with volumes and the change of L*.
 * @source duncan-1940
 */
export function extendedPaint(
  paint: FilmCoefficients,
  medium: FilmCoefficients,
): { readonly steps: readonly ExtendedStep[]; readonly ruling: ExtenderStatement } {
  const form = surfaceForm("d/8 included", paint.surface);
  const steps = EXTENDER_VOLUMES.map((volumes) => {
    const { grid, K, S } = mixedCoefficients([
      { paint, parts: 1 },
      { paint: medium, parts: volumes },
    ]);
    return {
      volumes,
      L: spectrumLab({
        grid,
        values: K.map((value, i) => readingOf(form, masstoneReflectance(value / at(S, i)))),
      }).L,
    };
  });
  const { L: from } = at(steps, 0);
  const { L: to, volumes } = at(steps, steps.length - 1);
  return {
    steps,
    ruling: {
      rule: to - from < HARDLY_LIGHTENS ? "extender-hardly-lightens" : "extender-lightens",
      values: { volumes, fromL: from, toL: to, change: to - from },
    },
  };
}
