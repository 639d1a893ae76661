import type { StatementOf } from "../quantities/statement.ts";
import { categoryOf } from "./expected-lightfastness.ts";
import { worstCategory, type LightfastnessCategory } from "./lightfastness.ts";
import {
  permanenceRuling,
  type PermanenceQuestion,
  type PermanenceRuling,
} from "./permanence-ruling.ts";

/** A component of a mixture: its pigment, with what is known of the paint made of that pigment alone. */
export interface FadingComponent extends PermanenceQuestion {
  readonly name: string;
}

export type LeastLightfastStatement =
  | StatementOf<"least-lightfast-by-exposure", { pigments: readonly string[]; deltaEab?: number }>
  | StatementOf<
      "least-lightfast-as-stated",
      { pigments: readonly string[]; category: LightfastnessCategory }
    >
  | StatementOf<
      "least-lightfast-expected" | "components-alike-in-light" | "components-in-light-not-known",
      { pigments: readonly string[] }
    >;

/**
 * Which component of a mixture light takes first, from the exposure of each by itself, else from what is stated or expected of it.
 * @returns `least-lightfast-by-exposure`, `-as-stated` or `-expected`, with the names on the weakest step (one, or some of them);
 *   `components-alike-in-light` when they are all on one step; `components-in-light-not-known`, with their names, when nothing is
 *   known of one or more.
 * @source practice-permanence
 */
export function leastLightfast(components: readonly FadingComponent[]): LeastLightfastStatement {
  const rated = components.map((component) => ({
    name: component.name,
    ruling: permanenceRuling(component),
  }));
  const known = rated.flatMap(({ name, ruling }) => {
    const category = categoryIn(ruling);
    return category === undefined ? [] : [{ name, ruling, category }];
  });
  const unknown = rated
    .filter(({ name }) => !known.some((one) => one.name === name))
    .map(({ name }) => name);
  if (unknown.length > 0)
    return { rule: "components-in-light-not-known", values: { pigments: unknown } };
  const worst = worstCategory(known.map(({ category }) => category));
  const weakest = known.filter(({ category }) => category === worst);
  const [first] = weakest;
  const pigments = weakest.map(({ name }) => name);
  if (first === undefined || weakest.length === known.length)
    return {
      rule: "components-alike-in-light",
      values: { pigments },
      source: "practice-permanence",
    };
  // Of several on one step the weakest ground counts.
  const basis =
    (["expected", "stated", "exposed"] as const).find((kind) =>
      weakest.some(({ ruling }) => ruling.basis === kind),
    ) ?? "expected";
  const { deltaEab } = first.ruling;
  const source = "practice-permanence";
  if (basis === "stated")
    return { rule: "least-lightfast-as-stated", values: { pigments, category: worst }, source };
  if (basis === "expected")
    return { rule: "least-lightfast-expected", values: { pigments }, source };
  return {
    rule: "least-lightfast-by-exposure",
    values: { pigments, ...(deltaEab !== undefined && { deltaEab }) },
    source,
  };
}

function categoryIn({ category, expectation }: PermanenceRuling): PermanenceRuling["category"] {
  return category ?? (expectation === undefined ? undefined : categoryOf(expectation));
}
