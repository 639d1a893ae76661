/**
 * Driers added to the oil: metal soaps, reckoned as metal on oil by mass.
 *
 * Customary doses and what they do are rows of `driers.csv`.
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import { certain } from "../quantities/at.ts";
import type { Interval } from "../quantities/interval.ts";
import { estimated, type StatementOf } from "../quantities/statement.ts";
import type { SourceKey } from "../sources/source.ts";

export const DRIER_METALS = [
  "cobalt",
  "manganese",
  "lead",
  "zirconium",
  "calcium",
  "zinc",
] as const;
export type DrierMetal = (typeof DRIER_METALS)[number];

/** Where a drier dries the film: from the surface, all through, or only as a helper of the others. */
export const DRIER_PLACES = ["surface", "through", "auxiliary"] as const;

/** A row of `driers.csv`; the table has one for each metal. */
export interface DrierRow {
  readonly metal: DrierMetal;
  readonly acts: (typeof DRIER_PLACES)[number];
  /** Customary dose, metal on oil by mass [%]. */
  readonly customaryPercent: Interval;
  /** Days over days without it [1], at the customary dose. */
  readonly factor: Interval;
  readonly source: SourceKey;
}

/** Metal on oil [%] above which no drier is dosed: a figure of the soap, not of the metal, most likely. */
export const DRIER_REACH_PERCENT = 2;

export interface AddedDrier {
  readonly metal: DrierMetal;
  /** Metal on oil by mass [%], > 0. */
  readonly percentOnOil: number;
}

/**
 * Row of a drier and the share in which it acts: in full from the lower customary dose on.
 * @param rows of `driers.csv`.
 * @throws RangeError when the dose is not above 0, or beyond any drier's reach.
 */
export function drierDose(
  { metal, percentOnOil }: AddedDrier,
  rows: readonly DrierRow[],
): { readonly row: DrierRow; readonly share: number } {
  if (!(percentOnOil > 0 && percentOnOil <= DRIER_REACH_PERCENT)) {
    throw domainError(`${metal} on oil`, percentOnOil, `0 < percent <= ${DRIER_REACH_PERCENT}`);
  }
  const row = certain(rows.find((candidate) => candidate.metal === metal));
  return { row, share: Math.min(1, percentOnOil / row.customaryPercent[0]) };
}

export type DrierWarning =
  | StatementOf<
      "drier-above-customary",
      {
        readonly metal: DrierMetal;
        /** Metal on oil by mass [%]. */
        readonly percentOnOil: number;
        readonly customaryPercent: Interval;
      }
    >
  | StatementOf<"surface-drier-alone", { readonly metals: readonly DrierMetal[] }>;

/** A dose above the customary one, or a surface drier with nothing that dries through: each makes a skin that wrinkles. */
export function drierWarnings(
  driers: readonly AddedDrier[],
  rows: readonly DrierRow[],
): DrierWarning[] {
  const dosed = driers.map((drier) => ({ drier, ...drierDose(drier, rows) }));
  const overdosed = dosed
    .filter(({ drier, row }) => drier.percentOnOil > row.customaryPercent[1])
    .map(({ drier, row }): DrierWarning =>
      estimated(
        "drier-above-customary",
        {
          metal: row.metal,
          percentOnOil: drier.percentOnOil,
          customaryPercent: row.customaryPercent,
        },
        row.source,
      ),
    );
  const metals = dosed.filter(({ row }) => row.acts === "surface").map(({ row }) => row.metal);
  if (metals.length === 0 || dosed.some(({ row }) => row.acts === "through")) return overdosed;
  return [...overdosed, estimated("surface-drier-alone", { metals }, "practice-drying")];
}
