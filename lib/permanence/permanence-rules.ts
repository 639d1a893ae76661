/**
 * What is said of a colour in light, and of what else harms it. A rule that is new is a function of
 * the facts, named in the list whose heading its sentence is read under.
 */
import { midpoint, type Quantity } from "../quantities/interval.ts";
import { withCases } from "../quantities/statement.ts";
import { blueWool, customaryCategory } from "./blue-wool.ts";
import { changeSoFarStatements, type ChangeSoFar } from "./change-so-far.ts";
import { expectedContradiction } from "./expected-contradiction.ts";
import { statedContradiction, weakestForm, type Exposure } from "./exposure.ts";
import { greyScaleRuling } from "./grey-scale.ts";
import { suitabilityRuling } from "./lightfastness-on-label.ts";
import type { PermanenceReason, PermanenceRuling, StatedCategory } from "./permanence-ruling.ts";
import { sensitivityRulings, type NamedPigment } from "./sensitivity.ts";

export interface PermanenceFacts {
  readonly pigments: readonly NamedPigment[];
  /** On record, and what has been read by now of specimens that hang. */
  readonly exposures: readonly Exposure[];
  readonly changes: readonly ChangeSoFar[];
  /** What its own exposures, what is stated of it and its pigments make of it. */
  readonly ruling: PermanenceRuling;
  /** What its pigments alone do. */
  readonly byPigments: PermanenceRuling;
  /** As stated for the colour itself. */
  readonly stated: StatedCategory | undefined;
  /** Blue wool reference 1-8, of a mixture its weakest pigment's. */
  readonly blueWoolReference: Quantity | undefined;
}

/** What a finding rests on. */
export const BASES = [
  "exposed under the standard",
  "own exposure",
  "stated",
  "expected",
  "not known",
] as const;
export type PermanenceBasis = (typeof BASES)[number];

export function basisOf({ basis, forms }: PermanenceRuling): PermanenceBasis {
  return basis !== "exposed"
    ? basis
    : forms.every(({ underStandard }) => underStandard)
      ? "exposed under the standard"
      : "own exposure";
}

/** Rules that tell of an exposure against a statement: they are contradictions. */
const AGAINST_STATED: ReadonlySet<PermanenceReason["rule"]> = new Set([
  "exposure-better-than-stated",
  "exposure-worse-than-stated",
]);
/** Which of its pigments a mixture depends on holds beside an exposure of the mixture too. */
const OF_MIXTURE: ReadonlySet<PermanenceReason["rule"]> = new Set([
  "weakest-pigment-decides",
  "pigments-alike",
  "mixture-with-unknown-pigment",
  "weaker-in-tints",
]);

/** Why it stands where it does in light. */
export const PERMANENCE_REASONS = [
  ({ ruling }: PermanenceFacts) => ruling.reasons.filter(({ rule }) => !AGAINST_STATED.has(rule)),
  ({ changes, exposures }: PermanenceFacts) =>
    changes.flatMap((change) => changeSoFarStatements(change, exposures)),
  ({ ruling: { deltaEab } }: PermanenceFacts) =>
    deltaEab === undefined ? [] : greyScaleRuling(deltaEab).reason,
  ({ ruling, byPigments }: PermanenceFacts) =>
    ruling.deltaEab === undefined
      ? []
      : byPigments.reasons.filter(
          ({ rule }) =>
            OF_MIXTURE.has(rule) &&
            (rule !== "weaker-in-tints" || ruling.forms.every(({ form }) => form !== "tint")),
        ),
  withCases(
    ({ blueWoolReference: told }: PermanenceFacts) =>
      told === undefined ? [] : customaryCategory(blueWool(midpoint(told))).reason,
    {
      "blue-wool-is-another-scale": {
        said: [{ blueWoolReference: 1 }, { blueWoolReference: [6, 8] }],
        unsaid: [{ blueWoolReference: undefined }],
      },
    },
  ),
  // Only of what may be called a category: by the standard's exposures, or stated.
  ({ ruling }: PermanenceFacts) =>
    ruling.category !== undefined &&
    (basisOf(ruling) === "exposed under the standard" ||
      (basisOf(ruling) === "stated" && ruling.deltaEab === undefined))
      ? suitabilityRuling(ruling.category)
      : [],
] as const;

/** What else harms it. */
export const SENSITIVITIES = [
  ({ pigments }: PermanenceFacts) => sensitivityRulings(pigments).map(({ reason }) => reason),
] as const;

/** The workshop's exposure against what is stated for the colour, or for its pigments, or expected of them. */
export const PERMANENCE_CONTRADICTIONS = [
  ({ ruling, byPigments, stated }: PermanenceFacts) => {
    const exposed = weakestForm(ruling.forms);
    if (exposed?.standing !== "measured") return [];
    if (stated !== undefined && (stated.form === undefined || stated.form === exposed.form))
      return statedContradiction(stated.category, exposed);
    if (byPigments.category !== undefined) return statedContradiction(byPigments.category, exposed);
    return byPigments.expectation === undefined
      ? []
      : expectedContradiction(byPigments.expectation, exposed);
  },
] as const;
