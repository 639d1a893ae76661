import type { Charted } from "../../lib/lots/control-chart.ts";
import type { Criterion } from "../../lib/lots/judgement.ts";
import type { LotStatement } from "../../lib/lots/statements.ts";
import { LOT_RULINGS } from "../../lib/words/rulings/lots.ts";
import { holdSentences } from "./statements-held.ts";

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

const statements: LotStatement[] = [
  ...CRITERIA.flatMap((criterion) =>
    (["within-tolerance", "near-its-tolerance", "out-of-tolerance"] as const).map((rule) => ({
      rule,
      values: { criterion, value: 101.2, limits: [95, 105] as const, uncertainty: 0.5 },
    })),
  ),
  {
    rule: "reads-as-in-another-white",
    values: { white: "titanium-white", other: "zinc-white", deltaE00: 1.31 },
  },
  ...(["masstone", "let-down"] as const).map((what) => ({
    rule: "lot-not-read-as-standard" as const,
    values: { what, lot: "45/0" as const, standard: "d/8 included" as const },
  })),
  { rule: "standard-has-no-masstone", values: {} },
  ...(["masstone", "let-down", "both"] as const).map((what) => ({
    rule: "lot-not-read" as const,
    values: { what },
  })),
  { rule: "lot-has-no-let-down-of-standard", values: { white: "titanium-white", ratio: "1:20" } },
  {
    rule: "read-under-another-calibration",
    values: { lot: "2026-03-04", standard: "2025-11-01" },
  },
  ...CHARTED.flatMap((of): LotStatement[] => [
    { rule: "lot-beyond-limits", values: { of, at: 3, value: 112 } },
    { rule: "lots-far-apart", values: { of, at: 3, range: 9.4, limit: 7.2 } },
    ...(
      ["lots-drifting-up", "lots-drifting-down", "lots-all-above", "lots-all-below"] as const
    ).map((rule) => ({ rule, values: { of, from: 1, at: 7, count: 6 } })),
  ]),
];

holdSentences("sentences of lots", LOT_RULINGS, statements);
