import { DRYING_SIGNS } from "../../drying/contribution.ts";
import { dryingClassRuling } from "../../drying/drying-class.ts";
import { certain } from "../../quantities/at.ts";
import {
  DRYING_REASONS,
  FILM_HEALTH,
  LAYERING_REASONS,
  type DryingFacts,
} from "../../drying/drying-rules.ts";
import { GROUND_RULES, groundStatements } from "../../drying/layering-advice.ts";
import { layeringLine } from "../../drying/layering-line.ts";
import { linseedDays } from "../../drying/oils.ts";
import { fatnessRuling } from "../../drying/oil-richness.ts";
import { classifiedFigure } from "../../quantities/derived-figure.ts";
import {
  isKnown,
  knownValue,
  notStated,
  sourceFigure,
  takenFrom,
  type Figure,
  type StandingKind,
} from "../../quantities/figure.ts";
import type { Interval } from "../../quantities/interval.ts";
import { keysOf } from "../../quantities/members.ts";
import { said, type Statement } from "../../quantities/statement.ts";
import * as d from "../declaration.ts";
import { colourFamily } from "../colour-family.ts";
import { found, foundFrom } from "../found.ts";
import type { PaintOfColour } from "../paint-as-made.ts";
import { colourRecord } from "../record-inputs.ts";
import { TRIAL, type TrialFigures } from "./trial-figures.ts";
import { given } from "../../quantities/given.ts";

/** A standing, or that nothing is known. */
export const STANDING_OR_NONE = d.oneOf<StandingKind>([
  "measured",
  "derived",
  "estimated",
  "stated",
  "not stated",
]);

/** One thing that moves the days, with its sign and what it multiplies them by. */
const CONTRIBUTION = d.section({
  sentence: d.statement,
  sign: d.oneOf(DRYING_SIGNS),
  /** Days over days without it [1]. */
  factor: d.interval({ unit: "1", kind: "significant", digits: 2, word: "dryingFactor" }),
});
export type ContributionFigure = d.SectionOf<typeof CONTRIBUTION>;

type Days<K extends string> = Readonly<Record<K, Figure<Interval>>>;

/** Fast, medium, slow or very slow, by the middle; what is printed says every class that the days reach into. */
const CLASS = found(d.word("dryingClass"), ({ touchDryDays: days }: Days<"touchDryDays">) =>
  classifiedFigure(
    { name: "class by days to touch dry", unit: "", source: "practice-drying" },
    { days },
    (v) => dryingClassRuling(v.days).dryingClass as string,
    (v) => dryingClassRuling(v.days).spans,
  ),
);

export const TINT_DRYING = d.section({
  white: d.section({ slug: d.text, name: d.text, colourIndexName: d.optional(d.text) }),
  /** White to one part of the colour by mass of paint, of the estimate. */
  whiteParts: d.plainNumber,
  class: CLASS,
  touchDryDays: d.days("touchDryDays"),
  contributions: d.list(CONTRIBUTION),
});
export type TintDrying = d.SectionOf<typeof TINT_DRYING>;

/** What the figures of a colour's drying are found from, beside one another. */
export interface DryingOfColour extends PaintOfColour {
  /** Its own trials, as the sheet shows them; of those of the colour alone the one that overrides the rules. */
  readonly tried: readonly TrialFigures[];
  readonly decides: TrialFigures | undefined;
  /** By the rules, from linseed's days and each contribution; by trials of what is in it where these tell. */
  readonly byRules: (from: readonly Figure[]) => Figure<Interval>;
  /** What the rules say of it before anything else. */
  readonly ofRules: readonly Statement[];
  /** Held against the rules for its own film and room. */
  readonly againstRules: readonly Statement[];
  readonly inEachWhite: (linseedDays: Figure<Interval>) => readonly TintDrying[];
  readonly facts: Omit<DryingFacts, "touchDryDays">;
}

const drying = foundFrom<
  DryingOfColour &
    Days<"expectedDays" | "linseedDays" | "touchDryDays"> & {
      readonly contributions: readonly ContributionFigure[];
    }
