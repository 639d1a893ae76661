import { createRequire } from "node:module";
import type { Language } from "../quantities/languages.ts";
import type { Hyphens } from "./set-runs.ts";

/** Patterns of each language by their file in the package: German of today's spelling, English of Britain. */
const PATTERNS: Readonly<Record<Language, string>> = {
  en: "hyphen/en-gb",
  fr: "hyphen/fr",
  de: "hyphen/de-1996",
  es: "hyphen/es",
};

/** No part of a word is shorter, and no shorter word is parted [letters]. */
const LEAST = { part: 3, word: 7 } as const;
const SOFT_HYPHEN = "\u00ad";

interface Hyphenator {
  readonly hyphenateSync: (
    text: string,
    options: { readonly hyphenChar: string; readonly minWordLength: number },
  ) => string;
}

const require = createRequire(import.meta.url);
const KNOWN = new Map<Language, Map<string, readonly number[]>>();

/** Where words of a language may be parted; its patterns are loaded with the first word. */
export function hyphensOf(language: Language): Hyphens {
  const known = KNOWN.get(language) ?? new Map<string, readonly number[]>();
  KNOWN.set(language, known);
  return (word) => {
    const places = known.get(word) ?? placesIn(word, language);
    known.set(word, places);
    return places;
  };
}

function placesIn(word: string, language: Language): readonly number[] {
  if (word.length < LEAST.word) return [];
  const { hyphenateSync } = require(PATTERNS[language]) as Hyphenator;
  const parts = hyphenateSync(word, {
    hyphenChar: SOFT_HYPHEN,
    minWordLength: LEAST.word,
  }).split(SOFT_HYPHEN);
  let at = 0;
  return parts
    .slice(0, -1)
    .map((part) => (at += part.length))
    .filter((place) => place >= LEAST.part && word.length - place >= LEAST.part);
}
