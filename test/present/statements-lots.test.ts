import {
  CHART_SIGNALS,
  type Charted,
  type ChartFacts,
  type ChartSignal,
} from "../../lib/lots/chart-signals.ts";
import { COMPARISON_NOTES, type Compared } from "../../lib/lots/comparison-notes.ts";
import { controlChart } from "../../lib/lots/control-chart.ts";
import { judged, type Criterion } from "../../lib/lots/judgement.ts";
import type { LotStatement } from "../../lib/lots/statements.ts";
import { LOT_RULINGS } from "../../lib/words/rulings/lots.ts";
import { casesOf, holdSentences, type Stated } from "./statements-held.ts";

const CRITERIA: readonly Criterion[] = [
  "masstone",
  "letDown",
  "strength",
  "residual",
  "fineness",
  "oilIndex",
  "density",
];
const CHARTED: readonly Charted[] = ["strength", "letDown", "masstone"];

/** Held against 95 to 105, give or take 4. */
const held = (value: number): readonly LotStatement[] =>
  CRITERIA.map((criterion) => judged(criterion, value, [95, 105], 4).reason);
/** The signal of a rule, where a chart of some lots gives it. */
const signals = (
  rule: ChartSignal["rule"],
  values: readonly number[],
): readonly (LotStatement | undefined)[] =>
  CHARTED.map((of) => controlChart(values, of).signals.find((one) => one.rule === rule));
const ONE_APART = [...Array.from({ length: 10 }, () => 100), 120];
const level = (count: number, last: number): number[] => [
  ...Array.from({ length: count }, () => 100),
  last,
];

const statements: Stated<LotStatement>[] = [
  // iso-14253-1: by the whole of its uncertainty within its limits, beyond them, or across one.
  { when: "within-tolerance", said: [...held(99), ...held(101)], unsaid: held(101.1) },
  {
    when: "near-its-tolerance",
    said: [...held(101.1), ...held(109)],
    unsaid: [...held(101), ...held(109.1)],
  },
  { when: "out-of-tolerance", said: [...held(109.1), ...held(90.9)], unsaid: held(91) },
  {
    rule: "reads-as-in-another-white",
    values: { white: "titanium-white", other: "zinc-white", deltaE00: 1.31 },
  },
  ...(["masstone", "let-down"] as const).map((what) => ({
    rule: "lot-not-read-as-standard" as const,
    values: { what, lot: "45/0" as const, standard: "d/8 included" as const },
  })),
  { rule: "standard-has-no-masstone", values: {} },
  ...(["pigment-fluoresces", "pigment-is-flakes"] as const).map((since) => ({
    rule: "strength-not-judged" as const,
    values: { since, pigments: ["day-glow orange", "bronze"] },
  })),
  ...(["masstone", "let-down", "both"] as const).map((what) => ({
    rule: "lot-not-read" as const,
    values: { what },
  })),
  { rule: "lot-has-no-let-down-of-standard", values: { white: "titanium-white", ratio: "1:20" } },
  {
    rule: "read-under-another-calibration",
    values: { lot: "2026-03-04", standard: "2025-11-01" },
  },
  // montgomery-runger: mean of ranges 2, so that 101.8 -+ 5.3 and ranges to 6.5 are to be expected.
  {
    when: "lot-beyond-limits",
    said: signals("lot-beyond-limits", ONE_APART),
    unsaid: signals("lot-beyond-limits", [100, 101, 100, 101]),
  },
  {
    when: "lots-far-apart",
    said: signals("lots-far-apart", ONE_APART),
    unsaid: signals("lots-far-apart", [100, 101, 100, 101]),
  },
  ...casesOf<ChartFacts, LotStatement>(CHART_SIGNALS, (known) => ({
    of: "strength",
    values: [],
    mean: 0,
    limits: [-Infinity, Infinity],
    movingRanges: [],
    movingRangeLimit: Infinity,
    ...known,
  })),
  ...casesOf<Compared, LotStatement>(COMPARISON_NOTES, (known) => ({
    lot: { letDowns: [] },
    readings: [],
    ...known,
  })),
  // nist-handbook: eight on one side of the mean.
  {
    when: "lots-all-above",
    said: signals("lots-all-above", level(8, 92)),
    unsaid: signals("lots-all-above", level(7, 92)),
  },
  {
    when: "lots-all-below",
    said: signals("lots-all-below", level(8, 108)),
    unsaid: signals("lots-all-below", level(7, 108)),
  },
];

holdSentences("sentences of lots", LOT_RULINGS, statements);
