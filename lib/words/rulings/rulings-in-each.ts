import type { ValuesOf, WordingsOf } from "../../quantities/statement.ts";
import type { Language } from "../../quantities/languages.ts";
import { textsIn } from "../in-each.ts";
import type { Substance } from "../words.ts";

/** Any kind of statement of a union, before it is worded. */
export interface AnyOfUnion {
  readonly rule: string;
  readonly values: object;
}

/** Wordings of a union of statements: of each kind one function a language, given the fields of that kind, and beside them what all are given. */
export type RulingsInEach<S extends AnyOfUnion, Beside extends readonly unknown[] = []> = {
  readonly [R in S["rule"]]: Readonly<
    Record<Language, (values: ValuesOf<S, R>, ...beside: Beside) => string>
  >;
};

/** Those that name what a table of knowledge says. */
export type NamingRulings<S extends AnyOfUnion> = RulingsInEach<S, [substance: Substance]>;

/** Those of one language. */
export function wordingsIn<S extends AnyOfUnion, Beside extends readonly unknown[] = []>(
  language: Language,
  rulings: RulingsInEach<S, Beside>,
): WordingsOf<S, Beside> {
  return textsIn(language, rulings);
}
