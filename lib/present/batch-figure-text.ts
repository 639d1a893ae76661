import { isInterval, type Quantity } from "../quantities/interval.ts";
import { figureForm } from "../sheet/declaration.ts";
import { BATCH_LINES } from "../sheet/oil/batch-lines.ts";
import { quantityText, type PrintedNumbers } from "../words/number-text.ts";

/** A line of a batch that the browser reckons, rounded as the sheet rounds the same figure. */
export function batchFigureText(
  key: string,
  quantity: Quantity,
  about: string,
  numbers: PrintedNumbers,
): string {
  const line = key.replace(/\.\d+$/, "");
  if (!isLine(line)) throw new RangeError(`${key} is no line of a batch`);
  const { kind, digits } = figureForm(BATCH_LINES[line]);
  const places = isInterval(quantity) ? Math.min(digits, 2) : digits;
  return quantityText(
    quantity,
    (value) =>
      kind === "significant" ? numbers.significant(value, places) : numbers.decimal(value, digits),
    about,
  );
}

function isLine(key: string): key is keyof typeof BATCH_LINES {
  return key in BATCH_LINES;
}
