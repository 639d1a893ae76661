/**
 * The form of a language's words, whatever the words are: a text is any text, a list keeps its length,
 * a function keeps what it is asked for.
 */
export type AnyWords<T> = T extends string
  ? string
  : T extends (...args: infer A) => infer R
    ? (...args: A) => R extends string ? string : R
    : T extends RegExp | number | boolean | undefined
      ? T
      : { [K in keyof T]: AnyWords<T[K]> };
