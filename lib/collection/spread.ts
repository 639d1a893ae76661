import { ends, midpoint, type Quantity } from "../quantities/interval.ts";
import { certain } from "../quantities/at.ts";

/** How a figure is spread over the colours of a range that state it. */
export interface Spread {
  readonly count: number;
  readonly lowest: number;
  readonly lowerQuartile: number;
  readonly median: number;
  readonly upperQuartile: number;
  readonly highest: number;
}

/**
 * The spread of some figures; undefined of none. Each quartile is the figure of a colour, the least
 * that a share of the range does not exceed (sample quantile 1 of Hyndman and Fan), so that it moves
 * with few of them. An estimate counts by its middle, and at the two ends of the spread by its own.
 */
export function spreadOf(values: readonly Quantity[]): Spread | undefined {
  if (values.length === 0) return undefined;
  const middles = values.map(midpoint).toSorted((one, other) => one - other);
  const quantile = (share: number): number =>
    certain(middles[Math.ceil(share * middles.length) - 1]);
  return {
    count: values.length,
    lowest: Math.min(...values.map((value) => ends(value)[0])),
    lowerQuartile: quantile(0.25),
    median: quantile(0.5),
    upperQuartile: quantile(0.75),
    highest: Math.max(...values.map((value) => ends(value)[1])),
  };
}
