import type { JudgedTintStatement, TintStatement } from "../optics/tints/tint-statement.ts";
import type { Quantity } from "../quantities/interval.ts";
import type { WordingsOf } from "../quantities/statement.ts";
import { worded } from "./by-rule.ts";

type Phrases = WordingsOf<JudgedTintStatement>;

/** What a language brings to its sentences on tints; which whites they tell of, and in what order, no language changes. */
export interface TintWords {
  /** What a colour does in a white, without saying which. */
  readonly phrases: Phrases;
  /** The same in words alone, without a figure beside it. */
  readonly inWords: Phrases;
  /** The same in the room of a card: of a grey its hue says it all. */
  readonly onCards: Phrases;
  /** What a let-down rests on, beside its figure. */
  readonly bases: Readonly<Record<JudgedTintStatement["values"]["basis"], string>>;
  /** "in" a white, "at" a lightness, from one chroma "to" another. */
  readonly in: string;
  readonly at: string;
  readonly to: string;
  /** Between two clauses, with its spaces. */
  readonly semicolon: string;
  readonly notTried: string;
  readonly othersBelow: string;
  /** What the sentence of a first screen may take [characters]. */
  readonly lengthMax: number;
  readonly listed: (texts: readonly string[]) => string;
  readonly decimals: (value: Quantity, places: number) => string;
  /** A white's name before another white that says the rest: "zinc" of "zinc white"; the whole of a name of another form. */
  readonly shortWhite: (name: string) => string;
}

/** A colour in one white, with the white's name as its record gives it. */
export interface InNamedWhite {
  readonly white: string;
  readonly ruling: TintStatement;
}

/** A colour with chroma of its own, in a white. */
export type JudgedColour = Extract<
  JudgedTintStatement,
  { readonly rule: "gains-chroma" }
>["values"];

/** Share of the larger coordinate from which the smaller one is told as well. */
export const BOTH_FROM = 0.5;

/** One way in which a colour differs from another. */
export interface Way {
  readonly axis: "a*" | "b*";
  readonly toward: "blue" | "yellow" | "green" | "red";
  readonly by: number;
}

/** The ways from one colour to another: the greater first, the smaller where it counts. */
export function waysApart({
  aChange,
  bChange,
}: {
  readonly aChange: number;
  readonly bChange: number;
}): Way[] {
  const alongB: Way = {
    axis: "b*",
    toward: bChange <= 0 ? "blue" : "yellow",
    by: Math.abs(bChange),
  };
  const alongA: Way = {
    axis: "a*",
    toward: aChange < 0 ? "green" : "red",
    by: Math.abs(aChange),
  };
  const [greater, smaller] = alongA.by > alongB.by ? [alongA, alongB] : [alongB, alongA];
  return smaller.by >= BOTH_FROM * greater.by ? [greater, smaller] : [greater];
}

/** Those of some whites in which a colour could be judged. */
export function judgedTints<T extends InNamedWhite>(
  tints: readonly T[],
): (T & { readonly ruling: JudgedTintStatement })[] {
  return tints.filter(
    (tint): tint is T & { readonly ruling: JudgedTintStatement } =>
      tint.ruling.rule !== "no-tint-to-judge",
  );
}

/** What a colour does in whites: those in which it does the same together, in the order of the first of each. */
export function alike<T>(
  tints: readonly T[],
  phraseOf: (tint: T) => string,
): (readonly [phrase: string, tints: readonly T[]])[] {
  return [...new Set(tints.map(phraseOf))].map((phrase) => [
    phrase,
    tints.filter((tint) => phraseOf(tint) === phrase),
  ]);
}

/** The same of whites as they are told without figures: those that can be judged, the strongest turn first. */
export function judgedAlike<T extends InNamedWhite>(tints: readonly T[], phrases: Phrases) {
  return alike(
    judgedTints(tints).toSorted(
      (one, other) => other.ruling.values.chroma - one.ruling.values.chroma,
    ),
    ({ ruling }) => worded(phrases, ruling),
  );
}
