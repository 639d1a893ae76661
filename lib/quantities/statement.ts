import type { SourceKey } from "../sources/source.ts";
import type { Standing } from "./figure.ts";
import type { Interval } from "./interval.ts";

export type StatementValue =
  | number
  | string
  | Interval
  | readonly string[]
  | readonly Readonly<Record<string, string | readonly string[]>>[];

/**
 * A sentence that a science chose, before it is worded: which rule spoke and the
 * values it spoke of. Only lib/present turns it into words of a language.
 */
export interface Statement {
  readonly rule: string;
  readonly values: Readonly<Record<string, StatementValue>>;
  readonly standing?: Standing;
  readonly source?: SourceKey;
}

export function isStatement(value: unknown): value is Statement {
  return typeof value === "object" && value !== null && "rule" in value && "values" in value;
}

/**
 * What was reckoned, where a statement could have said why it can't be and that was ruled out before.
 * @throws RangeError for a statement: a fault of ours, never of a record.
 */
export function notRefused<T>(reckoned: T): Exclude<T, Statement> {
  if (isStatement(reckoned)) throw new RangeError(`Refused: ${reckoned.rule}`);
  return reckoned as Exclude<T, Statement>;
}

/**
 * One kind of statement, with fields of its own. A science lists its kinds as a
 * closed union, and the compiler then holds that every kind has its wording.
 * Of several rules with the same fields it makes a kind for each.
 */
export type StatementOf<R extends string, V extends object> = R extends string
  ? {
      readonly rule: R;
      readonly values: Readonly<V>;
      readonly standing?: Standing;
      readonly source?: SourceKey;
    }
  : never;

/** What a rule of thumb says: an estimate, by where that rule stands or by whose practice it is. */
export function estimated<const R extends string, V extends object>(
  rule: R,
  values: V,
  source: SourceKey,
): {
  readonly rule: R;
  readonly values: V;
  readonly standing: "estimated";
  readonly source: SourceKey;
} {
  return { rule, values, standing: "estimated", source };
}

/** Asked of the facts that it goes by, what it says of them: nothing, one statement or several. */
export type Rule<Facts> = (facts: Facts) => readonly Statement[] | Statement | undefined;

/** When a rule is said: facts at its limits, and facts just beyond them. What they leave out is not known of the paint. */
export interface WhenSaid<Facts> {
  readonly said: readonly Partial<Facts>[];
  readonly unsaid: readonly Partial<Facts>[];
}
export interface WithCases {
  readonly cases: Readonly<Record<string, WhenSaid<object>>>;
}

/**
 * A rule of a list with its cases, by the key of each statement that it makes: a test of its science in
 * `test/present/` holds when it is said, and its sentence in every language.
 */
export function withCases<Facts extends object, Said extends ReturnType<Rule<Facts>>>(
  rule: (facts: Facts) => Said,
  cases: { readonly [R in (EachOf<Said> & Statement)["rule"]]: WhenSaid<Facts> },
): ((facts: Facts) => Said) & WithCases {
  return Object.assign((facts: Facts) => rule(facts), { cases });
}

type EachOf<Said> = Said extends readonly (infer S)[] ? S : Exclude<Said, undefined>;
/** A rule whose key is any string would swallow the union: in its place a kind that no table words, which says what is wanted. */
type Keyed<S> = S extends { readonly rule: infer Key }
  ? string extends Key
    ? StatementOf<"a rule in a list is without its return type, StatementOf<key, values>", object>
    : S
  : never;
/** The statements of a list of rules: what a science says follows from the functions that its lists name. */
export type SaidBy<Rules extends readonly Rule<never>[]> = Keyed<EachOf<ReturnType<Rules[number]>>>;

type FactsOf<Rules extends readonly Rule<never>[]> = Rules[number] extends (
  facts: infer Facts,
) => unknown
  ? Facts
  : never;

/** What a list of rules says of facts, in its order. */
export function said<Rules extends readonly Rule<never>[]>(
  rules: Rules,
  facts: FactsOf<Rules>,
): SaidBy<Rules>[] {
  return rules.flatMap((rule) => (rule(facts as never) ?? []) as readonly SaidBy<Rules>[]);
}

/** A language's wordings of a union of statements: one function a kind, given the fields of that kind, and beside them what all are given. */
export type WordingsOf<
  S extends { readonly rule: string; readonly values: object },
  Beside extends readonly unknown[] = [],
> = {
  readonly [R in S["rule"]]: (values: ValuesOf<S, R>, ...beside: Beside) => string;
};

/** The fields of some kinds of a union, by their rules. */
export type ValuesOf<
  S extends { readonly rule: string; readonly values: object },
  R extends S["rule"],
> = Extract<S, { readonly rule: R }>["values"];
