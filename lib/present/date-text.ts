import type { Words } from "../words/words.ts";

/** A day in words; undefined of one that nobody wrote down. @param date YYYY-MM-DD. */
export function dateText(date: string | undefined, words: Pick<Words, "date">): string | undefined {
  return date === undefined ? undefined : words.date(date);
}
