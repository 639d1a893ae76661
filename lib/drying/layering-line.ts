/**
 * Where in a painting a paint belongs, in one line: fat, drying and the health of the film weighed
 * together, so that no two sentences send it to two places.
 *
 * @source rogala-2010 for zinc; practice-drying for the rest.
 */
import { estimated, type StatementOf } from "../quantities/statement.ts";
import type { DryingClass } from "./drying-class.ts";
import type { Fatness } from "./oil-richness.ts";
import type { SourceKey } from "../sources/source.ts";

export type LayeringLine = StatementOf<
  | "zinc-out-of-underlayers"
  | "fast-and-fat-thinly-below"
  | "fast-for-lower-layers"
  | "medium-for-any-layer"
  | "stirred-into-any-layer"
  | "slow-but-lean-dry-it-through"
  | "slow-for-last-layers",
  Record<string, never>
>;

/** Share of the dry pigment by mass [1] from which zinc oxide decides where a paint belongs. */
const ZINC_DECIDES_FROM = 0.05;

/**
 * @param dryingClass the slowest that its days reach into: a layer that may dry slowly is laid as one that does.
 * @param zincShare of zinc oxide in the dry pigment by mass, 0-1.
 * @param fatness undefined where the oil of the dry film is not known.
 * @param isMedium whether it is stirred into other paint, as an extender is, and laid by itself by nobody.
 */
export function layeringLine(
  dryingClass: DryingClass,
  fatness: Fatness | undefined,
  zincShare: number,
  isMedium = false,
): LayeringLine {
  if (zincShare >= ZINC_DECIDES_FROM) return line("zinc-out-of-underlayers", "rogala-2010");
  if (isMedium) return line("stirred-into-any-layer");
  if (dryingClass === "fast")
    return line(fatness === "fat" ? "fast-and-fat-thinly-below" : "fast-for-lower-layers");
  if (dryingClass === "medium") return line("medium-for-any-layer");
  return line(fatness === "lean" ? "slow-but-lean-dry-it-through" : "slow-for-last-layers");
}

function line(rule: LayeringLine["rule"], source: SourceKey = "practice-drying"): LayeringLine {
  return estimated(rule, {}, source);
}
