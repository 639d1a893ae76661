/** Individuals and moving range: whether lot after lot of a colour varies as it always has. */
import { at } from "../quantities/at.ts";
import { domainError } from "../diagnostics/diagnostic.ts";
import type { StatementOf } from "../quantities/statement.ts";
import type { Criterion } from "./judgement.ts";

/** d2 and D4 of ranges of two [1]. @source montgomery-runger */
const D2_OF_TWO = 1.128;
const D4_OF_TWO = 3.267;

/** Fewer give limits that the next few will move: said, not hidden. Common practice. */
const FIRM_LIMITS_FROM = 20;
/** So many one after another, each above (or below) the one before, are a drift. @source nist-handbook */
const DRIFT_OF = 6;
/** So many one after another on one side of the mean. @source nist-handbook */
const RUN_OF = 8;

/** What is followed over a colour's lots: differences from the standard [Delta-E00], strength [%]. */
export type Charted = Extract<Criterion, "masstone" | "letDown" | "strength">;

export interface ControlChart {
  readonly mean: number;
  /** Of neighbours in time; one fewer than values. */
  readonly movingRanges: readonly number[];
  readonly meanMovingRange: number;
  readonly limits: readonly [number, number];
  readonly movingRangeLimit: number;
  /** Whether so few values made the limits that they are provisional. */
  readonly isProvisional: boolean;
  readonly signals: readonly ChartSignal[];
}

/** `at` counts values from 0 in order of time; `from` the first of a run. */
export type ChartSignal =
  | StatementOf<
      "lot-beyond-limits",
      { readonly of: Charted; readonly at: number; readonly value: number }
    >
  | StatementOf<
      "lots-far-apart",
      { readonly of: Charted; readonly at: number; readonly range: number; readonly limit: number }
    >
  | StatementOf<
      "lots-drifting-up" | "lots-drifting-down" | "lots-all-above" | "lots-all-below",
      {
        readonly of: Charted;
        readonly from: number;
        readonly at: number;
        readonly count: number;
      }
    >;

/**
 * Individuals chart with limits from the mean moving range.
 *
 *     limits = mean -+ 3 MR / d2,  d2 = 1.128;  limit of a moving range = 3.267 MR
 *
 * A difference is never below 0, nor is its lower limit.
 *
 * @param values in order of time, at least 2.
 * @throws RangeError when there are fewer than 2, or one is NaN or infinite.
 * @source montgomery-runger, nist-handbook
 */
export function controlChart(values: readonly number[], of: Charted): ControlChart {
  if (values.length < 2) throw domainError("count of values", values.length, "at least 2");
  for (const value of values)
    if (!Number.isFinite(value)) throw domainError("value of a chart", value, "a finite number");
  const mean = average(values);
  const movingRanges = values.slice(1).map((value, i) => Math.abs(value - at(values, i)));
  const meanMovingRange = average(movingRanges);
  const reach = (3 * meanMovingRange) / D2_OF_TWO;
  const least = of === "strength" ? -Infinity : 0;
  const limits = [Math.max(mean - reach, least), mean + reach] as const;
  const movingRangeLimit = D4_OF_TWO * meanMovingRange;
  return {
    mean,
    movingRanges,
    meanMovingRange,
    limits,
    movingRangeLimit,
    isProvisional: values.length < FIRM_LIMITS_FROM,
    signals: [
      ...values.flatMap((value, at): ChartSignal[] =>
        value < limits[0] || value > limits[1]
          ? [{ rule: "lot-beyond-limits", values: { of, at, value }, source: "nist-handbook" }]
          : [],
      ),
      ...movingRanges.flatMap((range, i): ChartSignal[] =>
        range > movingRangeLimit
          ? [
              {
                rule: "lots-far-apart",
                values: { of, at: i + 1, range, limit: movingRangeLimit },
                source: "montgomery-runger",
              },
            ]
          : [],
      ),
      ...drifts(values, of),
      ...sides(values, mean, of),
    ],
  };
}

/** The longest stretches of at least {@link DRIFT_OF} values that rise, or fall, all the way. */
function drifts(values: readonly number[], of: Charted): ChartSignal[] {
  return stretches(values, of, (value, before) => Math.sign(value - before), DRIFT_OF, [
    "lots-drifting-down",
    "lots-drifting-up",
  ]);
}

function sides(values: readonly number[], mean: number, of: Charted): ChartSignal[] {
  const found: ChartSignal[] = [];
  let from = 0;
  for (let next = 1; next <= values.length; next++) {
    const side = Math.sign(at(values, from) - mean);
    if (next < values.length && side !== 0 && Math.sign(at(values, next) - mean) === side) continue;
    const count = next - from;
    if (count >= RUN_OF && side !== 0)
      found.push({
        rule: side > 0 ? "lots-all-above" : "lots-all-below",
        values: { of, from, at: next - 1, count },
        source: "nist-handbook",
      });
    from = next;
  }
  return found;
}

function stretches(
  values: readonly number[],
  of: Charted,
  direction: (value: number, before: number) => number,
  least: number,
  [down, up]: readonly ["lots-drifting-down", "lots-drifting-up"],
): ChartSignal[] {
  const found: ChartSignal[] = [];
  let from = 0;
  for (let next = 1; next <= values.length; next++) {
    const step = next < values.length ? direction(at(values, next), at(values, next - 1)) : 0;
    const before = next - 1 > from ? direction(at(values, next - 1), at(values, next - 2)) : step;
    if (step !== 0 && step === before) continue;
    const count = next - from;
    if (count >= least && before !== 0)
      found.push({
        rule: before > 0 ? up : down,
        values: { of, from, at: next - 1, count },
        source: "nist-handbook",
      });
    from = step === 0 ? next : next - 1;
  }
  return found;
}

function average(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
