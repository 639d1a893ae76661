import type { StatementOf } from "../../quantities/statement.ts";
import type { MetalRow } from "./metal-content.ts";

/** What a test at the bench may use that can hurt whoever makes it. */
export const BENCH_TEST_USES = ["heat", "acid", "lye", "peroxide", "solvent"] as const;
export type BenchTestUse = (typeof BENCH_TEST_USES)[number];

/** How a test is made without harm; common practice, no source. */
export type BenchTestStatement = StatementOf<
  "bench-test-with-care",
  { readonly uses: readonly BenchTestUse[] }
>;

export function benchTestCaution(uses: readonly BenchTestUse[]): BenchTestStatement[] {
  return uses.length === 0
    ? []
    : [{ rule: "bench-test-with-care", values: { uses }, source: "practice-hazard" }];
}

/** Metals of a pigment that must never be heated, where a test would heat it. */
export function heatedMetals(
  uses: readonly BenchTestUse[],
  metals: readonly MetalRow[],
): readonly MetalRow[] {
  return uses.includes("heat") ? metals.filter(({ heat }) => heat === "never") : [];
}
