import type { StatementWording } from "../words.ts";
import { COLORIMETRY_RULINGS } from "./statements-colorimetry.ts";
import { COMPARISON_RULINGS } from "./statements-comparison.ts";
import { DRYING_RULINGS } from "./statements-drying.ts";
import { FORMULATION_RULINGS } from "./statements-formulation.ts";
import { HAZARD_RULINGS } from "./statements-hazard.ts";
import { MIXTURE_RULINGS } from "./statements-mixtures.ts";
import { OPTICS_RULINGS } from "./statements-optics.ts";
import { PERMANENCE_RULINGS } from "./statements-permanence.ts";

/** A sentence for each rule of each science; one file a science, and one of colours side by side. */
export const RULINGS: Readonly<Record<string, StatementWording>> = {
  ...COLORIMETRY_RULINGS,
  ...OPTICS_RULINGS,
  ...MIXTURE_RULINGS,
  ...FORMULATION_RULINGS,
  ...DRYING_RULINGS,
  ...PERMANENCE_RULINGS,
  ...loosely(HAZARD_RULINGS),
  ...COMPARISON_RULINGS,
};

/** Typed wordings among loose ones: a statement reaches its own wording by its rule, with the values of that rule. */
function loosely(wordings: object): Readonly<Record<string, StatementWording>> {
  return wordings as Readonly<Record<string, StatementWording>>;
}
