/** An exposure held against what the Colour Index names of its pigments led one to expect. */
import type { StatementOf } from "../quantities/statement.ts";
import { categoryOf, type Expectation } from "./expected-lightfastness.ts";
import type { ExposedForm, FormRating } from "./exposure.ts";
import { categoriesBelow, type LightfastnessCategory } from "./lightfastness.ts";

/** Categories between the two from which they contradict each other: one step is within the expectation. @source practice-permanence */
const CONTRADICTING_CATEGORIES = 2;

export type ExpectedContradiction = StatementOf<
  "exposure-better-than-expected" | "exposure-worse-than-expected",
  {
    expectation: Expectation;
    exposed: LightfastnessCategory;
    form: ExposedForm;
    meanDeltaEab: number;
  }
>;

/**
 * @returns the contradiction, else undefined.
 * @example expectedContradiction("excellent", { form: "tint", category: "III", meanDeltaEab: 12 })?.rule // "exposure-worse-than-expected"
 */
export function expectedContradiction(
  expectation: Expectation,
  exposed: Pick<FormRating, "form" | "category" | "meanDeltaEab">,
): ExpectedContradiction | undefined {
  const steps = categoriesBelow(exposed.category, categoryOf(expectation));
  if (Math.abs(steps) < CONTRADICTING_CATEGORIES) return undefined;
  return {
    rule: steps > 0 ? "exposure-worse-than-expected" : "exposure-better-than-expected",
    values: {
      expectation,
      exposed: exposed.category,
      form: exposed.form,
      meanDeltaEab: exposed.meanDeltaEab,
    },
    standing: "derived",
    source: "practice-permanence",
  };
}
