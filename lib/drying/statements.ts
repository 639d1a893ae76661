import type { SaidBy } from "../quantities/statement.ts";
import type { ContributionStatement } from "./contribution.ts";
import type { PartStatement } from "./days-of-parts.ts";
import type { DryingClassStatement } from "./drying-class.ts";
import type { BaseStatement, UnknownDryingStatement } from "./drying-estimate.ts";
import type { DRYING_REASONS, FILM_HEALTH, LAYERING_REASONS } from "./drying-rules.ts";
import type { TrialContradiction, TrialStatement } from "./drying-trial.ts";
import type { GroundStatement } from "./layering-advice.ts";
import type { LayeringLine } from "./layering-line.ts";

/** Everything that this science says. */
export type DryingStatement =
  | SaidBy<typeof DRYING_REASONS>
  | SaidBy<typeof LAYERING_REASONS>
  | SaidBy<typeof FILM_HEALTH>
  | BaseStatement
  | UnknownDryingStatement
  | ContributionStatement
  | PartStatement
  | DryingClassStatement
  | TrialStatement
  | TrialContradiction
  | LayeringLine
  | GroundStatement;
