import { LANGUAGES, type Language } from "../quantities/languages.ts";

/** A row: what is said in each language. A text stands in each, or a function where a language needs one of its own. */
type Row<T = unknown> = Readonly<Record<Language, T>>;

/** A row, a function that returns one of what it is handed, or a list or a group of such. */
type AnyTexts = Row | ((...asked: never[]) => AnyTexts) | readonly AnyTexts[] | Texts;

/**
 * Texts of a page by name, every language of one beside the others, in groups as deep as the page
 * wants them. Where a row lacks a language the compiler says so at its name.
 */
export interface Texts {
  readonly [name: string]: AnyTexts;
}

/** The same in one language: a text, a function that returns it, lists and groups. */
export type Said<T> = T extends (...asked: infer A) => infer R
  ? (...asked: A) => Said<R>
  : T extends Row<infer S>
    ? string extends keyof T
      ? { readonly [K in keyof T]: Said<T[K]> }
      : S
    : { readonly [K in keyof T]: Said<T[K]> };

/** What reads alike in every language: figures, symbols, an address. */
export function alike<T>(text: T): Row<T> {
  return { en: text, fr: text, de: text, es: text };
}

/** Of texts what they say in a language. */
export function saidIn<T extends Texts>(language: Language, texts: T): Said<T> {
  return said(language, texts) as Said<T>;
}

function said(language: Language, texts: AnyTexts): unknown {
  if (typeof texts === "function")
    return (...asked: never[]): unknown => said(language, texts(...asked));
  if (isRow(texts)) return texts[language];
  const each = (part: AnyTexts): unknown => said(language, part);
  return Array.isArray(texts)
    ? texts.map(each)
    : Object.fromEntries(Object.entries(texts).map(([name, part]) => [name, each(part)]));
}

function isRow(texts: object): texts is Row {
  return LANGUAGES.some((language) => language in texts);
}
