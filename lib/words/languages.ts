import type { Language } from "../quantities/languages.ts";
import { ENGLISH } from "./english.ts";
import { ownWords } from "./own-words.ts";
import type { OwnWords, Words } from "./words.ts";

/** What this room says, by language, each put together when it is first asked for: a workshop speaks one or two. */
export const WORDS: Readonly<Record<Language, OwnWords> & { en: Words }> = {
  en: ENGLISH,
  get fr() {
    return translated("fr");
  },
  get de() {
    return translated("de");
  },
  get es() {
    return translated("es");
  },
};

const known = new Map<Language, OwnWords>();

function translated(language: Exclude<Language, "en">): OwnWords {
  const words = known.get(language) ?? ownWords(language);
  known.set(language, words);
  return words;
}

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
