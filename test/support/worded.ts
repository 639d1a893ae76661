import { LANGUAGES, type Language } from "../../lib/quantities/languages.ts";
import { wordsIn } from "../../lib/words/languages.ts";
import type { Words } from "../../lib/words/words.ts";
import { KNOWN } from "./known.ts";

/** What pages are worded with in each language, by the engine's own tables. */
export const WORDED = Object.fromEntries(
  LANGUAGES.map((language) => [language, wordsIn(language, KNOWN.said)]),
) as Readonly<Record<Language, Words>>;
