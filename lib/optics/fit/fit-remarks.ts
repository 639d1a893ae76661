/** What a fit says of itself: which surface it took off, and how well it meets the drawdowns. */
import { domainError } from "../../diagnostics/diagnostic.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import type { SurfaceChoice } from "../surface/workshop-surface.ts";
import { isNoSurface } from "../surface/surface.ts";

/** Mean square of residual over noise up to which a fit meets its drawdowns as well as reading and weighing allow. */
const WEIGHTED_RESIDUAL_MAX = 2;

export type SurfaceStatement = StatementOf<
  | "surface-stated"
  | "surface-under-darkest"
  | "surface-by-default"
  | "surface-by-leave-one-out"
  | "no-surface-by-default"
  | "no-surface-by-leave-one-out",
  { k1: number; k2: number }
>;

export type FitQualityStatement =
  | StatementOf<"fit-has-none-to-spare", Record<string, never>>
  | StatementOf<
      "fit-within-noise" | "fit-misses-more-than-noise",
      { weightedResidual: number; spare: number }
    >;

/**
 * Which surface constants were taken off, and why those.
 * @returns `surface-stated`, `surface-by-leave-one-out` or `surface-by-default`, with k1 and k2; where both are 0
 *   `no-surface-by-leave-one-out` or `no-surface-by-default`; `surface-under-darkest` where k1 is kept under the
 *   workshop's darkest reading.
 * @source saunderson-1942, oil-paint-outs
 */
export function surfaceRuling({ surface, by }: SurfaceChoice): SurfaceStatement {
  const values = { k1: surface.k1, k2: surface.k2 };
  if (by === "darkest-reading")
    return { rule: "surface-under-darkest", values, source: "saunderson-1942" };
  if (by === "stated") return { rule: "surface-stated", values, source: "saunderson-1942" };
  const rule =
    by === "default"
      ? isNoSurface(surface)
        ? "no-surface-by-default"
        : "surface-by-default"
      : isNoSurface(surface)
        ? "no-surface-by-leave-one-out"
        : "surface-by-leave-one-out";
  return { rule, values, source: "oil-paint-outs" };
}

/**
 * How well a fit meets its drawdowns.
 *
 * @param chiSquare mean square of residual over reading and weighing noise, for each degree of freedom, >= 0.
 * @param spare let-downs beyond one a white: with none the fit passes through them whatever they are.
 * @returns `fit-has-none-to-spare`, `fit-within-noise` or `fit-misses-more-than-noise`.
 * @throws RangeError when an argument is negative, or NaN.
 * @source optics-practice
 */
export function fitQualityRuling(chiSquare: number, spare: number): FitQualityStatement {
  if (!(chiSquare >= 0 && chiSquare < Infinity))
    throw domainError("weighted residual", chiSquare, "0 <= residual < Infinity");
  if (!(spare >= 0)) throw domainError("let-downs to spare", spare, "count >= 0");
  if (spare === 0) return { rule: "fit-has-none-to-spare", values: {}, source: "optics-practice" };
  const rule =
    chiSquare <= WEIGHTED_RESIDUAL_MAX ? "fit-within-noise" : "fit-misses-more-than-noise";
  return { rule, values: { weightedResidual: chiSquare, spare }, source: "optics-practice" };
}
