const FORMATS = new Map<string, Intl.NumberFormat>();

/** Printed by its sign alone in every language: French writes sterling "£GB" where it might be another pound, and no other is sold in here. */
const BY_SIGN: ReadonlySet<string> = new Set(["GBP"]);

/**
 * How a language writes an amount of money. One is made of each: making it takes far longer than writing an amount.
 * @param locale as BCP 47 writes it.
 * @param currency by its three letters of ISO 4217.
 * @throws RangeError for a currency that is not of that form.
 */
export function moneyFormat(locale: string, currency: string): Intl.NumberFormat {
  const name = `${locale} ${currency}`;
  const format =
    FORMATS.get(name) ??
    new Intl.NumberFormat(locale, {
      style: "currency",
      currency,
      currencyDisplay: BY_SIGN.has(currency) ? "narrowSymbol" : "symbol",
    });
  FORMATS.set(name, format);
  return format;
}

/** "£200.00/l", "12,50\u00a0€/100\u00a0ml": symbols of units are the same in every language. @param price in words. */
export function unitPriceText(price: string, ml: number): string {
  return `${price}/${ml === 1000 ? "l" : `${ml}\u00a0ml`}`;
}
