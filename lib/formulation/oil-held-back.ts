/**
 * Oil to hold back when a batch is begun: a paste loosens under the muller, so
 * that the last oil is added only once it is seen to be wanted.
 *
 * @source practice-formulation
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import type { Interval } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";
import { requirePositive } from "../quantities/positive.ts";

/** Customary share of the oil to keep by [1]. */
const CUSTOMARY_HOLD_BACK: Interval = [0.1, 0.2];

export type HoldBackStatement =
  | StatementOf<"paste-loosens-under-the-muller", { readonly fraction: Interval }>
  | StatementOf<
      "paste-loosens-down-to-rub-out" | "rub-out-takes-all-the-oil",
      { readonly fraction: Interval; readonly oilAbsorptionGPer100g: number }
    >;

export interface HoldBackRuling {
  /** Share of the batch's oil [1], 0-1. */
  readonly fraction: Interval;
  readonly reason: HoldBackStatement;
}

/**
 * @param oilIndexGPer100g [g/100 g], > 0.
 * @param oilAbsorptionGPer100g rub-out figure [g/100 g], > 0, where known: below it the
 *   pigment does not hold together, so the oil weighed first never falls under it.
 * @throws RangeError when a figure is not a finite number above 0.
 */
export function oilHeldBack(
  oilIndexGPer100g: number,
  oilAbsorptionGPer100g?: number,
): HoldBackRuling {
  requirePositive("oil index", oilIndexGPer100g, "g/100 g");
  if (oilAbsorptionGPer100g !== undefined)
    requirePositive("oil absorption", oilAbsorptionGPer100g, "g/100 g");
  const beyondRubOut =
    oilAbsorptionGPer100g === undefined
      ? 1
      : Math.max(0, (oilIndexGPer100g - oilAbsorptionGPer100g) / oilIndexGPer100g);
  const [least, most] = CUSTOMARY_HOLD_BACK;
  const fraction: Interval = [Math.min(least, beyondRubOut), Math.min(most, beyondRubOut)];
  const evidence = { standing: "estimated", source: "practice-formulation" } as const;
  return {
    fraction,
    reason:
      oilAbsorptionGPer100g === undefined || fraction[1] === most
        ? { rule: "paste-loosens-under-the-muller", values: { fraction }, ...evidence }
        : {
            rule: fraction[1] === 0 ? "rub-out-takes-all-the-oil" : "paste-loosens-down-to-rub-out",
            values: { fraction, oilAbsorptionGPer100g },
            ...evidence,
          },
  };
}

/** @throws RangeError unless both ends lie in 0-1 and in order. */
export function requireFractionRange(named: string, [lower, upper]: Interval): void {
  if (!(lower >= 0 && lower <= upper))
    throw domainError(named, lower, `0 <= ${named} <= upper end`);
  if (!(upper < 1)) throw domainError(named, upper, `${named} < 1`);
}
