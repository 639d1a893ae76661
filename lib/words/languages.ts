import type { Language } from "../quantities/languages.ts";
import { ENGLISH } from "./english.ts";
import { ownWords } from "./own-words.ts";
import type { OwnWords, Words } from "./words.ts";

/** What this room says, by language. */
export const WORDS: Readonly<Record<Language, OwnWords> & { en: Words }> = {
  en: ENGLISH,
  fr: ownWords("fr"),
  de: ownWords("de"),
  es: ownWords("es"),
};

/** What pages are worded with. @param said what tables say in English, in a language. */
export function wordsIn(
  language: Language,
  said: (english: string, language: Language) => string,
): Words {
  return { ...WORDS[language], substance: (named, asked = language) => said(named, asked) };
}

/** Each language by its own name. */
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = {
  en: "English",
  fr: "Français",
  de: "Deutsch",
  es: "Español",
};
