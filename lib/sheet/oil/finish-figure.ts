import { finishRuling, type FinishRuling } from "../../formulation/finish.ts";
import { finishDifference, glossRuling, type GlossRuling } from "../../formulation/gloss.ts";
import { inputsOf, isKnown, knownValue, notStated, type Figure } from "../../quantities/figure.ts";
import { midpoint } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";
import { classifiedFigure } from "../../quantities/derived-figure.ts";
import type { ExpectedFinish } from "../../drying/sinking-in.ts";
import type { Amounts } from "../found.ts";

type FilmOfPaint = Amounts<"effectiveReducedPvc" | "reducedPvc" | "gloss60">;

export interface FinishRulings {
  readonly read: GlossRuling | undefined;
  readonly expected: FinishRuling | undefined;
  /** Of the one that decides. */
  readonly reasons: readonly Statement[];
  /** Where gloss as read and finish as expected disagree beyond tolerance. */
  readonly contradiction: Statement | undefined;
}

/** The finish as read by a gloss meter where it was, and as expected of the reduced PVC. */
export function finishRulings({
  effectiveReducedPvc,
  reducedPvc,
  gloss60,
}: FilmOfPaint): FinishRulings {
  const read = isKnown(gloss60) ? glossRuling(midpoint(gloss60.value)) : undefined;
  const expected = isKnown(effectiveReducedPvc)
    ? finishRuling(effectiveReducedPvc.value, knownValue(reducedPvc))
    : undefined;
  return {
    read,
    expected,
    reasons: [read ?? expected ?? []].flat().map(({ reason }) => reason),
    contradiction: expected && read && finishDifference(expected, read),
  };
}

/** By the gloss that was read, else by reduced PVC. */
export function finishFigure(film: FilmOfPaint): Figure<string> {
  const { read, expected } = finishRulings(film);
  const { gloss60, effectiveReducedPvc: lambda } = film;
  if (read !== undefined)
    return classifiedFigure(
      { name: "finish by gloss at 60 degrees", unit: "", source: "iso-2813" },
      { gloss60 },
      () => read.finish as string,
    );
  if (expected !== undefined && expected.finish === undefined)
    return notStated(
      "its estimate reaches from gloss to matte",
      ["oil.oilIndexGPer100g", "oil.oilAbsorptionGPer100g"],
      inputsOf(lambda),
    );
  return classifiedFigure(
    {
      name: "finish expected of reduced PVC",
      unit: "",
      standing: "estimated",
      source: "practice-formulation",
    },
    { lambda },
    (v) => finishRuling(v.lambda).finish ?? "",
  );
}

/** What drying goes by where it says how a film sinks in: the same expectation, and the reading beside it. */
export function expectedFinish({
  effectiveReducedPvc,
  gloss60,
}: Amounts<"effectiveReducedPvc" | "gloss60">): ExpectedFinish | undefined {
  if (!isKnown(effectiveReducedPvc)) return undefined;
  return {
    spans: finishRuling(effectiveReducedPvc.value).spans,
    reducedPvc: effectiveReducedPvc.value,
    measured: isKnown(gloss60) ? glossRuling(midpoint(gloss60.value)).finish : undefined,
  };
}
