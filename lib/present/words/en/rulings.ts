import type { RulingWording } from "../words.ts";
import { COLORIMETRY_RULINGS } from "./rulings-colorimetry.ts";
import { COMPARISON_RULINGS } from "./rulings-comparison.ts";
import { DRYING_RULINGS } from "./rulings-drying.ts";
import { FORMULATION_RULINGS } from "./rulings-formulation.ts";
import { HAZARD_RULINGS } from "./rulings-hazard.ts";
import { MIXTURE_RULINGS } from "./rulings-mixtures.ts";
import { OPTICS_RULINGS } from "./rulings-optics.ts";
import { PERMANENCE_RULINGS } from "./rulings-permanence.ts";

/** A sentence for each rule of each science; one file a science, and one of colours side by side. */
export const RULINGS: Readonly<Record<string, RulingWording>> = {
  ...COLORIMETRY_RULINGS,
  ...OPTICS_RULINGS,
  ...MIXTURE_RULINGS,
  ...FORMULATION_RULINGS,
  ...DRYING_RULINGS,
  ...PERMANENCE_RULINGS,
  ...HAZARD_RULINGS,
  ...COMPARISON_RULINGS,
};
