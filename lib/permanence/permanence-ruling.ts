/**
 * Permanence of a colour: from its own exposures, else as stated for it, else
 * from its pigments, of which the least lightfast decides. Never years.
 *
 * A pigment that is weaker in tints than in the masstone counts by its tints, and a mixture with a
 * pigment of which nothing is known is itself not known, since that one may be its weakest.
 *
 * @source practice-permanence : a mixed colour takes its least lightfast pigment's category.
 */
import type { Standing } from "../quantities/figure.ts";
import { given } from "../quantities/given.ts";
import { estimated, type StatementOf } from "../quantities/statement.ts";
import type { SourceKey } from "../sources/source.ts";
import {
  expectationOf,
  type ExpectedLightfastnessRow,
  categoryOf,
  type Expectation,
} from "./expected-lightfastness.ts";
import {
  formRatings,
  statedContradiction,
  weakestForm,
  type Exposure,
  type ExposedForm,
  type ExposureStatement,
  type FormRating,
  type StatedContradiction,
} from "./exposure.ts";
import { worstCategory, type LightfastnessCategory } from "./lightfastness.ts";

export interface StatedCategory {
  readonly category: LightfastnessCategory;
  readonly form?: ExposedForm | undefined;
  /** Text that states it. */
  readonly source?: SourceKey | undefined;
}

type StatedValues = { category: LightfastnessCategory; form?: ExposedForm };

/** Why a colour stands where it does in light. */
export type PermanenceReason =
  | ExposureStatement
  | StatedContradiction
  | StatementOf<"category-stated", StatedValues>
  | StatementOf<"pigment-category-stated", StatedValues & { pigment: string }>
  | StatementOf<
      "expected-by-colour-index-name",
      { pigment: string; colourIndexName: string; expectation: Expectation; kinds: string }
    >
  | StatementOf<
      "pigment-exposed-in-its-own-paint" | "pigment-exposed-as-stated",
      { pigment: string; form: ExposedForm; category: LightfastnessCategory; deltaEab: number }
    >
  | StatementOf<"weaker-in-tints", { pigment: string; expectation: Expectation }>
  | StatementOf<
      | "lightfastness-of-pigment-unknown"
      | "mixture-with-unknown-pigment"
      | "pigments-alike"
      | "weakest-pigment-decides",
      { pigments: readonly string[] }
    >;

export interface PermanencePigment {
  readonly name: string;
  readonly colourIndexName?: string | undefined;
  /** What the tables lead one to expect of it. */
  readonly expected?: ExpectedLightfastnessRow | undefined;
  /** As its supplier states. */
  readonly stated?: StatedCategory | undefined;
  /** Of a paint of this pigment alone: they count before what is stated. */
  readonly exposures?: readonly Exposure[] | undefined;
}

export interface PermanenceQuestion {
  readonly pigments: readonly PermanencePigment[];
  /** Of the colour itself. */
  readonly exposures: readonly Exposure[];
  /** Stated for the colour itself. */
  readonly stated?: StatedCategory | undefined;
}

export interface PermanenceRuling {
  readonly basis: "exposed" | "stated" | "expected" | "not known";
  readonly standing: Standing | "not stated";
  /** Only from an exposure or a statement. */
  readonly category?: LightfastnessCategory;
  /** Only for an estimate. */
  readonly expectation?: Expectation;
  /** Text that the expectation of the weakest pigment goes by. */
  readonly expectationSource?: SourceKey | undefined;
  readonly deltaEab?: number;
  /** Each form exposed, apart. */
  readonly forms: readonly FormRating[];
  /** Pigments that decide, by name; every one on the weakest step. */
  readonly weakest: readonly string[];
  /** Pigments of which nothing is known: the colour may be less lightfast than said. */
  readonly unknown: readonly string[];
  readonly reasons: readonly PermanenceReason[];
}

