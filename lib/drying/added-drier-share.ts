/**
 * What added driers together do to the days: the strongest in full, a further one by half, and
 * by half too beside a pigment that dries; carbon takes up to half of each.
 *
 * @source practice-drying : a rule of this project.
 */
import { spanning, type Interval, type Quantity } from "../quantities/interval.ts";
import { estimated, type StatementOf } from "../quantities/statement.ts";
import { drierDose, type AddedDrier, type DrierMetal, type DrierRow } from "./added-drier.ts";
import { inPart, signOf, type Contribution } from "./contribution.ts";
import type { ChemicalPart } from "./pigment-contributions.ts";

/** Share in which a further one of a kind acts beside a stronger one. */
const FURTHER_SHARE = 0.5;

export type DrierStatement = StatementOf<
  "added-drier" | "carbon-takes-up-drier",
  {
    readonly metal: DrierMetal;
    /** Metal on oil by mass [%]. */
    readonly percentOnOil: number;
    readonly acts: DrierRow["acts"];
    readonly factor: Interval;
  }
>;

/** @param rows of `driers.csv`. */
export function drierContributions(
  driers: readonly AddedDrier[],
  pigments: readonly ChemicalPart[],
  rows: readonly DrierRow[],
): Contribution<DrierStatement>[] {
  const carbon = pigments.some(({ chemistry }) => chemistry.chemistry === "fine carbon");
  const dries = pigments.some(({ chemistry }) => chemistry.effect === "drier");
  return driers
    .map((drier) => ({ drier, ...drierDose(drier, rows) }))
    .toSorted((one, other) => strength(other) - strength(one))
    .map(({ drier: { metal, percentOnOil }, row, share }, i) => {
      const acting = i > 0 || dries ? share * FURTHER_SHARE : share;
      const factor = actingFactor(row.factor, carbon ? [acting * FURTHER_SHARE, acting] : acting);
      return {
        sign: signOf(factor),
        factor,
        statement: estimated(
          carbon ? "carbon-takes-up-drier" : "added-drier",
          { metal, percentOnOil, acts: row.acts, factor },
          row.source,
        ),
      };
    });
}

function actingFactor(factor: Interval, share: Quantity): Interval {
  if (typeof share === "number") return inPart(factor, share);
  return spanning(share.map((end) => inPart(factor, end)));
}

function strength({ row, share }: { readonly row: DrierRow; readonly share: number }): number {
  return Math.abs(Math.log(row.factor[0] * row.factor[1])) * share;
}
