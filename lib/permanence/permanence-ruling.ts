/**
 * Permanence of a colour: from its own exposures, else as stated for it, else
 * from its pigments, of which the least lightfast decides. Never years.
 *
 * @source practice-permanence : a mixed colour takes its least lightfast pigment's category.
 */
import type { Standing } from "../quantities/figure.ts";
import type { Statement } from "../quantities/statement.ts";
import {
  expectationOf,
  weakerExpectation,
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
  type FormRating,
} from "./exposure.ts";
import { worstCategory, type LightfastnessCategory } from "./lightfastness.ts";

export interface StatedCategory {
  readonly category: LightfastnessCategory;
  readonly form?: ExposedForm | undefined;
}

export interface PermanencePigment {
  readonly name: string;
  readonly colourIndexName?: string | undefined;
  /** What the tables lead one to expect of it. */
  readonly expected?: ExpectedLightfastnessRow | undefined;
  /** As its supplier states. */
  readonly stated?: StatedCategory | undefined;
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
  readonly deltaEab?: number;
  /** Each form exposed, apart. */
  readonly forms: readonly FormRating[];
  /** Pigments that decide, by name; every one on the weakest step. */
  readonly weakest: readonly string[];
  /** Pigments of which nothing is known: the colour may be less lightfast than said. */
  readonly unknown: readonly string[];
  readonly reasons: readonly Statement[];
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
    const contradiction =
      stated === undefined || (stated.form !== undefined && stated.form !== exposed.form)
        ? undefined
        : statedContradiction(stated.category, exposed);
    return {
      basis: "exposed",
      standing: "measured",
      category: exposed.category,
      deltaEab: exposed.meanDeltaEab,
      forms,
      weakest: [],
      unknown: [],
      reasons: [
        ...forms.map(({ reason }) => reason),
        ...(contradiction === undefined ? [] : [contradiction]),
      ],
    };
  }
  if (stated !== undefined) {
    return {
      basis: "stated",
      standing: "stated",
      category: stated.category,
      forms,
      weakest: [],
      unknown: [],
      reasons: [statedReason("category-stated", stated)],
    };
  }
  return fromPigments(question.pigments);
}

interface Rated {
  readonly name: string;
  readonly category: LightfastnessCategory;
  readonly isStated: boolean;
  readonly reason: Statement;
}

function fromPigments(pigments: readonly PermanencePigment[]): PermanenceRuling {
  const rated = pigments.flatMap(ratedPigment);
  const unknown = pigments
    .map(({ name }) => name)
    .filter((name) => !rated.some((pigment) => pigment.name === name));
  const unknownReason: Statement[] =
    unknown.length === 0
      ? []
      : [{ rule: "lightfastness-of-pigment-unknown", values: { pigments: unknown } }];
  if (rated.length === 0)
    return {
      basis: "not known",
      standing: "not stated",
      forms: [],
      weakest: [],
      unknown,
      reasons: unknownReason,
    };

  const category = worstCategory(rated.map((pigment) => pigment.category));
  const weakest = rated.filter((pigment) => pigment.category === category).map(({ name }) => name);
  const allStated = unknown.length === 0 && rated.every(({ isStated }) => isStated);
  const mixture: Statement[] =
    pigments.length === 1
      ? []
      : [
          {
            rule: weakest.length === rated.length ? "pigments-alike" : "weakest-pigment-decides",
            values: { pigments: weakest },
            standing: "estimated",
            source: "practice-permanence",
          },
        ];
  const reasons = [...rated.map(({ reason }) => reason), ...mixture, ...unknownReason];
  return allStated
    ? { basis: "stated", standing: "stated", category, forms: [], weakest, unknown, reasons }
    : {
        basis: "expected",
        standing: "estimated",
        expectation: expectationOf(category),
        forms: [],
        weakest,
        unknown,
        reasons,
      };
}

function ratedPigment({ name, colourIndexName, stated, expected }: PermanencePigment): Rated[] {
  if (stated !== undefined)
    return [
      {
        name,
        category: stated.category,
        isStated: true,
        reason: statedReason("pigment-category-stated", stated, name),
      },
    ];
  if (expected === undefined || colourIndexName === undefined) return [];
  const expectation = weakerExpectation(expected);
  return [
    {
      name,
      category: categoryOf(expectation),
      isStated: false,
      reason: {
        rule: "expected-by-colour-index-name",
        values: { pigment: name, colourIndexName, expectation, kinds: expected.kinds },
        standing: "estimated",
        source: expected.source,
      },
    },
  ];
}

function statedReason(
  rule: string,
  { category, form }: StatedCategory,
  pigment?: string,
): Statement {
  return {
    rule,
    values: {
      category,
      ...(form === undefined ? {} : { form }),
      ...(pigment === undefined ? {} : { pigment }),
    },
    standing: "stated",
  };
}
