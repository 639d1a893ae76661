import { isInterval, type Quantity } from "../quantities/interval.ts";
import { figureRow } from "../sheet/figure-table.ts";
import { decimalText, quantityText, significantText } from "../words/number-text.ts";

/** Rows of the figure table that the lines of a reckoned batch read like, by the line's key without its number. */
const ROWS: Readonly<Record<string, string>> = {
  pigments: "batch.sizes.*.pigments.*.massG",
  oilG: "batch.sizes.*.oilG",
  oilAtFirstG: "batch.sizes.*.oilAtFirstG",
  oilHeldBackG: "batch.sizes.*.oilHeldBackG",
  additions: "batch.sizes.*.additions.*.massG",
  paintMl: "batch.sizes.*.paintMl",
  lossMl: "batch.sizes.*.lossMl",
  yieldMl: "batch.sizes.*.yieldMl",
  tubes: "batch.sizes.*.tubes.*.count",
  cost: "batch.sizes.*.cost",
};

/** A line of a batch that the browser reckons, rounded as the sheet rounds the same figure. */
export function batchFigureText(key: string, quantity: Quantity, about: string): string {
  const { kind, digits } = figureRow(ROWS[key.replace(/\.\d+$/, "")] ?? key);
  const places = isInterval(quantity) ? Math.min(digits, 2) : digits;
  return quantityText(
    quantity,
    (value) =>
      kind === "significant" ? significantText(value, places) : decimalText(value, digits),
    about,
  );
}
