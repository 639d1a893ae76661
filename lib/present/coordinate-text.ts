import { isKnown, type Figure } from "../quantities/figure.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { placesWithin, type PrintedNumbers } from "../words/number-text.ts";

/** A coordinate of a colour: to a tenth, as far as its uncertainty bears that. */
export function coordinateText(
  value: number,
  uncertainty: number | undefined,
  numbers: PrintedNumbers,
): string {
  return numbers.decimal(value, placesWithin(uncertainty, 1));
}

/** The same of a figure; a dash for one that is not stated. */
export function coordinateOf(figure: Figure<number> | undefined, numbers: PrintedNumbers): string {
  return figure !== undefined && isKnown(figure)
    ? coordinateText(figure.value, figure.uncertainty, numbers)
    : NO_VALUE;
}
