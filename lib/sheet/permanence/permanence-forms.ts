import type { FormRating } from "../../permanence/exposure.ts";
import type { StatedCategory } from "../../permanence/permanence-ruling.ts";
import {
  isKnown,
  sourceFigure,
  weakestRoot,
  type Figure,
  type RootStanding,
} from "../../quantities/figure.ts";
import { classifiedFigure } from "../../quantities/derived-figure.ts";
import { lightfastnessRuling } from "../../permanence/lightfastness.ts";
import type { Colour } from "../../records/records.ts";
import { colourRecord } from "../record-inputs.ts";
import { OWN_EXPOSURE } from "./fading-components.ts";
import { recordedFigure } from "../recorded-figure.ts";
import type { FormFigures } from "./permanence-figures.ts";

/** Masstone and tint apart: each form as it was exposed, else as it is stated. */
export function permanenceForms(
  colour: Colour,
  ratings: readonly FormRating[],
  stated: StatedCategory | undefined,
): FormFigures[] {
  const { exposures = [] } = colour.record;
  const exposed = ratings.map(({ form, meanDeltaEab, underStandard }): FormFigures => {
    const ofForm = exposures.filter((exposure) => exposure.form === form);
    const deltaEab = changeFigure(colour, ofForm, meanDeltaEab);
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
        { deltaEab },
        (v): string => lightfastnessRuling(v.deltaEab).category,
      ),
      standards: [...new Set(ofForm.map(({ standard }) => standard))],
      exposures: [...new Set(ofForm.map(({ exposure }) => exposure))],
    };
  });
  if (stated?.form === undefined || exposed.some(({ slug }) => slug === stated.form))
    return exposed;
  const category = sourceFigure<string>("stated", stated.category, {
    unit: "",
    method: "as stated for the colour",
    source: stated.source,
    inputs: colourRecord(colour, "lightfastness"),
  });
  return [
    ...exposed,
    { slug: stated.form, underStandard: false, category, standards: [], exposures: [] },
  ];
}

/** Colour change of one form: as its one exposure is recorded, with source and uncertainty; of several the mean, as weak as the weakest. */
function changeFigure(
  colour: Colour,
  exposures: NonNullable<Colour["record"]["exposures"]>,
  mean: number,
): Figure<number> {
  const read = exposures.map(({ deltaEab }) =>
    recordedFigure(deltaEab, {
      unit: "1",
      wanting: `colours.${colour.slug}.exposures`,
      inputs: colourRecord(colour, "exposures"),
      ownMethod: OWN_EXPOSURE,
    }),
  );
  const known = read.filter(isKnown);
  const [only] = known;
  const standing = weakestRoot(known.map(({ restsOn }) => restsOn)) as RootStanding;
  const of = {
    unit: "1",
    inputs: colourRecord(colour, "exposures"),
    ...(only?.source !== undefined && { source: only.source }),
  };
  return known.length === 1 && only !== undefined
    ? sourceFigure(standing, mean, { ...of, method: only.method, uncertainty: only.uncertainty })
    : sourceFigure(standing, mean, {
        ...of,
        method: `CIE 1976, mean of ${known.length} exposures`,
      });
}
