/**
 * Sinking-in: a film that loses its gloss, in patches, to what lies below it. It goes by the
 * finish that the paint's oil lets expect, so that the two never disagree.
 *
 * @source practice-drying
 */
import { ends, isInterval, type Quantity } from "../quantities/interval.ts";
import type { StatementOf } from "../quantities/statement.ts";

/** Glossiest first. */
const FINISHES = ["gloss", "semi-gloss", "satin", "matte"] as const;
type Finish = (typeof FINISHES)[number];

export interface ExpectedFinish {
  /** Every finish that is expected of the packing, glossiest first. */
  readonly spans: readonly Finish[];
  /** PVC over effective CPVC [1]. */
  readonly reducedPvc: Quantity;
  /** As read by a gloss meter. */
  readonly measured?: Finish | undefined;
}

export type SinkingStatement =
  | StatementOf<
      | "sinks-in-on-absorbent-ground-alone"
      | "sinks-in-easily"
      | "may-sink-in"
      | "dull-of-itself"
      | "may-be-dull-of-itself",
      {
        readonly reducedPvc: Quantity;
        /** Of the volume of the dry film [1]: see {@link oilToSpare}. */
        readonly oilToSpare: Quantity;
      }
    >
  | StatementOf<"oiling-out", Record<string, never>>;

/** Steps of finish between an expectation and a reading from which the expectation says nothing of the film. */
const DISBELIEVED_FROM = 2;

/**
 * @returns what the expectation bears: nothing where it reaches from gloss to matte, or where the
 *   finish was read to be another; and oiling out where that mends it, which it does not where a film is dull of itself.
 */
export function sinkingInStatements({
  spans,
  reducedPvc,
  measured,
}: ExpectedFinish): SinkingStatement[] {
  const [glossiest] = spans;
  if (glossiest === undefined) return [];
  const dullest = spans.at(-1) ?? glossiest;
  if (glossiest === "gloss" && dullest === "matte") return [];
  if (measured !== undefined && stepsBetween(spans, measured) >= DISBELIEVED_FROM) return [];
  const evidence = { standing: "estimated", source: "practice-drying" } as const;
  const rule = ruleOf(
    glossiest,
    measured !== undefined && measured !== "matte" && dullest === "matte" ? "satin" : dullest,
  );
  const found: SinkingStatement = {
    rule,
    values: { reducedPvc, oilToSpare: oilToSpare(reducedPvc) },
    ...evidence,
  };
  return rule === "dull-of-itself" || rule === "may-be-dull-of-itself"
    ? [found]
    : [found, { rule: "oiling-out", values: {}, ...evidence }];
}

/**
 * Oil [1] of the volume of the dry film that its pigment does not hold: it is 1 - PVC less what fills the
 * gaps, PVC (1 - CPVC) / CPVC, which leaves
 *
 *     1 - PVC / CPVC
 *
 * @param reducedPvc PVC over effective CPVC [1]; above 1 nothing is to spare.
 * @example oilToSpare(0.93) // 0.07
 */
export function oilToSpare(reducedPvc: Quantity): Quantity {
  const left = (packed: number): number => Math.max(0, 1 - packed);
  const [loosest, densest] = ends(reducedPvc);
  return isInterval(reducedPvc) ? [left(densest), left(loosest)] : left(loosest);
}

/** Whether some of the oil may be to spare: a film that is neither expected nor read to be glossy has hardly any. */
export function mayHaveOilToSpare({ spans, measured }: ExpectedFinish): boolean {
  return spans.includes("gloss") || measured === "gloss";
}

function ruleOf(
  glossiest: Finish,
  dullest: Finish,
): Exclude<SinkingStatement["rule"], "oiling-out"> {
  if (dullest === "gloss") return "sinks-in-on-absorbent-ground-alone";
  if (dullest === "matte")
    return glossiest === "matte" ? "dull-of-itself" : "may-be-dull-of-itself";
  return glossiest === "gloss" ? "may-sink-in" : "sinks-in-easily";
}

function stepsBetween(spans: readonly Finish[], measured: Finish): number {
  const read = FINISHES.indexOf(measured);
  return Math.min(...spans.map((finish) => Math.abs(FINISHES.indexOf(finish) - read)));
}
