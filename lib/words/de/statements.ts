import type { DryingStatement } from "../../drying/statements.ts";
import type { FormulationStatement } from "../../formulation/statements.ts";
import type { HazardStatement } from "../../hazard/statements.ts";
import type { LotStatement } from "../../lots/statements.ts";
import type { PhotographStatement } from "../../patches/statements.ts";
import type {
  DrawdownStatement,
  MixtureStatement,
  PaintStatement,
} from "../../optics/statements.ts";
import { byRule } from "../by-rule.ts";
import type { StatementWording } from "../words.ts";
import { COLORIMETRY_RULINGS } from "./statements-colorimetry.ts";
import { COMPARISON_RULINGS } from "./statements-comparison.ts";
import { DRAWDOWN_RULINGS } from "./statements-drawdowns.ts";
import { DRAWN_COAT_RULINGS } from "./statements-drawn-coat.ts";
import { DRYING_RULINGS } from "./statements-drying.ts";
import { EXPECTED_RULINGS } from "./statements-expected.ts";
import { FORMULATION_RULINGS } from "./statements-formulation.ts";
import { HAZARD_RULINGS } from "./statements-hazard.ts";
import { LOT_RULINGS } from "./statements-lots.ts";
import { PATCH_RULINGS } from "./statements-patches.ts";
import { MIXTURE_RULINGS } from "./statements-mixtures.ts";
import { OPACITY_RULINGS } from "./statements-opacity.ts";
import { OPTICS_RULINGS } from "./statements-optics.ts";
import { PERMANENCE_RULINGS } from "./statements-permanence.ts";

/** A sentence for each rule of each science; one file a science, and one of colours side by side. */
export const RULINGS: Readonly<Record<string, StatementWording>> = {
  ...byRule(COLORIMETRY_RULINGS),
  ...byRule<PaintStatement>(OPTICS_RULINGS),
  ...byRule<DrawdownStatement>(DRAWDOWN_RULINGS),
  ...byRule(OPACITY_RULINGS),
  ...byRule(DRAWN_COAT_RULINGS),
  ...byRule(EXPECTED_RULINGS),
  ...byRule<MixtureStatement>(MIXTURE_RULINGS),
  ...byRule<FormulationStatement>(FORMULATION_RULINGS),
  ...byRule<DryingStatement>(DRYING_RULINGS),
  ...byRule(PERMANENCE_RULINGS),
  ...byRule<HazardStatement>(HAZARD_RULINGS),
  ...byRule(COMPARISON_RULINGS),
  ...byRule<LotStatement>(LOT_RULINGS),
  ...byRule<PhotographStatement>(PATCH_RULINGS),
};
