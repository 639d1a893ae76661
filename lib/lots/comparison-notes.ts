/** What a reader of a lot's verdict should know. A note that is new is a function named in the list. */
import type { SaidBy, StatementOf } from "../quantities/statement.ts";
import { areOfTwoCalibrations, type LotReading } from "./difference-uncertainty.ts";
import type { LotFigures } from "./lot-against-standard.ts";

/** What is read of a lot. */
export type Part = "masstone" | "let-down";

export interface Compared {
  readonly lot: Pick<LotFigures, "masstone" | "letDowns">;
  /** Of masstone and let-down the standard's and the lot's that are held together, as far as there are such. */
  readonly readings: readonly (readonly [
    standard: LotReading | undefined,
    lot: LotReading | undefined,
  ])[];
}

export const COMPARISON_NOTES = [underAnotherCalibration, notRead] as const;
export type ComparisonNote = SaidBy<typeof COMPARISON_NOTES>;

/** The instrument was calibrated anew between two readings: what it then errs by is in their difference. */
function underAnotherCalibration({
  readings,
}: Compared):
  | StatementOf<
      "read-under-another-calibration",
      { readonly lot: string; readonly standard: string }
    >
  | undefined {
  const [standard, lot] =
    readings.find(([ofStandard, own]) => areOfTwoCalibrations(ofStandard, own)) ?? [];
  return standard?.calibration === undefined || lot?.calibration === undefined
    ? undefined
    : {
        rule: "read-under-another-calibration",
        values: { lot: lot.calibration, standard: standard.calibration },
        standing: "derived",
      };
}

function notRead({
  lot: { masstone, letDowns },
}: Compared): StatementOf<"lot-not-read", { readonly what: Part | "both" }> | undefined {
  const lacking: readonly Part[] = [
    ...(masstone === undefined ? (["masstone"] as const) : []),
    ...(letDowns.length === 0 ? (["let-down"] as const) : []),
  ];
  const [what] = lacking;
  return what && { rule: "lot-not-read", values: { what: lacking.length > 1 ? "both" : what } };
}
