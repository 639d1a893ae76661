import type { ValuesOf, WordingsOf } from "../../quantities/statement.ts";
import type { Language } from "../../quantities/languages.ts";
import type { InEach } from "../in-each.ts";
import type { Substance } from "../words.ts";

/** Any kind of statement of a union, before it is worded. */
export interface AnyOfUnion {
  readonly rule: string;
  readonly values: object;
}

/** What a kind of statement says in each language: a row, or where something stands in it a function of its fields, and of what is handed beside them, that returns one. */
type RulingInEach<V, Beside extends readonly unknown[]> =
  InEach | ((values: V, ...beside: Beside) => InEach);

/** Those of a union of statements, one a kind. */
export type RulingsInEach<S extends AnyOfUnion, Beside extends readonly unknown[] = []> = {
  readonly [R in S["rule"]]: RulingInEach<ValuesOf<S, R>, Beside>;
};

/** Those that name what a table of knowledge says. */
export type NamingRulings<S extends AnyOfUnion> = RulingsInEach<S, [substance: Substance]>;

/** Their wordings in one language. */
export function wordingsIn<S extends AnyOfUnion, Beside extends readonly unknown[] = []>(
  language: Language,
  rulings: RulingsInEach<S, Beside>,
): WordingsOf<S, Beside> {
  return Object.fromEntries(
    Object.entries<RulingInEach<never, Beside>>(rulings).map(([rule, row]) => [
      rule,
      typeof row === "function"
        ? (values: never, ...beside: Beside) => row(values, ...beside)[language]
        : () => row[language],
    ]),
  ) as WordingsOf<S, Beside>;
}
