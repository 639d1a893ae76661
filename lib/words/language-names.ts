import type { InEach } from "./in-each.ts";

/** What a language is called in each language, by its code: "auf Franz\u00f6sisch". */
export const NAMES_OF_LANGUAGES: Readonly<Record<string, InEach>> = {
  en: { en: "English", de: "Englisch", fr: "anglais", es: "inglés" },
  fr: { en: "French", de: "Französisch", fr: "français", es: "francés" },
  de: { en: "German", de: "Deutsch", fr: "allemand", es: "alemán" },
  es: { en: "Spanish", de: "Spanisch", fr: "espagnol", es: "español" },
};
