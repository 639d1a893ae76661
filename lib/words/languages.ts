import type { Language } from "../records/schema/terms.ts";
import { GERMAN } from "./de/german.ts";
import { ENGLISH } from "./en/english.ts";
import { SPANISH } from "./es/spanish.ts";
import { FRENCH } from "./fr/french.ts";
import type { Words } from "./words.ts";

/** What pages and papers are worded with, by language. */
export const WORDS: Readonly<Record<Language, Words>> = {
  en: ENGLISH,
  fr: FRENCH,
  de: GERMAN,
  es: SPANISH,
};

/** Each language by its own name. */
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = {
  en: "English",
  fr: "Français",
  de: "Deutsch",
  es: "Español",
};
