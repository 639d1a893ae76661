/** What the oil itself does to drying. */
import { domainError } from "../diagnostics/diagnostic.ts";
import { spanning, type Interval } from "../quantities/interval.ts";
import { estimated, type StatementOf } from "../quantities/statement.ts";
import { inPart, ratio, signOf, type Contribution } from "./contribution.ts";
import { linseedDays, oilRow, OILS, type Oil, type OilPart, type OilRow } from "./oils.ts";

/** Share in which a slower oil still slows a paint whose pigments alone slow it wholly. @source practice-drying */
const BESIDE_SLOW_PIGMENT = 0.5;

interface OilValues {
  readonly oil: Oil;
  readonly massFraction: number;
  readonly days: Interval;
  readonly factor: Interval;
}

export type OilStatement =
  | StatementOf<"linseed-sets-the-days", { readonly oil: Oil; readonly massFraction: number }>
  | StatementOf<
      "oil-slower-than-linseed",
      OilValues & {
        /** How much of its effect counts beside pigments that slow the paint already [1]; absent where all does. */
        readonly acting?: number;
      }
    >
  | StatementOf<"vehicle-not-stated", { readonly oils: readonly Oil[]; readonly factor: Interval }>;

/**
 * One contribution for each oil, by its share of the vehicle.
 *
 * @param oils empty when the vehicle is not recorded: then one contribution spans every oil of the table.
 * @param slowing share of the pigments' effect that slows drying already, 0-1: a slow oil and a slow pigment do not multiply.
 * @param rows of `oils.csv`.
 * @throws RangeError when shares do not sum to 1.
 */
export function oilContributions(
  oils: readonly OilPart[],
  rows: readonly OilRow[],
  slowing = 0,
): Contribution<OilStatement>[] {
  const acting = 1 - (1 - BESIDE_SLOW_PIGMENT) * slowing;
  if (oils.length === 0) {
    const factors = rows.map(({ touchDryDays }) => ratio(touchDryDays, linseedDays(rows)));
    const factor = inPart(spanning(factors), acting);
    return [
      {
        sign: signOf(factor),
        factor,
        statement: estimated("vehicle-not-stated", { oils: OILS, factor }, "memory-drying"),
      },
    ];
  }
  requireOilShares(oils);
  return oils.map(({ oil, massFraction }) => {
    const { touchDryDays: days, source } = oilRow(rows, oil);
    const factor = inPart(ratio(days, linseedDays(rows)), massFraction * acting);
    const sign = signOf(factor);
    const evidence = { standing: "estimated", source } as const;
    return {
      sign,
      factor,
      statement:
        sign === "none"
          ? { rule: "linseed-sets-the-days", values: { oil, massFraction }, ...evidence }
          : {
              rule: "oil-slower-than-linseed",
              values: { oil, massFraction, days, factor, ...(acting < 1 ? { acting } : {}) },
              ...evidence,
            },
    };
  });
}

function requireOilShares(oils: readonly OilPart[]): void {
  const sum = oils.reduce((total, { massFraction }) => total + massFraction, 0);
  if (!(Math.abs(sum - 1) <= 1e-6 && oils.every(({ massFraction }) => massFraction >= 0)))
    throw domainError("sum of oils' mass fractions", sum, "1");
}
