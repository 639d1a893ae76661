import { DRYING_SIGNS } from "../../drying/contribution.ts";
import type { StandingKind } from "../../quantities/figure.ts";
import {
  days,
  interval,
  list,
  listed,
  oneOf,
  optional,
  plainNumber,
  quantity,
  section,
  statement,
  statements,
  text,
  word,
  type SectionOf,
} from "../declaration.ts";
import { NAMED } from "../optics/optics-figures.ts";

/** A standing, or that nothing is known. */
export const STANDING_OR_NONE = oneOf<StandingKind>([
  "measured",
  "derived",
  "estimated",
  "stated",
  "not stated",
]);

/** One thing that moves the days, with its sign and what it multiplies them by. */
const CONTRIBUTION = section({
  sentence: statement,
  sign: oneOf(DRYING_SIGNS),
  /** Days over days without it [1]. */
  factor: interval({ unit: "1", kind: "significant", digits: 2, word: "dryingFactor" }),
});
export type ContributionFigure = SectionOf<typeof CONTRIBUTION>;

export const TRIAL = section({
  sentence: statement,
  /** The white that the colour was let down with; absent for the colour alone. */
  tintedWith: optional(NAMED),
  method: optional(text),
  date: optional(text),
  touchDryDays: days("touchDryDays"),
  throughDryDays: optional(days("throughDryDays")),
  filmThicknessUm: optional(
    quantity({ unit: "um", kind: "significant", digits: 3, word: "filmThickness" }),
  ),
  temperatureC: optional(
    quantity({ unit: "degC", kind: "significant", digits: 2, word: "temperature" }),
  ),
  humidityPercent: optional(
    quantity({ unit: "%", kind: "significant", digits: 2, word: "humidity" }),
  ),
});
export type TrialFigures = SectionOf<typeof TRIAL>;

const TINT_DRYING = section({
  white: section({ slug: text, name: text, colourIndexName: optional(text) }),
  /** White to one part of the colour by mass of paint, of the estimate. */
  whiteParts: plainNumber,
  class: word("dryingClass"),
  touchDryDays: days("touchDryDays"),
  contributions: list(CONTRIBUTION),
});
export type TintDrying = SectionOf<typeof TINT_DRYING>;

/** Days, class and reasons of drying, and what follows for layers and film. */
export const DRYING = section({
  class: listed(word("dryingClass")),
  touchDryDays: listed(days("touchDryDays")),
  throughDryDays: listed(days("throughDryDays")),
  standing: STANDING_OR_NONE,
  /** What the rules expect, beside a trial too. */
  expectedDays: listed(days("expectedDays")),
  /** Days of linseed oil alone, which the estimate starts from. */
  linseedDays: days("linseedDays"),
  reasons: statements,
  contributions: list(CONTRIBUTION),
  /** Every trial with the conditions it was made under. */
  trials: list(TRIAL),
  /** Let down with each of its whites: mixtures of the two paints. */
  inWhites: list(TINT_DRYING),
  /** Where in a painting it belongs, in one line. */
  layering: statements,
  /** What that line was weighed from. */
  layeringReasons: statements,
  grounds: statements,
  filmHealth: statements,
  contradictions: statements,
});
export type DryingSection = SectionOf<typeof DRYING>;
