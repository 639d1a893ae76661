import {
  labelLightfastness,
  type LabelLightfastness,
} from "../../permanence/lightfastness-on-label.ts";
import { weakestForm } from "../../permanence/exposure.ts";
import {
  BASES,
  basisOf,
  PERMANENCE_CONTRADICTIONS,
  PERMANENCE_REASONS,
  SENSITIVITIES,
  type PermanenceFacts,
} from "../../permanence/permanence-rules.ts";
import {
  isKnown,
  knownValue,
  notStated,
  sourceFigure,
  takenFrom,
  type Figure,
  type RecordRoot,
} from "../../quantities/figure.ts";
import { said } from "../../quantities/statement.ts";
import { FORMS } from "../../records/schema/terms.ts";
import * as d from "../declaration.ts";
import { STANDING_OR_NONE } from "../drying/drying-figures.ts";
import { foundFrom, type Amounts } from "../found.ts";
import type { PaintOfColour } from "../paint-as-made.ts";
import { blueWoolFigure, categoryFigure, noExpectation } from "./light-figures.ts";
import { permanenceForms } from "./permanence-forms.ts";

const FORM = d.section({
  slug: d.oneOf(FORMS),
  underStandard: d.flag,
  category: d.notation("lightfastnessCategory"),
  deltaEab: d.optional(d.number({ ...d.ONE_PLACE, word: "deltaEab" })),
  /** As the record names them. */
  standards: d.texts,
  exposures: d.texts,
});
export type FormFigures = d.SectionOf<typeof FORM>;

/** What the figures of a colour's permanence are found from, beside one another. */
export interface PermanenceOfColour extends PaintOfColour {
  readonly facts: Omit<PermanenceFacts, "blueWoolReference">;
  /** The records that it goes by. */
  readonly read: readonly RecordRoot[];
}

const light = foundFrom<
  PermanenceOfColour &
    Amounts<"blueWool"> & {
      readonly deltaEab: Figure<number>;
      readonly forms: readonly FormFigures[];
    }
>();

/** What light does to the colour, and what else harms it. */
export const PERMANENCE = d.headed("permanenceSection", {
  /** By its own exposure, or stated; what it rests on is `basis`, and only the first is a category under the standard. */
  category: light.found(d.listed(d.notation("lightfastnessCategory")), categoryFigure, [
    "lamp-black.permanence.category",
    "0.9 is less than 4, the end of category I",
    "I",
  ]),
  basis: light.found(d.oneOf(BASES), ({ facts: { ruling } }) => basisOf(ruling)),
  /** For an estimate, which is worded as an expectation and never as a category. */
  expectation: light.found(
    d.listed(d.word("lightfastnessExpectation")),
    ({ colour, pigments, facts: { ruling }, read: inputs }) =>
      ruling.expectation === undefined
        ? notStated(
            noExpectation(ruling, pigments.length),
            [`colours.${colour.slug}.exposures`],
            inputs,
          )
        : sourceFigure<string>("estimated", ruling.expectation, {
            unit: "",
            method:
              "by its pigments, of which the least lightfast form of the least lightfast decides",
            source: ruling.expectationSource,
            inputs,
          }),
  ),
  blueWool: light.found(
    d.listed(d.quantity({ unit: "1", kind: "significant", digits: 1, word: "blueWool" }), {
      after: "permanence.deltaEab",
    }),
    ({ pigments, records }) => blueWoolFigure(pigments, records),
  ),
  deltaEab: light.found(
    d.listed(d.number({ ...d.ONE_PLACE, word: "deltaEab" })),
    ({ colour, facts: { ruling }, forms, read }) => {
      const weakest = weakestForm(ruling.forms)?.form;
      const changed = forms.find(({ slug }) => slug === weakest)?.deltaEab;
      if (ruling.deltaEab === undefined || changed === undefined)
        return notStated("not exposed here", [`colours.${colour.slug}.exposures`], read);
      return isKnown(changed)
        ? takenFrom(changed, `${changed.method}, of the form that changed most`)
        : changed;
    },
    ["lamp-black.permanence.deltaEab", "its exposure", 0.9],
  ),
  standing: light.found(STANDING_OR_NONE, ({ facts: { ruling } }) => ruling.standing),
  /** Masstone and tint apart, each as it was exposed or stated. */
  forms: light.found(d.list(FORM), ({ colour, facts: { ruling, stated } }) =>
    permanenceForms(colour, ruling.forms, stated),
  ),
  /** Of a mixture, the pigments that decide, by name. */
  weakest: light.found(d.texts, ({ pigments, facts: { byPigments } }) =>
    pigments.length <= 1 ? [] : byPigments.weakest,
  ),
  reasons: light.found(d.statements, ({ facts, blueWool }) =>
    said(PERMANENCE_REASONS, { ...facts, blueWoolReference: knownValue(blueWool) }),
  ),
  sensitivities: light.found(d.statements, ({ facts, blueWool }) =>
    said(SENSITIVITIES, { ...facts, blueWoolReference: knownValue(blueWool) }),
  ),
  /** What a label may say of it. */
  label: light.found(d.plain<LabelLightfastness>({ type: "string" }), ({ facts: { ruling } }) =>
    labelLightfastness(ruling),
  ),
  /** An exposure and a stated or expected lightfastness that disagree. */
  contradictions: light.found(d.statements, ({ facts, blueWool }) =>
    said(PERMANENCE_CONTRADICTIONS, { ...facts, blueWoolReference: knownValue(blueWool) }),
  ),
});
export type PermanenceSection = d.SectionOf<typeof PERMANENCE>;
