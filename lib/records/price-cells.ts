/** Cells of a price list that are right each by itself, and not beside one another. */
import { coinDigits } from "../quantities/coin-digits.ts";
import type { FaultList } from "./readings/fault-list.ts";
import type { WrittenCell } from "./readings/reading-column.ts";

/** The price and the price group of one line. */
export interface PricedCells {
  readonly price: WrittenCell;
  readonly code: WrittenCell;
}

/**
 * A price that its decimal comma parted in two, the second half of which is taken for a price group; where several lines
 * have one, told at the first. A price group that is written as prices are, beside a price that is not.
 * @param delimiter what parts the cells. @param currency its code, which tells how many decimals a price has.
 */
export function cellSlips(
  rows: readonly PricedCells[],
  delimiter: string,
  currency: string | undefined,
  faults: FaultList,
): void {
  const cut = delimiter === "," ? rows.filter((row) => cutPrice(row, currency) !== undefined) : [];
  const [first] = cut;
  if (first !== undefined) {
    const { price, code } = first;
    const more =
      cut.length === 1
        ? ""
        : `, and so in ${cut.length - 1} more ${cut.length === 2 ? "line" : "lines"}`;
    faults.warning("price-cut", price, {
      message: `The price ${price.text} and the code ${code.text} stand where ${price.text},${code.text} would, since a comma parts the cells${more}`,
      actual: `${price.text},${code.text}`,
      expected: `${cutPrice(first, currency)}, or a price with its decimals`,
      hint: `${cutPrice(first, currency)} if it is one price; ${price.text}.${"0".repeat(code.text.length)} if ${code.text} is its code`,
    });
  }
  for (const { price, code } of rows)
    if (isWithCoins(code.text, currency) && /^\d+$/.test(price.text))
      faults.warning("price-cell", code, {
        message: `The code ${code.text} is written as a price, and the price ${price.text} is not`,
        actual: code.text,
        expected: "a price group, such as 3",
        hint: "price and code exchanged?",
      });
}

/** The price that two cells are together; nothing where they are no price cut in two. */
export function cutPrice(
  { price, code }: PricedCells,
  currency: string | undefined,
): string | undefined {
  const isNext = code.line === price.line && code.column === price.column + price.text.length + 1;
  return isNext && /^\d+$/.test(price.text) && isCoins(code.text, currency)
    ? `${price.text}.${code.text}`
    : undefined;
}

function isCoins(text: string, currency: string | undefined): boolean {
  const digits = coinDigits(currency);
  return digits > 0 && text.length === digits && /^\d+$/.test(text);
}

function isWithCoins(text: string, currency: string | undefined): boolean {
  const [whole = "", coins = "", ...more] = text.split(/[.,]/);
  return /^\d+$/.test(whole) && isCoins(coins, currency) && more.length === 0;
}
