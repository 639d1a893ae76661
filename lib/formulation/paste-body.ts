/** Body and oil separation as a workshop records them: a word each, passed on as read. */
import type { StatementOf } from "../quantities/statement.ts";

export const BODY_RULES = {
  short: "body-short",
  long: "body-long",
  stiff: "body-stiff",
  ropy: "body-ropy",
} as const;
export type Body = keyof typeof BODY_RULES;

export const SEPARATION_RULES = {
  none: "oil-stays-in",
  slight: "oil-parts-slightly",
  marked: "oil-parts-markedly",
} as const;
export type OilSeparation = keyof typeof SEPARATION_RULES;

export type PasteStatement = StatementOf<
  (typeof BODY_RULES)[Body] | (typeof SEPARATION_RULES)[OilSeparation],
  Record<string, never>
>;

export function bodyStatement(body: Body): PasteStatement {
  return { rule: BODY_RULES[body], values: {}, standing: "measured" };
}

export function oilSeparationStatement(oilSeparation: OilSeparation): PasteStatement {
  return { rule: SEPARATION_RULES[oilSeparation], values: {}, standing: "measured" };
}
