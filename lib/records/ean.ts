/**
 * The last digit of an EAN-13: from the right of the twelve before it, every second
 * digit counts three times; the check digit makes the sum a multiple of ten.
 *
 * @param digits the first twelve.
 * @source gs1-check-digit
 * @throws RangeError for anything but twelve digits.
 * @example eanCheckDigit("730001100001") // 7
 */
export function eanCheckDigit(digits: string): number {
  if (!/^\d{12}$/.test(digits))
    throw new RangeError(
      `The check digit of an EAN-13 is worked out of 12 digits, not of ${digits}`,
    );
  const sum = Array.from(digits).reduce(
    (total, digit, i) => total + Number(digit) * (i % 2 === 0 ? 1 : 3),
    0,
  );
  return (10 - (sum % 10)) % 10;
}

/** What an EAN-13 has to be where this is none; undefined where it is one. */
export function eanFault(written: string): string | undefined {
  if (/^\d[.,]?\d*E\+\d+$/i.test(written))
    return "13 digits, which a spreadsheet has rounded: give its column the format of text, and enter it anew";
  if (!/^\d{13}$/.test(written)) return "13 digits, the last of them the check digit of an EAN-13";
  const digit = eanCheckDigit(written.slice(0, 12));
  return written.endsWith(String(digit))
    ? undefined
    : `${written.slice(0, 12)}${digit}, by the check digit of an EAN-13`;
}
