import type { PageLanguage } from "../records/schema/terms.ts";
import { ENGLISH } from "./en/english.ts";
import type { Words } from "./words.ts";

/** What pages and papers are worded with, by language. */
export const WORDS: Readonly<Record<PageLanguage, Words>> = { en: ENGLISH };

/** Each language by its own name. */
export const LANGUAGE_NAMES: Readonly<Record<PageLanguage, string>> = { en: "English" };
