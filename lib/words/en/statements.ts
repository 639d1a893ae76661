import type { HazardStatement } from "../../hazard/statements.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import type { StatementWording } from "../words.ts";
import { COLORIMETRY_RULINGS } from "./statements-colorimetry.ts";
import { COMPARISON_RULINGS } from "./statements-comparison.ts";
import { DRYING_RULINGS } from "./statements-drying.ts";
import { FORMULATION_RULINGS } from "./statements-formulation.ts";
import { HAZARD_RULINGS } from "./statements-hazard.ts";
import { MIXTURE_RULINGS } from "./statements-mixtures.ts";
import { OPACITY_RULINGS } from "./statements-opacity.ts";
import { OPTICS_RULINGS } from "./statements-optics.ts";
import { PERMANENCE_RULINGS } from "./statements-permanence.ts";

/** A sentence for each rule of each science; one file a science, and one of colours side by side. */
export const RULINGS: Readonly<Record<string, StatementWording>> = {
  ...byRule(COLORIMETRY_RULINGS),
  ...OPTICS_RULINGS,
  ...byRule(OPACITY_RULINGS),
  ...MIXTURE_RULINGS,
  ...FORMULATION_RULINGS,
  ...DRYING_RULINGS,
  ...byRule(PERMANENCE_RULINGS),
  ...byRule<HazardStatement>(HAZARD_RULINGS),
  ...COMPARISON_RULINGS,
};

/** Wordings of a closed union among those that are looked up by rule alone: their fields were checked where a statement is made. */
function byRule<S extends { readonly rule: string; readonly values: object }>(
  wordings: WordingsOf<S>,
): Readonly<Record<string, StatementWording>> {
  return wordings;
}
