import type { SizeOnOffer } from "../sheet/handling/handling-sections.ts";
import { unitPriceText } from "../words/money-format.ts";
import type { OwnWords } from "../words/words.ts";

/** What a size costs, finished text. */
export interface PriceText {
  readonly price: string;
  /** What a unit of measurement costs, where that is another figure. */
  readonly unitPrice?: string;
  /** Both, the latter in brackets. */
  readonly text: string;
}

/** The price of a size; nothing where it has none or nobody named a currency. */
export function priceText(
  { price: amount, unitPrice: unit }: SizeOnOffer,
  currency: string | undefined,
  words: OwnWords,
): PriceText | undefined {
  if (amount === undefined || currency === undefined) return undefined;
  const money = (of: number): string => words.pages.handling.offer.price(of, currency);
  const price = money(amount);
  if (unit === undefined) return { price, text: price };
  const unitPrice = unitPriceText(money(unit.price), unit.ml);
  return { price, unitPrice, text: `${price} (${unitPrice})` };
}
