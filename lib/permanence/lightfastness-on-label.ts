/**
 * What a label may say of lightfastness: only what was tested, or what somebody
 * states, as theirs. An expectation is for the sheet, with its reason; a label has no room for one.
 *
 * @source astm-d4302 : pigments of category I and II are listed as suitable (partly read).
 */
import { estimated, type StatementOf } from "../quantities/statement.ts";
import type { ExposedForm } from "./exposure.ts";
import type { LightfastnessCategory } from "./lightfastness.ts";
import type { PermanenceRuling } from "./permanence-ruling.ts";

const SUITABLE_CATEGORIES: readonly string[] = ["I", "II"] satisfies LightfastnessCategory[];

type LabelledForms = { category: LightfastnessCategory; forms: readonly ExposedForm[] };

export type LabelLightfastness =
  | StatementOf<"label-not-tested", Record<string, never>>
  | StatementOf<"label-category-as-stated", { category: LightfastnessCategory }>
  | StatementOf<"label-category-under-standard" | "label-own-exposure", LabelledForms>;

export type SuitabilityStatement = StatementOf<
  "listed-as-suitable" | "below-suitable",
  { category: LightfastnessCategory }
>;

/** Line of a label, as a ruling: the category under the standard, the workshop's own exposure, a quoted statement, or that it was not tested. */
export function labelLightfastness({
  basis,
  category,
  forms,
}: PermanenceRuling): LabelLightfastness {
  if (category === undefined) return { rule: "label-not-tested", values: {} };
  if (basis === "stated")
    return { rule: "label-category-as-stated", values: { category }, standing: "stated" };
  const underStandard = forms.every((form) => form.underStandard);
  return {
    rule: underStandard ? "label-category-under-standard" : "label-own-exposure",
    values: { category, forms: forms.map(({ form }) => form) },
    standing: "measured",
    source: "astm-d4303",
  };
}

/** Whether a category is one of the two of least change, which the specification lists. */
export function isSuitableCategory(category: string): boolean {
  return SUITABLE_CATEGORIES.includes(category);
}

/** Whether a category stands among those that the specification lists as suitable for artists' oil paints. */
export function suitabilityRuling(category: LightfastnessCategory): SuitabilityStatement {
  const suitable = isSuitableCategory(category);
  return estimated(suitable ? "listed-as-suitable" : "below-suitable", { category }, "astm-d4302");
}
