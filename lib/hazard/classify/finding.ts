import type { Quantity } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";
import type { SourceKey } from "../../sources/source.ts";
import type { Classification } from "./classification.ts";
import type { TraceRule } from "./hazard-rules.ts";
import type { HazardClass } from "./hazard-class.ts";
import type { AcuteRoute, HazardCode } from "../texts/hazard-statement.ts";
import type { Part } from "./composition.ts";

/** An ingredient's share in a decision. */
export interface TraceShare {
  readonly slug: string;
  readonly name: string;
  /** Of the mixture, as it was given: 0-1, or a range. */
  readonly massFraction: Quantity;
  /** What the supplier states of it, if a statement decided. */
  readonly statement?: string;
  /** Where the supplier's statement comes from. */
  readonly source?: SourceKey;
}

/** Why a statement stands on a label: which rule, which ingredients, against which limit, by which text. */
export interface StatementTrace extends Statement {
  readonly rule: TraceRule;
  readonly statement: string;
  readonly shares: readonly TraceShare[];
}

/** One class that a mixture falls into, before precedence. */
export interface Finding {
  readonly hazardClass: HazardClass;
  readonly statement: HazardCode;
  readonly route?: AcuteRoute;
  readonly traces: readonly StatementTrace[];
  /** False when it hangs on something not known: a flash point, the lower end of a fraction. */
  readonly certain: boolean;
}

export function traceShare(part: Part, by?: Classification): TraceShare {
  return {
    slug: part.slug,
    name: part.name,
    massFraction: part.stated,
    ...(by === undefined ? {} : { statement: by.statement }),
    ...(by?.source === undefined ? {} : { source: by.source }),
  };
}

/** Fraction of the mixture that a limit counts: of the substance, or of its metal. */
export function countedFraction(part: Part, by: Classification): number {
  const share = by.countedAs === undefined ? 1 : part.metals[by.countedAs];
  return part.massFraction * (typeof share === "number" ? share : 1);
}
