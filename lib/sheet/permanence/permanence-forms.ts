import type { FormRating } from "../../permanence/exposure.ts";
import type { StatedCategory } from "../../permanence/permanence-ruling.ts";
import { sourceFigure } from "../../quantities/figure.ts";
import { classifiedFigure } from "../../quantities/derived-figure.ts";
import { lightfastnessRuling } from "../../permanence/lightfastness.ts";
import type { Colour } from "../../records/records.ts";
import type { FormFigures } from "../paint-section-types.ts";

/** Masstone and tint apart: each form as it was exposed, else as it is stated. */
export function permanenceForms(
  { record: { exposures = [] } }: Colour,
  ratings: readonly FormRating[],
  stated: StatedCategory | undefined,
): FormFigures[] {
  const exposed = ratings.map(({ form, meanDeltaEab, underStandard }): FormFigures => {
    const ofForm = exposures.filter((exposure) => exposure.form === form);
    const deltaEab = sourceFigure("measured", meanDeltaEab, {
      unit: "1",
      method:
        ofForm.length === 1
          ? "CIE 1976, exposed against kept dark"
          : `CIE 1976, mean of ${ofForm.length} exposures`,
    });
    return {
      slug: form,
      underStandard,
      deltaEab,
      category: classifiedFigure(
        {
          name: underStandard
            ? "category by colour change"
            : "as in the category, by colour change alone",
          unit: "",
          source: "astm-d4303",
        },
        { deltaEab: { path: `permanence.forms.${form}.deltaEab`, figure: deltaEab } },
        (v): string => lightfastnessRuling(v.deltaEab).category,
      ),
      standards: unique(ofForm.map(({ standard }) => standard)),
      exposures: unique(ofForm.map(({ exposure }) => exposure)),
    };
  });
  if (stated?.form === undefined || exposed.some(({ slug }) => slug === stated.form))
    return exposed;
  const category = sourceFigure<string>("stated", stated.category, {
    unit: "",
    method: "as stated for the colour",
  });
  return [
    ...exposed,
    { slug: stated.form, underStandard: false, category, standards: [], exposures: [] },
  ];
}

function unique(texts: readonly string[]): string[] {
  return [...new Set(texts)];
}
