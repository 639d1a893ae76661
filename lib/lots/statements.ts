/** Everything that may be said of a lot. */
import type { ChartSignal } from "./chart-signals.ts";
import type { JudgementStatement } from "./judgement.ts";
import type { ComparisonNote } from "./comparison-notes.ts";
import type { ComparisonStatement } from "./lot-against-standard.ts";

export type LotStatement = JudgementStatement | ComparisonStatement | ComparisonNote | ChartSignal;
