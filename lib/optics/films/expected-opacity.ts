import type { StatementOf } from "../../quantities/statement.ts";
import type { OpacityClass, OpacityStatement } from "./opacity.ts";

/**
 * How far a paint of a pigment hides what is under it, as handbooks and painters
 * expect of it before a film is drawn; `expected-opacity.csv` says of which.
 */
export const EXPECTED_OPACITIES = [
  "transparent",
  "semi-transparent",
  "semi-opaque",
  "opaque",
] as const;
export type ExpectedOpacity = (typeof EXPECTED_OPACITIES)[number];

/** Classes between the two from which they contradict each other: one step is within the expectation. @source optics-practice */
const CONTRADICTING_CLASSES = 2;

export type OpacityContradiction = StatementOf<
  "opacity-unlike-its-pigment",
  { readonly class: OpacityClass; readonly expected: ExpectedOpacity }
>;

/**
 * A class that was worked out, held against what is to be expected of the paint's one pigment.
 * @returns the contradiction where every class that the figure may stand for lies two or more away; else undefined.
 */
export function opacityContradiction(
  opacity: OpacityStatement,
  expected: ExpectedOpacity,
): OpacityContradiction | undefined {
  if (opacity.rule !== "opacity-by-contrast-ratio" && opacity.rule !== "opacity-by-scattering")
    return undefined;
  const away = classesOf(opacity).map((one) => Math.abs(step(one) - step(expected)));
  if (Math.min(...away) < CONTRADICTING_CLASSES) return undefined;
  return {
    rule: "opacity-unlike-its-pigment",
    values: { class: opacity.values.class, expected },
    standing: "derived",
    source: "optics-practice",
  };
}

/** What a class may stand for: where its figure is only a bound, all on that side; where it is a range, all that this spans. */
function classesOf(
  opacity: Extract<
    OpacityStatement,
    { rule: "opacity-by-contrast-ratio" | "opacity-by-scattering" }
  >,
): readonly OpacityClass[] {
  const { class: own } = opacity.values;
  if (opacity.rule === "opacity-by-scattering") return [own, ...opacity.values.spans];
  const { bound } = opacity.values;
  if (bound === undefined) return [own];
  return EXPECTED_OPACITIES.filter((one) =>
    bound === "at least" ? step(one) >= step(own) : step(one) <= step(own),
  );
}

function step(word: ExpectedOpacity): number {
  return EXPECTED_OPACITIES.indexOf(word);
}
