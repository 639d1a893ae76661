/** Of a currency that nobody named. */
const USUAL_DIGITS = 2;

/**
 * Decimals of a currency's smallest coin, as ISO 4217 has them.
 * @param currency its three letters; two decimals without one.
 * @throws RangeError for a currency that is not of that form.
 * @example coinDigits("JPY") // 0
 */
export function coinDigits(currency: string | undefined): number {
  if (currency === undefined) return USUAL_DIGITS;
  return (
    new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions()
      .maximumFractionDigits ?? USUAL_DIGITS
  );
}
