/**
 * Paint that stays on slab and muller, or on the rolls, and does not reach a tube.
 *
 * @source practice-formulation : an estimate, to be overridden by the workshop's own weighings.
 */
import { spanning, type Interval } from "../quantities/interval.ts";
import { estimated, type StatementOf } from "../quantities/statement.ts";
import type { Dispersion } from "./dispersion.ts";

export type LossStatement =
  | StatementOf<
      "loss-on-slab" | "loss-on-mill" | "loss-on-slab-or-mill",
      { readonly fraction: Interval }
    >
  | StatementOf<"loss-of-lots", { readonly fraction: Interval; readonly lots: number }>;

export interface BatchLossRow {
  readonly dispersion: Dispersion;
  /** Share of the batch [1]. */
  readonly fraction: Interval;
  readonly rule: Exclude<LossStatement["rule"], "loss-of-lots">;
}

export const BATCH_LOSSES: readonly BatchLossRow[] = [
  { dispersion: "mulled", fraction: [0.02, 0.06], rule: "loss-on-slab" },
  { dispersion: "milled", fraction: [0.03, 0.08], rule: "loss-on-mill" },
];

export interface BatchLossRuling {
  readonly fraction: Interval;
  readonly reason: LossStatement;
}

/** @param dispersion unknown takes in both. */
export function batchLoss(dispersion: Dispersion | undefined): BatchLossRuling {
  const rows = BATCH_LOSSES.filter(
    (row) => dispersion === undefined || row.dispersion === dispersion,
  );
  const fraction = spanning(rows.map((row) => row.fraction));
  const [row] = rows;
  const rule = dispersion === undefined || row === undefined ? "loss-on-slab-or-mill" : row.rule;
  return {
    fraction,
    reason: estimated(rule, { fraction }, "practice-formulation"),
  };
}

/** What a workshop's own lots lost, in place of what is customary. @param fraction of all of them, least and most [1]. */
export function lossOfLots(fraction: Interval, lots: number): BatchLossRuling {
  return {
    fraction,
    reason: {
      rule: "loss-of-lots",
      values: { fraction, lots },
      standing: "measured",
      source: "practice-formulation",
    },
  };
}
