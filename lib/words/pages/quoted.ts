/** What somebody says, or a sheet, word for word, in the marks of each language. */
export const quoted = (text: string) => ({
  en: `\u201c${text}\u201d`,
  de: `\u201e${text}\u201c`,
  fr: `\u00ab\u202f${text}\u202f\u00bb`,
  es: `\u00ab${text}\u00bb`,
});
