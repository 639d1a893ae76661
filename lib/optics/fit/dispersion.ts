/** What lumps left in the paint cost: the same pigment mulled and milled. */
import { requirePositive } from "../../quantities/positive.ts";
import { domainError } from "../../diagnostics/diagnostic.ts";
import { at } from "../../quantities/at.ts";
import type { Interval } from "../../quantities/interval.ts";
import { estimated, type StatementOf } from "../../quantities/statement.ts";

/**
 * Share of its tinting strength [1] that carbon keeps when it is left in lumps of a
 * diameter [um]: an estimate, by Lorenz-Mie calculation over what is not known of them.
 * @source agglomerate-strength
 */
export const LUMP_STRENGTH = [
  { lumpUm: 0.5, kept: [0.45, 0.59] },
  { lumpUm: 1, kept: [0.23, 0.34] },
  { lumpUm: 2, kept: [0.11, 0.17] },
  { lumpUm: 5, kept: [0.04, 0.07] },
] as const satisfies readonly { lumpUm: number; kept: Interval }[];

/** Mulled beside milled, as drawn down. */
export type MeasuredDispersion = StatementOf<
  "milled-stronger" | "mulled-stronger" | "alike-mulled-and-milled",
  {
    strength: number;
    /** The white in which the two were held against each other, where the caller names it. */
    white?: string;
  }
>;

/** What is expected of mulling where only one of the two was drawn down. */
export type ExpectedDispersion =
  | StatementOf<"mulled-weaker", Record<string, never>>
  | StatementOf<"mulled-weaker-paler-bluer", { kept: Interval; lumpsUm: Interval }>;

/** Difference in strength [1] under which two drawdowns of one pigment are called alike: ratio error on both. */
const ALIKE = 0.1;

/**
 * Share of its strength that carbon in lumps of one size keeps.
 *
 * @param lumpUm diameter [um], 0.5 <= d <= 5: straight between the rows on logarithmic scales.
 * @returns the estimate's two ends [1].
 * @throws RangeError when the diameter is outside the rows, or NaN.
 * @source agglomerate-strength
 * @example strengthKeptInLumps(1) // [0.23, 0.34]
 */
export function strengthKeptInLumps(lumpUm: number): Interval {
  if (!(lumpUm >= 0.5 && lumpUm <= 5))
    throw domainError("diameter of lumps", lumpUm, "0.5 <= d <= 5 um");
  const upper = LUMP_STRENGTH.findIndex((row) => row.lumpUm >= lumpUm);
  const [small, large] = [at(LUMP_STRENGTH, Math.max(upper - 1, 0)), at(LUMP_STRENGTH, upper)];
  const span = Math.log(large.lumpUm / small.lumpUm);
  const share = span === 0 ? 0 : Math.log(lumpUm / small.lumpUm) / span;
  const between = (one: number, other: number): number => one * (other / one) ** share;
  return [between(small.kept[0], large.kept[0]), between(small.kept[1], large.kept[1])];
}

/**
 * Mulled against milled, from drawdowns of both.
 * @param strength of the mulled beside the milled paint at equal mass ratio [1], > 0.
 * @returns `milled-stronger`, `mulled-stronger` or `alike-mulled-and-milled`, with the strength.
 * @throws RangeError when the strength is not positive, or NaN.
 * @source optics-practice
 */
export function measuredDispersionRuling(strength: number): MeasuredDispersion {
  requirePositive("relative strength", strength, "", "strength");
  const rule =
    strength < 1 - ALIKE
      ? "milled-stronger"
      : strength > 1 + ALIKE
        ? "mulled-stronger"
        : "alike-mulled-and-milled";
  return { rule, values: { strength }, standing: "derived", source: "optics-practice" };
}

/** Lumps [um] that mulling by hand commonly leaves in carbon: a guess, no source. */
const MULLED_LUMPS_UM: Interval = [0.5, 1];

/**
 * What to expect of mulling where only one of the two was drawn down.
 *
 * @param isFineCarbon a carbon black; of other pigments only the direction is told.
 * @returns `mulled-weaker-paler-bluer` with the share of strength kept and the lumps it is reckoned for, or
 *   `mulled-weaker` without a figure; an estimate. A grind gauge shows the few largest lumps, and no use here.
 * @source agglomerate-strength
 */
export function expectedDispersionRuling(isFineCarbon: boolean): ExpectedDispersion {
  if (!isFineCarbon) return estimated("mulled-weaker", {}, "optics-practice");
  const kept: Interval = [
    strengthKeptInLumps(MULLED_LUMPS_UM[1])[0],
    strengthKeptInLumps(MULLED_LUMPS_UM[0])[1],
  ];
  return estimated(
    "mulled-weaker-paler-bluer",
    { kept, lumpsUm: MULLED_LUMPS_UM },
    "agglomerate-strength",
  );
}
