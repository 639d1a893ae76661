import type { Interval } from "../quantities/interval.ts";
import type { SourceKey } from "../sources/source.ts";

/** A row of `oil-density.csv`: a drying oil at room temperature [g/cm3], for where a record is silent. */
export interface OilDensityRow {
  readonly oil: string;
  readonly gPerCm3: Interval;
  readonly source: SourceKey;
}
