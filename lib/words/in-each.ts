import type { Language } from "../quantities/languages.ts";

/** A text in each language. */
export type InEach = Readonly<Record<Language, string>>;

/** What the English says, in every other language. */
export type InOthers = Readonly<Record<Exclude<Language, "en">, string>>;

/** Of texts by key those of one language. */
export function textsIn<L extends Language, T, K extends string>(
  language: L,
  texts: Readonly<Record<K, Readonly<Record<L, T>>>>,
): Readonly<Record<K, T>> {
  return Object.fromEntries(
    Object.entries<Readonly<Record<L, T>>>(texts).map(([key, each]) => [key, each[language]]),
  ) as Record<K, T>;
}
