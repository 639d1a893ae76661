import { finishRuling } from "../../formulation/finish.ts";
import { finishContradiction, glossRuling } from "../../formulation/gloss.ts";
import { isKnown, type Figure } from "../../quantities/figure.ts";
import { midpoint, type Quantity } from "../../quantities/interval.ts";
import type { Statement } from "../../quantities/statement.ts";
import { classifiedFigure } from "../../quantities/derived-figure.ts";

export interface FinishFigure {
  readonly figure: Figure<string>;
  readonly reasons: readonly Statement[];
  /** Where gloss as read and finish as expected disagree beyond tolerance. */
  readonly contradiction?: Statement;
}

/** The finish as read by a gloss meter where it was, else as expected of the reduced PVC. */
export function finishFigure(
  effectiveReducedPvc: Figure<Quantity>,
  gloss60: Figure<Quantity>,
): FinishFigure {
  const expected = isKnown(effectiveReducedPvc)
    ? finishRuling(effectiveReducedPvc.value)
    : undefined;
  if (!isKnown(gloss60)) {
    return {
      figure: classifiedFigure(
        {
          name: "finish expected of reduced PVC",
          unit: "",
          standing: "estimated",
          source: "practice-formulation",
        },
        { lambda: effectiveReducedPvc },
        (v) => finishRuling(v.lambda).finish as string,
      ),
      reasons: expected === undefined ? [] : [expected.reason],
    };
  }
  const read = glossRuling(midpoint(gloss60.value));
  const contradiction = expected === undefined ? undefined : finishContradiction(expected, read);
  return {
    figure: classifiedFigure(
      { name: "finish by gloss at 60 degrees", unit: "", source: "iso-2813" },
      { gloss60 },
      () => read.finish as string,
    ),
    reasons: [read.reason, ...(expected === undefined ? [] : [expected.reason])],
    ...(contradiction === undefined ? {} : { contradiction }),
  };
}
