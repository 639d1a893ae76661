import type { ExpectedContradiction } from "../../permanence/expected-contradiction.ts";
import type { StatedContradiction } from "../../permanence/exposure.ts";
import type { LabelLightfastness } from "../../permanence/lightfastness-on-label.ts";
import type { SensitivityStatement } from "../../permanence/sensitivity.ts";
import type { PermanenceStatement } from "../../permanence/statements.ts";
import { FORMS } from "../../records/schema/terms.ts";
import {
  flag,
  list,
  notation,
  number,
  oneOf,
  optional,
  plain,
  quantity,
  section,
  texts,
  word,
  type SectionOf,
} from "../declaration.ts";
import { STANDING_OR_NONE } from "../drying/drying-figures.ts";

const BASIS = oneOf([
  "exposed under the standard",
  "own exposure",
  "stated",
  "expected",
  "not known",
]);
export type PermanenceBasis = SectionOf<typeof BASIS>;

const FORM = section({
  slug: oneOf(FORMS),
  underStandard: flag,
  category: notation("lightfastnessCategory"),
  deltaEab: optional(number({ unit: "1", kind: "decimal", digits: 1, word: "deltaEab" })),
  /** As the record names them. */
  standards: texts,
  exposures: texts,
});
export type FormFigures = SectionOf<typeof FORM>;

function said<S>(): ReturnType<typeof plain<readonly S[]>> {
  return plain<readonly S[]>({ type: "array", items: { type: "string" } });
}

/** What light does to the colour, and what else harms it. */
export const PERMANENCE = section({
  /** By its own exposure, or stated; what it rests on is `basis`, and only the first is a category under the standard. */
  category: notation("lightfastnessCategory"),
  basis: BASIS,
  /** For an estimate, which is worded as an expectation and never as a category. */
  expectation: word("lightfastnessExpectation"),
  blueWool: quantity({ unit: "1", kind: "significant", digits: 1, word: "blueWool" }),
  deltaEab: number({ unit: "1", kind: "decimal", digits: 1, word: "deltaEab" }),
  standing: STANDING_OR_NONE,
  /** Masstone and tint apart, each as it was exposed or stated. */
  forms: list(FORM),
  /** Of a mixture, the pigments that decide, by name. */
  weakest: texts,
  reasons: said<PermanenceStatement>(),
  sensitivities: said<SensitivityStatement>(),
  /** What a label may say of it. */
  label: plain<LabelLightfastness>({ type: "string" }),
  /** An exposure and a stated or expected lightfastness that disagree. */
  contradictions: said<StatedContradiction | ExpectedContradiction>(),
});
export type PermanenceSection = SectionOf<typeof PERMANENCE>;
