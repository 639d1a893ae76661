/**
 * Driers added to the oil: metal soaps, reckoned as metal on oil by mass.
 *
 * @source memory-drying : customary doses and what they do, recalled.
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import type { Interval } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";
import { certain } from "../quantities/at.ts";

export type DrierMetal = "cobalt" | "manganese" | "lead" | "zirconium" | "calcium" | "zinc";

export interface DrierRow {
  readonly metal: DrierMetal;
  /** Where it dries the film: from the surface, all through, or only as a helper of the others. */
  readonly acts: "surface" | "through" | "auxiliary";
  /** Customary dose, metal on oil by mass [%]. */
  readonly customaryPercent: Interval;
  /** Days over days without it [1], at the customary dose. */
  readonly factor: Interval;
}

export const DRIERS: readonly DrierRow[] = [
  { metal: "cobalt", acts: "surface", customaryPercent: [0.02, 0.06], factor: [0.3, 0.5] },
  { metal: "manganese", acts: "surface", customaryPercent: [0.02, 0.06], factor: [0.4, 0.6] },
  { metal: "lead", acts: "through", customaryPercent: [0.1, 0.5], factor: [0.5, 0.8] },
  { metal: "zirconium", acts: "through", customaryPercent: [0.1, 0.3], factor: [0.7, 0.95] },
  { metal: "calcium", acts: "auxiliary", customaryPercent: [0.05, 0.2], factor: [0.85, 1] },
  { metal: "zinc", acts: "auxiliary", customaryPercent: [0.05, 0.2], factor: [1, 1.1] },
];

/** Metal on oil [%] above which no drier is dosed: a figure of the soap, not of the metal, most likely. */
export const DRIER_REACH_PERCENT = 2;

export interface AddedDrier {
  readonly metal: DrierMetal;
  /** Metal on oil by mass [%], > 0. */
  readonly percentOnOil: number;
}

/**
 * Row of a drier and the share in which it acts: in full from the lower customary dose on.
 * @throws RangeError when the dose is not above 0, or beyond any drier's reach.
 */
export function drierDose({ metal, percentOnOil }: AddedDrier): {
  readonly row: DrierRow;
  readonly share: number;
} {
  if (!(percentOnOil > 0 && percentOnOil <= DRIER_REACH_PERCENT)) {
    throw domainError(`${metal} on oil`, percentOnOil, `0 < percent <= ${DRIER_REACH_PERCENT}`);
  }
  const row = certain(DRIERS.find((candidate) => candidate.metal === metal));
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
export function drierWarnings(driers: readonly AddedDrier[]): DrierWarning[] {
  const rows = driers.map((drier) => ({ drier, ...drierDose(drier) }));
  const overdosed = rows
    .filter(({ drier, row }) => drier.percentOnOil > row.customaryPercent[1])
    .map(({ drier, row }): DrierWarning => ({
      rule: "drier-above-customary",
      values: {
        metal: row.metal,
        percentOnOil: drier.percentOnOil,
        customaryPercent: row.customaryPercent,
      },
      standing: "estimated",
      source: "memory-drying",
    }));
  const metals = rows.filter(({ row }) => row.acts === "surface").map(({ row }) => row.metal);
  if (metals.length === 0 || rows.some(({ row }) => row.acts === "through")) return overdosed;
  return [
    ...overdosed,
    {
      rule: "surface-drier-alone",
      values: { metals },
      standing: "estimated",
      source: "practice-drying",
    },
  ];
}
