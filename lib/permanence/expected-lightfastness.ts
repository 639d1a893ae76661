/**
 * What is expected of a pigment's lightfastness where nothing was exposed and nothing
 * is stated; `expected-lightfastness.csv` says which pigment stands where. It is worded
 * as an expectation ("expected excellent; not tested here"), never as a category under
 * a standard.
 */
import type { SourceKey } from "../sources/source.ts";
import type { LightfastnessCategory } from "./lightfastness.ts";
import { certain } from "../quantities/at.ts";

/** The words, best first; `category` is only what the word would answer to, for comparing. */
export const EXPECTATIONS = [
  { expectation: "excellent", category: "I" },
  { expectation: "very good", category: "II" },
  { expectation: "fair", category: "III" },
  { expectation: "poor", category: "IV" },
  { expectation: "fugitive", category: "V" },
] as const satisfies readonly { expectation: string; category: LightfastnessCategory }[];
export type Expectation = (typeof EXPECTATIONS)[number]["expectation"];

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
  return certain(EXPECTATIONS.find((row) => row.category === category)).expectation;
}

/** Category that an expectation word would answer to, for comparing alone. */
export function categoryOf(expectation: Expectation): LightfastnessCategory {
  return certain(EXPECTATIONS.find((row) => row.expectation === expectation)).category;
}
