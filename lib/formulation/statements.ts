import type { LossStatement } from "./batch-loss.ts";
import type { JarStatement } from "./container-fill.ts";
import type { SaidBy } from "../quantities/statement.ts";
import type { OIL_RULES, PASTE_RULES } from "./oil-rules.ts";
import type { DispersionFactorStatement, FinenessStatement } from "./dispersion.ts";
import type { FinishStatement } from "./finish.ts";
import type { FinishDifference, GlossStatement } from "./gloss.ts";
import type { HandbookStatement } from "./handbook-estimate.ts";
import type { DensityStatement } from "./measured-density.ts";
import type { OilAbsorptionStatement } from "./oil-absorption-method.ts";
import type { OilRatioStatement } from "./oil-by-volume.ts";
import type { HoldBackStatement } from "./oil-held-back.ts";
import type { WorkingOilStatement } from "./working-oil.ts";

/** Everything that this science says. */
export type FormulationStatement =
  | SaidBy<typeof OIL_RULES>
  | SaidBy<typeof PASTE_RULES>
  | WorkingOilStatement
  | OilAbsorptionStatement
  | HandbookStatement
  | OilRatioStatement
  | DispersionFactorStatement
  | FinenessStatement
  | FinishStatement
  | GlossStatement
  | FinishDifference
  | HoldBackStatement
  | LossStatement
  | DensityStatement
  | JarStatement;
