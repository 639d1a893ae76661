/**
 * Colour change of exposed specimens to a category, form by form: masstone and
 * tint can differ by a category or more, so the form that was exposed is rated.
 *
 * @source astm-d4303 : a daylight and a xenon-arc exposure are combined (read); limits from memory.
 */
import { weakestRoot, type RootStanding } from "../quantities/figure.ts";
import type { StatementOf } from "../quantities/statement.ts";
import type { SourceKey } from "../sources/source.ts";
import { lightfastnessRuling, worstCategory, type LightfastnessCategory } from "./lightfastness.ts";

export type ExposedForm = "masstone" | "tint";
export type ExposureKind = "daylight" | "xenon arc";

export interface Exposure {
  /** Delta-E*ab (CIE 1976) [1], finite and >= 0. */
  readonly deltaEab: number;
  readonly form: ExposedForm;
  /** As the record names them. */
  readonly standard: string;
  readonly exposure: string;
  /** Whose finding the change is: the workshop's own unless the record says otherwise. */
  readonly standing?: RootStanding;
  /** Of another's finding, the text that tells it. */
  readonly source?: SourceKey;
}

interface FormChange {
  readonly form: ExposedForm;
  readonly category: LightfastnessCategory;
  readonly meanDeltaEab: number;
}

export type ExposureStatement = StatementOf<
  "exposed-under-standard" | "exposed-not-under-standard" | "exposure-as-stated",
  FormChange & {
    /** Upper limit of the category; the last has none. */
    readonly deltaEabMax?: number;
    readonly standards: readonly string[];
    readonly exposures: readonly string[];
  }
>;

export type StatedContradiction = StatementOf<
  "exposure-better-than-stated" | "exposure-worse-than-stated",
  {
    stated: LightfastnessCategory;
    exposed: LightfastnessCategory;
    form: ExposedForm;
    meanDeltaEab: number;
  }
>;

export interface FormRating {
  readonly form: ExposedForm;
  readonly category: LightfastnessCategory;
  /** Mean over the exposures of this form [1]. */
  readonly meanDeltaEab: number;
  /** Whether the record names D4303 and holds both of its kinds of exposure, for the tint that it prescribes. */
  readonly underStandard: boolean;
  /** As weak as the weakest of its exposures: `measured` only where all are the workshop's own. */
  readonly standing: RootStanding;
  readonly reason: ExposureStatement;
}

/** Words of an exposure, lower case, that tell its kind. */
const EXPOSURE_WORDS: readonly {
  readonly kind: ExposureKind;
  readonly words: readonly string[];
}[] = [
  { kind: "xenon arc", words: ["xenon"] },
  {
    kind: "daylight",
    words: ["daylight", "sunlight", "window", "under glass", "outdoor", "florida", "arizona"],
  },
];

/** Kind of an exposure from the record's words; undefined when they do not tell. */
export function exposureKind(exposure: string): ExposureKind | undefined {
  const text = exposure.toLowerCase();
  return EXPOSURE_WORDS.find(({ words }) => words.some((word) => text.includes(word)))?.kind;
}

/**
 * One rating for each form that was exposed, masstone first.
 * @throws RangeError when a colour change is negative, NaN or infinite.
 */
export function formRatings(exposures: readonly Exposure[]): FormRating[] {
  return (["masstone", "tint"] as const).flatMap((form) => {
    const ofForm = exposures.filter((exposure) => exposure.form === form);
    return ofForm.length === 0 ? [] : [formRating(form, ofForm)];
  });
}

/** The rating of the form that changed most: the one a colour is judged by. */
export function weakestForm(ratings: readonly FormRating[]): FormRating | undefined {
  return ratings.toSorted((one, other) => other.meanDeltaEab - one.meanDeltaEab)[0];
}

function formRating(form: ExposedForm, exposures: readonly Exposure[]): FormRating {
  for (const { deltaEab } of exposures) lightfastnessRuling(deltaEab);
  const meanDeltaEab =
    exposures.reduce((total, { deltaEab }) => total + deltaEab, 0) / exposures.length;
  const { category, limit } = lightfastnessRuling(meanDeltaEab);
  const kinds = new Set(exposures.map(({ exposure }) => exposureKind(exposure)));
  const underStandard =
    form === "tint" &&
    exposures.every(({ standard }) => /\bD\s?4303\b/i.test(standard)) &&
    kinds.has("daylight") &&
    kinds.has("xenon arc");
  const standing = weakestRoot(exposures.map((exposure) => exposure.standing ?? "measured"));
  const told = exposures.find(({ source }) => source !== undefined)?.source;
  return {
    form,
    category,
    meanDeltaEab,
    underStandard,
    standing,
    reason: {
      rule:
        standing !== "measured"
          ? "exposure-as-stated"
          : underStandard
            ? "exposed-under-standard"
            : "exposed-not-under-standard",
      standing,
      source: standing === "measured" ? "astm-d4303" : (told ?? "astm-d4303"),
      values: {
        form,
        category,
        meanDeltaEab,
        ...(limit.deltaEabMax === Infinity ? {} : { deltaEabMax: limit.deltaEabMax }),
        standards: [...new Set(exposures.map(({ standard }) => standard))],
        exposures: [...new Set(exposures.map(({ exposure }) => exposure))],
      },
    },
  };
}

/** A stated category and the workshop's own exposure that differ: the exposure rules, and the difference is said. */
export function statedContradiction(
  stated: LightfastnessCategory,
  exposed: Pick<FormRating, "form" | "category" | "meanDeltaEab">,
): StatedContradiction | undefined {
  if (stated === exposed.category) return undefined;
  return {
    rule:
      worstCategory([stated, exposed.category]) === stated
        ? "exposure-better-than-stated"
        : "exposure-worse-than-stated",
    values: {
      stated,
      exposed: exposed.category,
      form: exposed.form,
      meanDeltaEab: exposed.meanDeltaEab,
    },
    standing: "derived",
    source: "practice-permanence",
  };
}
