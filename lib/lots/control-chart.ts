/** Individuals and moving range: whether lot after lot of a colour varies as it always has. */
import { at } from "../quantities/at.ts";
import { domainError } from "../diagnostics/diagnostic.ts";
import { said } from "../quantities/statement.ts";
import { CHART_SIGNALS, type ChartFacts, type Charted, type ChartSignal } from "./chart-signals.ts";

/** d2 and D4 of ranges of two [1]. @source montgomery-runger */
const D2_OF_TWO = 1.128;
const D4_OF_TWO = 3.267;

/** Fewer give limits that the next few will move: said, not hidden. Common practice. */
const FIRM_LIMITS_FROM = 20;

export interface ControlChart extends Omit<ChartFacts, "of" | "values"> {
  readonly meanMovingRange: number;
  /** Whether so few values made the limits that they are provisional. */
  readonly isProvisional: boolean;
  readonly signals: readonly ChartSignal[];
}

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
  const told = { mean, limits, movingRanges, movingRangeLimit };
  return {
    ...told,
    meanMovingRange,
    isProvisional: values.length < FIRM_LIMITS_FROM,
    signals: said(CHART_SIGNALS, { of, values, ...told }),
  };
}

function average(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
