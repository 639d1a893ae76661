/** Languages of pages and tables. English comes first: the others are held against it. */
export const LANGUAGES = ["en", "fr", "de", "es"] as const;
export type Language = (typeof LANGUAGES)[number];

/** Those that say what the English says. */
export type OtherLanguage = Exclude<Language, "en">;

/** "German" of `de`: lines of the command are English. */
export function languageInEnglish(language: Language): string {
  return new Intl.DisplayNames(["en"], { type: "language" }).of(language) ?? language;
}
