import type { Language } from "../../quantities/languages.ts";

declare global {
  interface ImportMeta {
    /** Of a script in a bundle, which holds the texts of no other language. */
    readonly language?: Language;
  }
}

/** What scripts of the pages speak: English where nothing is bundled. */
export const LANGUAGE: Language = import.meta.language ?? "en";
