import type { ValuesOf, WordingsOf } from "../../quantities/statement.ts";
import type { Language } from "../../records/schema/terms.ts";
import { textsIn } from "../in-each.ts";

/** Any kind of statement of a union, before it is worded. */
export interface AnyOfUnion {
  readonly rule: string;
  readonly values: object;
}

/** Wordings of a union of statements: of each kind one function a language, given the fields of that kind. */
export type RulingsInEach<S extends AnyOfUnion> = {
  readonly [R in S["rule"]]: Readonly<Record<Language, (values: ValuesOf<S, R>) => string>>;
};

/** Those of one language. */
export function wordingsIn<S extends AnyOfUnion>(
  language: Language,
  rulings: RulingsInEach<S>,
): WordingsOf<S> {
  return textsIn(language, rulings);
}
