/** Body and oil separation as a workshop records them: a word each, passed on as read. */
import type { Statement } from "../quantities/statement.ts";

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

export function bodyRuling(body: Body): Statement {
  return { rule: BODY_RULES[body], values: { body }, standing: "measured" };
}

export function oilSeparationRuling(oilSeparation: OilSeparation): Statement {
  return { rule: SEPARATION_RULES[oilSeparation], values: { oilSeparation }, standing: "measured" };
}
