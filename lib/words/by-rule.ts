import type { Statement, WordingsOf } from "../quantities/statement.ts";

/** Wordings of a closed union among those that are looked up by rule alone: their fields were checked where a statement is made. */
export function byRule<
  S extends { readonly rule: string; readonly values: object },
  Beside extends readonly unknown[] = [],
>(
  wordings: WordingsOf<S, Beside>,
): Readonly<Record<string, (values: Statement["values"], ...beside: Beside) => string>> {
  return wordings;
}

/** The sentence, or phrase, of one statement of a closed union. */
export function worded<S extends { readonly rule: string; readonly values: object }>(
  wordings: WordingsOf<S>,
  { rule, values }: S,
): string {
  const wording = wordings[rule as S["rule"]];
  return wording(values);
}
