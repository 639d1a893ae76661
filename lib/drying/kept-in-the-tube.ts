/**
 * What becomes of an added drier while the paint is kept: a fine carbon goes on
 * taking up the metals that dry from the surface, so that old paint dries slower than fresh.
 * Calcium is put in to be taken up in their place, and then nothing is said.
 *
 * @source practice-drying
 */
import { estimated, type StatementOf } from "../quantities/statement.ts";
import { drierDose, type AddedDrier, type DrierMetal, type DrierRow } from "./added-drier.ts";
import type { DryingPigment } from "./drying-estimate.ts";

export type KeptPaintStatement = StatementOf<
  "drier-is-lost-in-the-tube",
  { readonly metals: readonly DrierMetal[] }
>;

/** The drier that is taken up before the others. */
const TAKEN_UP_FIRST: DrierMetal = "calcium";

/**
 * Of a paint with enough fine carbon to act in full; a share not recorded counts as enough.
 * @param rows of `driers.csv`.
 * @throws RangeError when a drier's dose lies beyond reach.
 */
export function keptPaintStatements(
  driers: readonly AddedDrier[],
  pigments: readonly DryingPigment[],
  rows: readonly DrierRow[],
): KeptPaintStatement[] {
  const holdsCarbon = pigments.some(
    ({ chemistry, massFraction = 1 }) =>
      chemistry?.chemistry === "fine carbon" && massFraction >= chemistry.fullFromMassFraction,
  );
  const metals = driers
    .filter((drier) => drierDose(drier, rows).row.acts === "surface")
    .map(({ metal }) => metal);
  if (!holdsCarbon || metals.length === 0) return [];
  if (driers.some(({ metal }) => metal === TAKEN_UP_FIRST)) return [];
  return [estimated("drier-is-lost-in-the-tube", { metals }, "practice-drying")];
}
