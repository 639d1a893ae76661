/** What lots of a colour, one after another, say of how they are made. A signal that is new is a function named in the list. */
import { at } from "../quantities/at.ts";
import type { Interval } from "../quantities/interval.ts";
import { withCases, type SaidBy, type StatementOf } from "../quantities/statement.ts";
import type { Criterion } from "./judgement.ts";

/** So many one after another, each above (or below) the one before, are a drift. @source nist-handbook */
const DRIFT_OF = 6;
/** So many one after another on one side of the mean. @source nist-handbook */
const RUN_OF = 8;

/** What is followed over a colour's lots: differences from the standard [Delta-E00], strength [%]. */
export type Charted = Extract<Criterion, "masstone" | "letDown" | "strength">;

/** Values in order of time, and the limits that follow from them. */
export interface ChartFacts {
  readonly of: Charted;
  readonly values: readonly number[];
  readonly mean: number;
  readonly limits: Interval;
  /** Of neighbours in time; one fewer than values. */
  readonly movingRanges: readonly number[];
  readonly movingRangeLimit: number;
}

/** In all of these `at` counts values from 0 in order of time; `from` the first of a run. */
interface Run {
  readonly of: Charted;
  readonly from: number;
  readonly at: number;
  readonly count: number;
}

export const CHART_SIGNALS = [
  beyondLimits,
  farApart,
  withCases(drifts, {
    "lots-drifting-up": {
      said: [
        { of: "masstone", values: [1, 2, 3, 4, 5, 6] },
        { of: "letDown", values: [3, 1, 2, 3, 4, 5, 6] },
        { of: "strength", values: [1, 2, 3, 4, 5, 6, 6] },
      ],
      unsaid: [{ values: [1, 2, 3, 4, 5] }, { values: [1, 2, 3, 3, 4, 5, 6] }],
    },
    "lots-drifting-down": {
      said: [
        { of: "masstone", values: [6, 5, 4, 3, 2, 1] },
        { of: "letDown", values: [4, 6, 5, 4, 3, 2, 1] },
        { of: "strength", values: [6, 5, 4, 3, 2, 1, 1] },
      ],
      unsaid: [{ values: [5, 4, 3, 2, 1] }, { values: [6, 5, 4, 4, 3, 2, 1] }],
    },
  }),
  sides,
] as const;
export type ChartSignal = SaidBy<typeof CHART_SIGNALS>;

function beyondLimits({
  of,
  values,
  limits: [low, high],
}: ChartFacts): StatementOf<
  "lot-beyond-limits",
  { readonly of: Charted; readonly at: number; readonly value: number }
>[] {
  return values.flatMap((value, at) =>
    value < low || value > high
      ? [{ rule: "lot-beyond-limits", values: { of, at, value }, source: "nist-handbook" }]
      : [],
  );
}

function farApart({
  of,
  movingRanges,
  movingRangeLimit: limit,
}: ChartFacts): StatementOf<
  "lots-far-apart",
  { readonly of: Charted; readonly at: number; readonly range: number; readonly limit: number }
>[] {
  return movingRanges.flatMap((range, i) =>
    range > limit
      ? {
          rule: "lots-far-apart",
          values: { of, at: i + 1, range, limit },
          source: "montgomery-runger",
        }
      : [],
  );
}

/** The longest stretches of at least {@link DRIFT_OF} values that rise, or fall, all the way. */
function drifts({
  of,
  values,
}: ChartFacts): StatementOf<"lots-drifting-up" | "lots-drifting-down", Run>[] {
  const found: ReturnType<typeof drifts> = [];
  const direction = (next: number): number => Math.sign(at(values, next) - at(values, next - 1));
  let from = 0;
  for (let next = 1; next <= values.length; next++) {
    const step = next < values.length ? direction(next) : 0;
    const before = next - 1 > from ? direction(next - 1) : step;
    if (step !== 0 && step === before) continue;
    const count = next - from;
    if (count >= DRIFT_OF && before !== 0)
      found.push({
        rule: before > 0 ? "lots-drifting-up" : "lots-drifting-down",
        values: { of, from, at: next - 1, count },
        source: "nist-handbook",
      });
    from = step === 0 ? next : next - 1;
  }
  return found;
}

function sides({
  of,
  values,
  mean,
}: ChartFacts): StatementOf<"lots-all-above" | "lots-all-below", Run>[] {
  const found: ReturnType<typeof sides> = [];
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
