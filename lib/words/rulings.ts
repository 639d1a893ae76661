import type { ComparisonStatement } from "../collection/statements.ts";
import type { ColorimetryStatement } from "../colorimetry/statements.ts";
import type { DryingStatement } from "../drying/statements.ts";
import type { FormulationStatement } from "../formulation/statements.ts";
import type { HazardStatement } from "../hazard/statements.ts";
import type { LotStatement } from "../lots/statements.ts";
import type { DrawnCoatStatement } from "../optics/films/drawn-coat.ts";
import type { OpticsStatement } from "../optics/statements.ts";
import type { PhotographStatement } from "../patches/statements.ts";
import type { PermanenceStatement } from "../permanence/statements.ts";
import type { WordingsOf } from "../quantities/statement.ts";
import { byRule } from "./by-rule.ts";
import type { StatementWording } from "./words.ts";

/** What any science states, and what colours side by side do. */
type AnyStatement =
  | ColorimetryStatement
  | ComparisonStatement
  | DrawnCoatStatement
  | DryingStatement
  | FormulationStatement
  | HazardStatement
  | LotStatement
  | OpticsStatement
  | PermanenceStatement
  | PhotographStatement;

/** A language's sentences, one for each rule of each science, to be looked up by rule. */
export function rulings(
  wordings: WordingsOf<AnyStatement>,
): Readonly<Record<string, StatementWording>> {
  return byRule<AnyStatement>(wordings);
}
