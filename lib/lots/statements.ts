/** Everything that may be said of a lot. */
import type { ChartSignal } from "./control-chart.ts";
import type { JudgementStatement } from "./judgement.ts";
import type { ComparisonNote, ComparisonStatement } from "./lot-against-standard.ts";

export type LotStatement = JudgementStatement | ComparisonStatement | ComparisonNote | ChartSignal;