>();

/** Days, class and reasons of drying, and what follows for layers and film. */
export const DRYING = d.headed("dryingSection", {
  class: d.listed(CLASS),
  touchDryDays: drying.found(
    d.listed(d.days("touchDryDays")),
    ({ decides, expectedDays }) =>
      decides === undefined ? expectedDays : takenFrom(decides.touchDryDays),
    ["lamp-black.drying.touchDryDays", "its trial", 8],
  ),
  throughDryDays: drying.found(
    d.listed(d.days("throughDryDays")),
    ({ colour, decides }) =>
      decides?.throughDryDays === undefined
        ? notStated(
            "no trial to through dry",
            [`colours.${colour.slug}.dryingTrials`],
            colourRecord(colour, "dryingTrials"),
          )
        : takenFrom(decides.throughDryDays),
    ["lamp-black.drying.throughDryDays", "its trial", 21],
  ),
  standing: drying.found(STANDING_OR_NONE, ({ touchDryDays }) => touchDryDays.standing),
  /** What the rules expect, beside a trial too. */
  expectedDays: drying.found(
    d.listed(d.days("expectedDays")),
    ({ byRules, linseedDays, contributions }) =>
      byRules([linseedDays, ...contributions.map(({ factor }) => factor)]),
  ),
  /** Days of linseed oil alone, which the estimate starts from. */
  linseedDays: drying.found(d.days("linseedDays"), ({ facts: { tables } }) =>
    sourceFigure("estimated", linseedDays(tables.oils), {
      unit: "d",
      method: "linseed oil alone, thin film, 20–23 °C",
      source: "memory-drying",
      inputs: [],
    }),
  ),
  reasons: drying.found(d.statements, ({ decides, ofRules, expectedDays, touchDryDays, facts }) =>
    given([
      decides?.sentence,
      ...ofRules,
      decides === undefined &&
        isKnown(expectedDays) &&
        dryingClassRuling(expectedDays.value).reason,
      ...said(DRYING_REASONS, { ...facts, touchDryDays: knownValue(touchDryDays) }),
    ]),
  ),
  contributions: d.list(CONTRIBUTION),
  /** Every trial with the conditions it was made under. */
  trials: drying.found(d.list(TRIAL), ({ tried }) => tried),
  /** Let down with each of its whites: mixtures of the two paints. */
  inWhites: drying.found(d.list(TINT_DRYING), ({ inEachWhite, linseedDays }) =>
    inEachWhite(linseedDays),
  ),
  /** Where in a painting it belongs, in one line. */
  layering: drying.found(
    d.statements,
    ({ colour, records, touchDryDays, facts: { oilVolumeFraction: oil, pigments } }) =>
      isKnown(touchDryDays)
        ? [
            layeringLine(
              certain(dryingClassRuling(touchDryDays.value).spans.at(-1)),
              oil === undefined ? undefined : fatnessRuling(oil).fatness,
              zincShare(pigments),
              colourFamily(colour, records) === "extender",
            ),
          ]
        : [],
  ),
  /** What that line was weighed from. */
  layeringReasons: drying.found(d.statements, ({ facts }) => said(LAYERING_REASONS, facts)),
  grounds: drying.found(d.statements, () => keysOf(GROUND_RULES).flatMap(groundStatements)),
  filmHealth: drying.found(d.statements, ({ facts, touchDryDays }) =>
    said(FILM_HEALTH, { ...facts, touchDryDays: knownValue(touchDryDays) }),
  ),
  contradictions: drying.found(d.statements, ({ againstRules }) => againstRules),
});
export type DryingSection = d.SectionOf<typeof DRYING>;

/** Zinc oxide's share of the dry pigment; all of it where the parts are not recorded. */
function zincShare(pigments: DryingFacts["pigments"]): number {
  return pigments
    .filter(({ chemistry }) => chemistry?.chemistry === "zinc oxide")
    .reduce((sum, { massFraction = 1 }) => sum + massFraction, 0);
}
