import { ownWords } from "./own-words.ts";
import type { Words } from "./words.ts";

/** What the tables of knowledge say in English stands as it is. */
export const ENGLISH: Words = { ...ownWords("en"), substance: (named) => named };
