/** What each ground asks of oil colour on it: rules of the trade, each by its row. */
import { estimated, type StatementOf } from "../quantities/statement.ts";

/** Grounds of painting, and what each asks of oil colour on it. @source practice-drying */
export const GROUND_RULES = {
  acrylic: ["oil-over-acrylic-ground", "never-acrylic-over-oil"],
  oil: ["oil-ground-through-dry-first"],
  "glue and chalk": ["absorbent-ground-draws-oil", "rigid-support-for-brittle-ground"],
} as const;
export type Ground = keyof typeof GROUND_RULES;

export type GroundStatement = StatementOf<
  (typeof GROUND_RULES)[Ground][number],
  Record<string, never>
>;

export function groundStatements(ground: Ground): GroundStatement[] {
  return GROUND_RULES[ground].map((rule) => estimated(rule, {}, "practice-drying"));
}
