/** What files call the opening that an instrument reads through, with the millimetres that follow. From memory. */
const APERTURE =
  /(?:apert|ouverture|diaphragm|blende|mess\s*(?:\u00f6|oe)ffnung|messfleck|\bspot\b|measur\w*[_ ]area)[^\d\r\n]{0,40}(\d{1,2}(?:[.,]\d{1,2})?)\s*mm\b/i;

/**
 * Diameter of the opening that a file says it was read through, as one writes it: a reading through a
 * small one loses light at its edge that one through a large one keeps.
 * @returns undefined where the words tell none.
 * @example foundAperture("Messblende: 8 mm") // "8 mm"
 */
export function foundAperture(words: string): string | undefined {
  const written = APERTURE.exec(words)?.[1];
  return written === undefined ? undefined : `${Number(written.replace(",", "."))} mm`;
}
