import type { Language } from "../quantities/languages.ts";
import * as en from "./languages/en.ts";
import * as de from "./languages/de.ts";
import * as fr from "./languages/fr.ts";
import * as es from "./languages/es.ts";
import type { InEach } from "./in-each.ts";

export { en, de, fr, es };

/** Those of one language, and so of every other. */
type Phrases = typeof en;

const PHRASES: Readonly<Record<Language, Phrases>> = { en, de, fr, es };

export function phrasesIn(language: Language): Phrases {
  return PHRASES[language];
}

/** What is put together alike in each language, of its own phrases and of rows of its own words. */
export function inEach(text: (phrases: Phrases, language: Language) => string): InEach {
  return { en: text(en, "en"), de: text(de, "de"), fr: text(fr, "fr"), es: text(es, "es") };
}

/** In each language a sentence out of its words. */
export function sentences(words: InEach): InEach {
  return inEach(({ sentence }, language) => sentence(words[language]));
}