/** Of what somebody's word is: of the paint, of its one pigment, or of the pigments of a mixture. */
export type StatedOf = "paint" | "pigment" | "mixture";

/** Of what the word is that a category rests on which no exposure of the workshop's own tells. */
export function statedOf({
  forms,
  reasons,
}: {
  readonly forms: readonly unknown[];
  readonly reasons: readonly { readonly rule: string }[];
}): StatedOf {
  const says = (...rules: readonly PermanenceReason["rule"][]): boolean =>
    reasons.some(({ rule }) => rules.some((each) => each === rule));
  if (forms.length > 0 || says("category-stated")) return "paint";
  return says("pigments-alike", "weakest-pigment-decides") ? "mixture" : "pigment";
}

/**
 * @throws RangeError when a colour change is negative, NaN or infinite.
 * @example permanenceRuling({ pigments: [{ name: "bone black", colourIndexName: "PBk 9", expected }], exposures: [] }).expectation // "excellent"
 */
export function permanenceRuling(question: PermanenceQuestion): PermanenceRuling {
  const forms = formRatings(question.exposures);
  const exposed = weakestForm(forms);
  const { stated } = question;
  if (exposed !== undefined) {
    const isOwn = exposed.standing === "measured";
    const contradiction =
      !isOwn || stated === undefined || (stated.form !== undefined && stated.form !== exposed.form)
        ? undefined
        : statedContradiction(stated.category, exposed);
    return {
      basis: isOwn ? "exposed" : "stated",
      standing: isOwn ? "measured" : "stated",
      category: exposed.category,
      deltaEab: exposed.meanDeltaEab,
      forms,
      weakest: [],
      unknown: [],
      reasons: given([
        ...forms.map(({ reason }) => reason),
        contradiction,
        ...(isOwn || stated === undefined ? [] : [categoryStated(stated)]),
      ]),
    };
  }
  if (stated !== undefined) {
    const inTints = stated.form === "masstone" ? weakerInTints(question, stated) : undefined;
    if (inTints !== undefined) return inTints;
    return {
      basis: "stated",
      standing: "stated",
      category: stated.category,
      forms,
      weakest: [],
      unknown: [],
      reasons: [categoryStated(stated)],
    };
  }
  return fromPigments(question.pigments);
}

/** What a word for the masstone alone comes to where a pigment is expected to be weaker in tints. */
function weakerInTints(
  { pigments }: PermanenceQuestion,
  stated: StatedCategory,
): PermanenceRuling | undefined {
  const ruling = fromPigments(pigments.map((pigment) => ({ ...pigment, exposures: [], stated })));
  if (ruling.basis !== "expected") return undefined;
  return {
    ...ruling,
    reasons: [
      categoryStated(stated),
      ...ruling.reasons.filter(({ rule }) => rule !== "pigment-category-stated"),
    ],
  };
}

interface Rated {
  readonly name: string;
  readonly category: LightfastnessCategory;
  /** Whether its category is somebody's word, what its own paint did in light, or only expected of it. */
  readonly by: "word" | "exposure" | "expectation";
  readonly reasons: readonly PermanenceReason[];
}

