import { finishRuling } from "../../formulation/finish.ts";
import { finishDifference, glossRuling } from "../../formulation/gloss.ts";
import { inputsOf, isKnown, notStated, type Figure } from "../../quantities/figure.ts";
import { midpoint, type Quantity } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";
import { classifiedFigure } from "../../quantities/derived-figure.ts";
import type { ExpectedFinish } from "../../drying/sinking-in.ts";
import type { OilSection, Packing } from "./oil-figures.ts";

export interface FinishFigure {
  readonly figure: Figure<string>;
  readonly reasons: readonly Statement[];
  /** Where gloss as read and finish as expected disagree beyond tolerance. */
  readonly contradiction?: Statement;
}

/** The finish as read by a gloss meter where it was, else as expected of the reduced PVC. */
export function finishFigure(packing: Packing, gloss60: Figure<Quantity>): FinishFigure {
  const { effectiveReducedPvc: lambda, reducedPvc: opened } = packing;
  const expected = isKnown(lambda)
    ? finishRuling(lambda.value, isKnown(opened) ? opened.value : undefined)
    : undefined;
  if (isKnown(gloss60)) {
    const read = glossRuling(midpoint(gloss60.value));
    const difference = expected === undefined ? undefined : finishDifference(expected, read);
    return {
      figure: classifiedFigure(
        { name: "finish by gloss at 60 degrees", unit: "", source: "iso-2813" },
        { gloss60 },
        () => read.finish as string,
      ),
      reasons: [read.reason],
      ...(difference === undefined ? {} : { contradiction: difference }),
    };
  }
  const finish = expected?.finish;
  return {
    figure:
      expected !== undefined && finish === undefined
        ? notStated(
            "its estimate reaches from gloss to matte",
            ["oil.oilIndexGPer100g", "oil.oilAbsorptionGPer100g"],
            inputsOf(lambda),
          )
        : classifiedFigure(
            {
              name: "finish expected of reduced PVC",
              unit: "",
              standing: "estimated",
              source: "practice-formulation",
            },
            { lambda },
            (v) => finishRuling(v.lambda).finish ?? "",
          ),
    reasons: expected === undefined ? [] : [expected.reason],
  };
}

/** What drying goes by where it says how a film sinks in: the same expectation, and the reading beside it. */
export function expectedFinish({
  effectiveReducedPvc,
  gloss60,
}: OilSection): ExpectedFinish | undefined {
  if (!isKnown(effectiveReducedPvc)) return undefined;
  return {
    spans: finishRuling(effectiveReducedPvc.value).spans,
    reducedPvc: effectiveReducedPvc.value,
    measured: isKnown(gloss60) ? glossRuling(midpoint(gloss60.value)).finish : undefined,
  };
}
