import { rulings } from "../rulings.ts";
import { COLORIMETRY_RULINGS } from "./statements-colorimetry.ts";
import { COMPARISON_RULINGS } from "./statements-comparison.ts";
import { DRAWN_COAT_RULINGS } from "./statements-drawn-coat.ts";
import { DRYING_RULINGS } from "./statements-drying.ts";
import { EXPECTED_RULINGS } from "./statements-expected.ts";
import { FORMULATION_RULINGS } from "./statements-formulation.ts";
import { HAZARD_RULINGS } from "./statements-hazard.ts";
import { LOT_RULINGS } from "./statements-lots.ts";
import { PATCH_RULINGS } from "./statements-patches.ts";
import { MIXTURE_RULINGS } from "./statements-mixtures.ts";
import { DRAWDOWN_RULINGS } from "./statements-drawdowns.ts";
import { OPACITY_RULINGS } from "./statements-opacity.ts";
import { OPTICS_RULINGS } from "./statements-optics.ts";
import { PERMANENCE_RULINGS } from "./statements-permanence.ts";

/** A sentence for each rule of each science; one file a science, and one of colours side by side. */
export const RULINGS = rulings({
  ...COLORIMETRY_RULINGS,
  ...OPTICS_RULINGS,
  ...DRAWDOWN_RULINGS,
  ...OPACITY_RULINGS,
  ...EXPECTED_RULINGS,
  ...DRAWN_COAT_RULINGS,
  ...MIXTURE_RULINGS,
  ...FORMULATION_RULINGS,
  ...DRYING_RULINGS,
  ...PERMANENCE_RULINGS,
  ...HAZARD_RULINGS,
  ...COMPARISON_RULINGS,
  ...LOT_RULINGS,
  ...PATCH_RULINGS,
});