function fromPigments(pigments: readonly PermanencePigment[]): PermanenceRuling {
  const rated = pigments.flatMap(ratedPigment);
  const unknown = pigments
    .map(({ name }) => name)
    .filter((name) => !rated.some((pigment) => pigment.name === name));
  if (unknown.length > 0 || rated.length === 0)
    return {
      basis: "not known",
      standing: "not stated",
      forms: [],
      weakest: [],
      unknown,
      reasons: given([
        ...rated.flatMap(({ reasons }) => reasons),
        unknown.length > 0 &&
          ({
            rule:
              rated.length === 0
                ? "lightfastness-of-pigment-unknown"
                : "mixture-with-unknown-pigment",
            values: { pigments: unknown },
          } satisfies PermanenceReason),
      ]),
    };

  const category = worstCategory(rated.map((pigment) => pigment.category));
  const weakestRated = rated.filter((pigment) => pigment.category === category);
  const weakest = weakestRated.map(({ name }) => name);
  // A category is passed on only as somebody's word; what one of its paints did in light is expected of the mixture.
  const allStated =
    rated.every(({ by }) => by !== "expectation") && weakestRated.some(({ by }) => by === "word");
  const mixture: PermanenceReason[] =
    pigments.length === 1
      ? []
      : [
          estimated(
            weakest.length === rated.length ? "pigments-alike" : "weakest-pigment-decides",
            { pigments: weakest },
            "practice-permanence",
          ),
        ];
  const reasons = [...rated.flatMap((pigment) => pigment.reasons), ...mixture];
  return allStated
    ? { basis: "stated", standing: "stated", category, forms: [], weakest, unknown, reasons }
    : {
        basis: "expected",
        standing: "estimated",
        expectation: expectationOf(category),
        expectationSource: rated
          .find((pigment) => pigment.category === category)
          ?.reasons.findLast(({ source }) => source !== undefined)?.source,
        forms: [],
        weakest,
        unknown,
        reasons,
      };
}

function ratedPigment(pigment: PermanencePigment): Rated[] {
  const { name, colourIndexName, stated, expected: row } = pigment;
  const exposed = weakestForm(formRatings(pigment.exposures ?? []));
  if (exposed !== undefined) {
    const { form, category, meanDeltaEab, standing, reason } = exposed;
    const isOwn = standing === "measured";
    return [
      {
        name,
        category,
        by: isOwn ? "exposure" : "word",
        reasons: [
          {
            rule: isOwn ? "pigment-exposed-in-its-own-paint" : "pigment-exposed-as-stated",
            values: { pigment: name, form, category, deltaEab: meanDeltaEab },
            standing,
            ...sourced(reason.source),
          },
        ],
      },
    ];
  }
  const inTints =
    row === undefined ? undefined : { expectation: row.tint, source: row.tintSource ?? row.source };
  const masstone: Omit<Rated, "name"> | undefined =
    stated !== undefined
      ? {
          category: stated.category,
          by: "word",
          reasons: [pigmentStated(stated, name)],
        }
      : row === undefined || colourIndexName === undefined
        ? undefined
        : {
            category: categoryOf(row.masstone),
            by: "expectation",
            reasons: [
              estimated(
                "expected-by-colour-index-name",
                {
                  pigment: name,
                  colourIndexName,
                  expectation: row.masstone,
                  kinds: row.kinds,
                },
                row.source,
              ),
            ],
          };
  if (masstone === undefined) return [];
  // A word for the tint, or for no form, is taken to cover the tint; one for the masstone is not.
  const told = stated !== undefined && stated.form !== "masstone";
  if (inTints === undefined || told) return [{ name, ...masstone }];
  const category = worstCategory([masstone.category, categoryOf(inTints.expectation)]);
  if (category === masstone.category) return [{ name, ...masstone }];
  return [
    {
      name,
      category,
      by: "expectation",
      reasons: [
        ...masstone.reasons,
        estimated(
          "weaker-in-tints",
          { pigment: name, expectation: inTints.expectation },
          inTints.source,
        ),
      ],
    },
  ];
}

function categoryStated(stated: StatedCategory): PermanenceReason {
  return {
    rule: "category-stated",
    values: statedValues(stated),
    standing: "stated",
    ...sourced(stated.source),
  };
}

function pigmentStated(stated: StatedCategory, pigment: string): PermanenceReason {
  return {
    rule: "pigment-category-stated",
    values: { ...statedValues(stated), pigment },
    standing: "stated",
    ...sourced(stated.source),
  };
}

function statedValues({ category, form }: StatedCategory): StatedValues {
  return { category, ...(form !== undefined && { form }) };
}

function sourced(source: SourceKey | undefined): { readonly source?: SourceKey } {
  return source === undefined ? {} : { source };
}
