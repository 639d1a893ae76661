/**
 * Fat and lean: how much of a dry film's volume is oil, 1 - PVC. Fat over lean is
 * judged by volume, since by mass a heavy pigment hides its oil.
 *
 * @source practice-drying : the limits are an estimate, set among ordinary recipes
 *   (lead, titanium and zinc white .5-.56; iron blacks and oxides .6-.65; lamp
 *   black .65; ochre, umbers and siennas .7 and more).
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import { ends, midpoint, type Quantity } from "../quantities/interval.ts";
import { estimated, type StatementOf } from "../quantities/statement.ts";
import { certain } from "../quantities/at.ts";

export type Fatness = "lean" | "medium" | "fat";

export type FatnessStatement = StatementOf<
  "lean-film" | "medium-fat-film" | "fat-film" | "fatness-not-told",
  { readonly oilVolumeFraction: Quantity }
>;

export interface FatnessLimit {
  readonly fatness: Fatness;
  /** Largest oil volume fraction [1] of this fatness, inclusive. */
  readonly oilVolumeFractionMax: number;
  readonly rule: Exclude<FatnessStatement["rule"], "fatness-not-told">;
}

export const FATNESS_LIMITS: readonly FatnessLimit[] = [
  { fatness: "lean", oilVolumeFractionMax: 0.56, rule: "lean-film" },
  { fatness: "medium", oilVolumeFractionMax: 0.68, rule: "medium-fat-film" },
  { fatness: "fat", oilVolumeFractionMax: 1, rule: "fat-film" },
];

/** Oil volume fraction [1] of the dry film above which a paint is fat. */
export const FAT_ABOVE = certain(
  FATNESS_LIMITS.find(({ fatness }) => fatness === "medium"),
).oilVolumeFractionMax;

export interface FatnessRuling {
  /** Undefined where an estimate reaches from lean to fat. */
  readonly fatness: Fatness | undefined;
  readonly reason: FatnessStatement;
}

/**
 * @param oilVolumeFraction 1 - PVC [1], 0-1; an estimate is judged at its middle, unless it reaches from lean to fat.
 * @throws RangeError when an end is not between 0 and 1.
 */
export function fatnessRuling(oilVolumeFraction: Quantity): FatnessRuling {
  requireFractionEnds(oilVolumeFraction);
  const [leanest, fattest] = ends(oilVolumeFraction).map(limitOf);
  const isTold = leanest?.fatness !== "lean" || fattest?.fatness !== "fat";
  const { fatness, rule } = limitOf(midpoint(oilVolumeFraction));
  return {
    fatness: isTold ? fatness : undefined,
    reason: estimated(isTold ? rule : "fatness-not-told", { oilVolumeFraction }, "practice-drying"),
  };
}

function limitOf(oilVolumeFraction: number): FatnessLimit {
  return certain(FATNESS_LIMITS.find((row) => oilVolumeFraction <= row.oilVolumeFractionMax));
}

/**
 * Oil [ml] that a paint takes before its dry film counts as fat; 0 for one that is fat.
 *
 *     (binder + oil) / (pigment + binder + oil) = limit
 *
 * @param pigmentMl > 0. @param binderMl > 0, what binds the film already.
 * @throws RangeError when either is not a finite number above 0.
 * @example oilBeforeFatMl(32, 56) // 12: 68 of 100 are oil then
 */
export function oilBeforeFatMl(pigmentMl: number, binderMl: number): number {
  for (const [what, ml] of [
    ["volume of pigment", pigmentMl],
    ["volume of binder", binderMl],
  ] as const) {
    if (!(ml > 0 && Number.isFinite(ml))) throw domainError(what, ml, "volume > 0 ml");
  }
  return Math.max(0, (pigmentMl * FAT_ABOVE) / (1 - FAT_ABOVE) - binderMl);
}

/** @throws RangeError unless every end lies between 0 and 1. */
function requireFractionEnds(quantity: Quantity): void {
  for (const end of ends(quantity)) {
    if (!(end > 0 && end < 1)) throw domainError("oil volume fraction", end, "0 < fraction < 1");
  }
}
