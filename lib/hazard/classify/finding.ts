import type { Quantity } from "../../quantities/interval.ts";
import type { StatementOf } from "../../quantities/statement.ts";
import type { SourceKey } from "../../sources/source.ts";
import type { Classification } from "./classification.ts";
import type { HazardClass } from "./hazard-class.ts";
import type { Metal } from "../studio/metal-content.ts";
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

interface Ingredients {
  readonly ingredients: readonly string[];
}
interface Classed extends Ingredients {
  readonly hazardClass: HazardClass;
}
/** An amount held against a limit of the general tables, or of the substance's own. */
interface Limited extends Classed {
  readonly limit: number;
  readonly limitKind: "generic" | "specific";
}
interface CutOffValues extends Limited {
  readonly massFraction: Quantity;
  readonly countedAs: Metal | "substance";
}
interface LeadValues extends Ingredients {
  readonly massFraction: number;
  readonly limit: number;
  readonly packageMl?: number;
  readonly shortBelowMl?: number;
}

/** Why a statement stands on a label. */
export type TraceStatement =
  | StatementOf<
      "ate-mix",
      Classed & {
        readonly route: AcuteRoute;
        readonly ateMix: number;
        /** The system states none for category 5 by inhalation. */
        readonly limit?: number;
        readonly unit: "mg/kg" | "mg/l";
        readonly unknownFraction: number;
      }
    >
  | StatementOf<"cut-off", CutOffValues>
  | StatementOf<"cut-off-summed", CutOffValues>
  | StatementOf<"weighted-sum", Limited & { readonly weightedSum: number }>
  | StatementOf<"flash-point", Classed & { readonly flashPointC: number }>
  | StatementOf<"flash-point-not-stated", Classed & { readonly massFraction: number }>
  | StatementOf<"as-its-ingredient", Classed & { readonly massFraction: number }>
  | StatementOf<
      "as-its-ingredients",
      Ingredients & { readonly massFraction: number; readonly limit: number }
    >
  | StatementOf<
      "elicitation",
      Classed & {
        readonly substance: string;
        readonly massFraction: number;
        readonly limit: number;
      }
    >
  | StatementOf<"lead-as-metal", LeadValues>
  | StatementOf<"lead-share-not-stated", LeadValues>
  | StatementOf<"traces-in-an-unclassified-mixture", Ingredients>
  | StatementOf<"as-its-supplier-states", Ingredients>;

/** Why a statement stands on a label: which rule, which ingredients, against which limit, by which text. */
export type StatementTrace = TraceStatement & {
  readonly statement: string;
  readonly shares: readonly TraceShare[];
};

/** One class that a mixture falls into, before precedence. */
export interface Finding {
  readonly hazardClass: HazardClass;
  readonly statement: HazardCode;
  readonly route?: AcuteRoute;
  readonly traces: readonly StatementTrace[];
  /** False when it hangs on something not known: a flash point, the lower end of a fraction. */
  readonly certain: boolean;
}

/** A class that one reason gives. @param certain as in {@link Finding}. */
export function findingBy(
  hazardClass: HazardClass,
  trace: StatementTrace & { readonly statement: HazardCode },
  certain = true,
): Finding {
  return { hazardClass, statement: trace.statement, certain, traces: [trace] };
}

export function traceShare(part: Part, by?: Classification): TraceShare {
  return {
    slug: part.slug,
    name: part.name,
    massFraction: part.stated,
    ...(by !== undefined && { statement: by.statement }),
    ...(by?.source !== undefined && { source: by.source }),
  };
}

/** Fraction of the mixture that a limit counts: of the substance, or of its metal. */
export function countedFraction(part: Part, by: Classification): number {
  const share = by.countedAs === undefined ? 1 : part.metals[by.countedAs];
  return part.massFraction * (typeof share === "number" ? share : 1);
}
