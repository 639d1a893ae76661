/**
 * What is expected of a pigment's lightfastness where nothing was exposed and nothing
 * is stated; `expected-lightfastness.csv` says which pigment stands where. It is worded
 * as an expectation ("expected excellent; not tested here"), never as a category under
 * a standard.
 */
import type { SourceKey } from "../sources/source.ts";
import type { LightfastnessCategory } from "./lightfastness.ts";
import { certain } from "../quantities/at.ts";

export const EXPECTATION_WORDS = ["excellent", "very good", "fair", "poor", "fugitive"] as const;
export type Expectation = (typeof EXPECTATION_WORDS)[number];

/** The words, best first; `category` is only what the word would answer to, for comparing. */
export const EXPECTATIONS: readonly {
  readonly expectation: Expectation;
  readonly category: LightfastnessCategory;
}[] = [
  { expectation: "excellent", category: "I" },
  { expectation: "very good", category: "II" },
  { expectation: "fair", category: "III" },
  { expectation: "poor", category: "IV" },
  { expectation: "fugitive", category: "V" },
];

/** What is expected of one pigment, or of a kind of pigments. */
export interface ExpectedLightfastnessRow {
  /** What the pigment stands among: "quinacridones". */
  readonly kinds: string;
  readonly masstone: Expectation;
  readonly tint: Expectation;
  /** Text that tells of the tint, where it is another. */
  readonly tintSource?: SourceKey | undefined;
  readonly source: SourceKey;
}

/** Expectation word that answers to a category. */
export function expectationOf(category: LightfastnessCategory): Expectation {
  const row = certain(EXPECTATIONS.find((candidate) => candidate.category === category));
  return row.expectation;
}

/** Category that an expectation word would answer to, for comparing alone. */
export function categoryOf(expectation: Expectation): LightfastnessCategory {
  const row = certain(EXPECTATIONS.find((candidate) => candidate.expectation === expectation));
  return row.category;
}
