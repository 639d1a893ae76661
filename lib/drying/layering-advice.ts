/** Where in a painting a paint belongs, by its drying class and its ground: rules of the trade, each by its row. */
import type { Statement } from "../quantities/statement.ts";
import type { DryingClass } from "./drying-class.ts";

/** @source practice-drying */
export const PLACE_BY_CLASS: Readonly<Record<DryingClass, string>> = {
  fast: "fast-goes-below",
  medium: "medium-goes-anywhere",
  slow: "slow-goes-above",
  "very slow": "very-slow-goes-last",
};

/** Where a paint of this drying class belongs among the layers. */
export function placeByClass(dryingClass: DryingClass): Statement {
  return {
    rule: PLACE_BY_CLASS[dryingClass],
    values: { dryingClass },
    standing: "estimated",
    source: "practice-drying",
  };
}

/** Grounds of painting, and what each asks of oil colour on it. @source practice-drying */
export const GROUND_RULES = {
  acrylic: ["oil-over-acrylic-ground", "never-acrylic-over-oil"],
  oil: ["oil-ground-through-dry-first"],
  "glue and chalk": ["absorbent-ground-draws-oil", "rigid-support-for-brittle-ground"],
} as const;
export type Ground = keyof typeof GROUND_RULES;

export function groundRulings(ground: Ground): Statement[] {
  return GROUND_RULES[ground].map((rule) => ({
    rule,
    values: { ground },
    standing: "estimated",
    source: "practice-drying",
  }));
}
