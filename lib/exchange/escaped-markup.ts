/**
 * Text as text of XML or HTML, or of an attribute between double quotes. What XML 1.0 allows not even
 * as a reference, control characters and halves of surrogate pairs, becomes a space; a line ends where it ended.
 */
export function escapedMarkup(text: string): string {
  return text
    .replace(/(?!\n)[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\uFFFE\uFFFF]/gu, " ")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replaceAll("'", "&#39;");
}
