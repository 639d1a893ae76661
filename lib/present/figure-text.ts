import type { Amount, Known } from "../quantities/figure.ts";
import { isInterval, type Quantity } from "../quantities/interval.ts";
import type { FigureRow } from "../sheet/figure-table.ts";
import { outward, placesWithin, quantityText, significantPlaces } from "../words/number-text.ts";
import type { Words } from "../words/words.ts";

/** What of a figure is printed. */
type Printed = Pick<Known<Amount>, "value" | "unit" | "uncertainty" | "bound" | "reaches"> &
  Partial<Pick<Known<Amount>, "standing">>;

/** The ends of an estimate claim no more than this. */
const ESTIMATE_DIGITS = 2;

/**
 * A figure's value as it reads, without its unit: rounded to what its row and its uncertainty bear, a bound
 * with its word.
 */
export function valueText(row: FigureRow, figure: Printed, words: Words): string {
  const text = roundedText(row, figure, words);
  return figure.bound === undefined ? text : `${words.bounds[figure.bound]} ${text}`;
}

/** A class in a word; where what it was chosen by reaches into several, all of these: "medium or slow", "opaque or nearly so". */
export function classText(
  {
    value,
    reaches = [],
  }: { readonly value: string; readonly reaches?: readonly string[] | undefined },
  wordOf: (word: string) => string,
  { between, reach, lowerFirst }: Pick<Words, "between" | "reach" | "lowerFirst">,
): string {
  if (reaches.length < 2) return wordOf(value);
  return (
    between(reaches) ??
    reach(reaches.map((each, i) => (i === 0 ? wordOf(each) : lowerFirst(wordOf(each)))))
  );
}

function roundedText(row: FigureRow, figure: Printed, words: Words): string {
  const { value } = figure;
  if (typeof value === "string")
    return classText(
      { value, reaches: figure.reaches },
      (each) => (row.kind === "word" ? words.terms[each] : undefined) ?? words.substance(each),
      words,
    );
  if (!isQuantity(value))
    return words.series(
      value.length,
      words.numbers.significant(Math.min(...value), 2),
      words.numbers.significant(Math.max(...value), 2),
    );
  const text = quantityText(value, numberText(row, figure, words), words.about);
  return row.kind === "share" ? `${text}\u00a0%` : text;
}

/** How one number of the figure is rounded: to what its row and its uncertainty bear, a bound outward. */
function numberText(
  row: FigureRow,
  figure: Printed,
  { numbers }: Words,
): (value: number) => string {
  const { bound, uncertainty } = figure;
  const decimal = (value: number, places: number): string =>
    numbers.decimal(outward(value, bound, places), places);
  switch (row.kind) {
    case "share":
      return (share) => decimal(share * 100, sharePlaces(share, figure, row));
    case "days":
      return numbers.days;
    case "significant": {
      const { workedOutPlaces } = row;
      if (
        figure.standing === "derived" &&
        uncertainty === undefined &&
        workedOutPlaces !== undefined
      )
        return (value) => decimal(value, workedOutPlaces);
      const digits = isInterval(figure.value) ? Math.min(row.digits, ESTIMATE_DIGITS) : row.digits;
      return (value) => {
        const places = placesWithin(uncertainty, significantPlaces(value, digits));
        return numbers.significant(outward(value, bound, places), digits, uncertainty);
      };
    }
    default:
      return (value) => decimal(value, placesWithin(uncertainty, row.digits));
  }
}

/** Under a tenth a whole percentage is a single digit: a place more where the uncertainty bears it, so that ratios can be read. */
function sharePlaces(share: number, { uncertainty }: Printed, { digits }: FigureRow): number {
  const isTold = uncertainty !== undefined && uncertainty < 0.5 / 100;
  return share < 0.1 && isTold ? digits + 1 : digits;
}

/** A figure with its unit: "63 g/100 g", "3–6 days". */
export function figureText(row: FigureRow, figure: Printed, words: Words): string {
  const value = valueText(row, figure, words);
  const unit = unitText(figure.unit, words, value);
  // A unit of its own parts is long: it may stand in a line below, and is never broken itself.
  const gap = unit.includes("\u00a0") ? " " : "\u00a0";
  return unit === "" ? value : `${value}${gap}${unit}`;
}

/** Unit as printed, of the number where one is given; nothing for plain numbers and words. */
export function unitText(unit: string, words: Words, number?: string): string {
  const ofOne = number === "1" ? words.unitsOfOne[unit] : undefined;
  return ofOne ?? words.units[unit] ?? unit;
}

function isQuantity(value: Exclude<Amount, string>): value is Quantity {
  return typeof value === "number" || isInterval(value);
}
