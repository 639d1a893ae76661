import type { Criterion } from "../lots/judgement.ts";
import type { Interval } from "../quantities/interval.ts";
import type { PrintedNumbers } from "./number-text.ts";

/** What is held against the standard: its name, its unit, and to how many places it is rounded. */
export type Criteria = Readonly<
  Record<Criterion, { readonly name: string; readonly unit: string; readonly places: number }>
>;

/** The criteria in a language. @param ofOil the unit of an oil index, of which a part is a word. */
export function criteriaIn(names: Readonly<Record<Criterion, string>>, ofOil: string): Criteria {
  const criterion = (of: Criterion, unit: string, places: number): Criteria[Criterion] => ({
    name: names[of],
    unit,
    places,
  });
  return {
    masstone: criterion("masstone", "\u0394E00", 2),
    letDown: criterion("letDown", "\u0394E00", 2),
    strength: criterion("strength", "%", 1),
    residual: criterion("residual", "\u0394E00", 2),
    fineness: criterion("fineness", "\u00b5m", 0),
    oilIndex: criterion("oilIndex", ofOil, 1),
    density: criterion("density", "g/cm\u00b3", 3),
  };
}

/** Figures of the criteria as sentences of a language give them. @param words of limits; `beforeUnit` parts number and unit. */
export function criterionFigures(
  criteria: Criteria,
  words: {
    readonly atMost: string;
    readonly to: string;
    readonly beforeUnit: string;
    readonly numbers: PrintedNumbers;
  },
) {
  const figure = (of: Criterion, numbers: (text: (value: number) => string) => string): string => {
    const { unit, places } = criteria[of];
    return `${numbers((value) => words.numbers.decimal(value, places))}${words.beforeUnit}${unit}`;
  };
  const figureOf = (of: Criterion, value: number): string => figure(of, (text) => text(value));
  return {
    figureOf,
    /** Limits from and to; from nought they are one that is not passed. */
    limitsText: (of: Criterion, [low, high]: Interval): string =>
      figure(of, (text) =>
        low === 0 ? `${words.atMost} ${text(high)}` : `${text(low)} ${words.to} ${text(high)}`,
      ),
    withUncertainty: (of: Criterion, value: number, uncertainty: number): string =>
      uncertainty === 0
        ? figureOf(of, value)
        : figure(of, (text) => `${text(value)} \u00b1 ${text(uncertainty)}`),
  };
}
