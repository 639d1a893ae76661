/** The text with a capital first letter, as a line or a cell begins in every language. */
export function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
