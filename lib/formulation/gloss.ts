/**
 * Finish from a measured gloss at 60 degrees (ISO 2813), which overrides the
 * expected one. The standard sets no words: these are the trade's, from memory.
 */
import { domainError } from "../diagnostics/diagnostic.ts";
import type { StatementOf } from "../quantities/statement.ts";
import { FINISHES, type Finish, type FinishRuling } from "./finish.ts";
import { certain } from "../quantities/at.ts";

export type GlossStatement = StatementOf<
  "gloss-measured",
  {
    /** [gloss units] */
    readonly gloss60: number;
    readonly finish: Finish;
    /** [degrees] */
    readonly betterAngle?: 20 | 85;
  }
>;

export interface GlossLimit {
  readonly finish: Finish;
  /** Least gloss at 60 degrees [gloss units] of this finish, inclusive. */
  readonly gloss60Min: number;
}

/** @source practice-formulation */
export const GLOSS_LIMITS: readonly GlossLimit[] = [
  { finish: "gloss", gloss60Min: 70 },
  { finish: "semi-gloss", gloss60Min: 35 },
  { finish: "satin", gloss60Min: 10 },
  { finish: "matte", gloss60Min: 0 },
];

/** Above the first, 20 degrees tells more; below the second, 85 degrees does (iso-2813, memory). */
const GLOSS_60_SUITS = { to: 70, from: 10 } as const;

export interface GlossRuling {
  readonly finish: Finish;
  readonly limit: GlossLimit;
  /** The angle [degrees] at which the standard would have it read again. */
  readonly betterAngle?: 20 | 85;
  readonly reason: GlossStatement;
}

/**
 * @param gloss60 [gloss units], finite and >= 0.
 * @returns the ruling; a reading on a limit belongs to the glossier finish.
 * @throws RangeError when negative, NaN or infinite.
 * @source iso-2813
 * @example glossRuling(82).finish // "gloss"
 */
export function glossRuling(gloss60: number): GlossRuling {
  if (!(gloss60 >= 0 && gloss60 < Infinity))
    throw domainError("gloss at 60 degrees", gloss60, "0 <= gloss < Infinity gloss units");
  const limit = certain(GLOSS_LIMITS.find((row) => gloss60 >= row.gloss60Min));
  const betterAngle =
    gloss60 > GLOSS_60_SUITS.to ? 20 : gloss60 < GLOSS_60_SUITS.from ? 85 : undefined;
  return {
    finish: limit.finish,
    limit,
    ...(betterAngle !== undefined && { betterAngle }),
    reason: {
      rule: "gloss-measured",
      values: {
        gloss60,
        finish: limit.finish,
        ...(betterAngle !== undefined && { betterAngle }),
      },
      standing: "measured",
      source: "iso-2813",
    },
  };
}

/** Steps of finish between an expectation and a reading that count as a contradiction; one step is within the estimate. */
const CONTRADICTING_STEPS = 2;

export type FinishDifference = StatementOf<
  "glossier-than-expected" | "duller-than-expected",
  { readonly expected: readonly Finish[]; readonly measured: Finish }
>;

/**
 * @returns where an expected finish and a measured one disagree beyond what the estimate bears, else undefined.
 *   A paint glossier than expected points to too low an oil index, or to a
 *   dispersion better than recorded; a duller one to clumps, or to a ground that drew the oil.
 */
export function finishDifference(
  expected: Pick<FinishRuling, "spans">,
  measured: GlossRuling,
): FinishDifference | undefined {
  const read = FINISHES.indexOf(measured.finish);
  const steps = expected.spans.map((finish) => read - FINISHES.indexOf(finish));
  if (Math.min(...steps.map(Math.abs)) < CONTRADICTING_STEPS) return undefined;
  return {
    rule: steps.every((step) => step < 0) ? "glossier-than-expected" : "duller-than-expected",
    values: { expected: expected.spans, measured: measured.finish },
    standing: "derived",
    source: "practice-formulation",
  };
}
