import type { LossStatement } from "./batch-loss.ts";
import type { JarStatement } from "./container-fill.ts";
import type { OilDemandStatement } from "./cpvc.ts";
import type { DispersionFactorStatement, FinenessStatement } from "./dispersion.ts";
import type { FinishStatement } from "./finish.ts";
import type { FinishDifference, GlossStatement } from "./gloss.ts";
import type { HandbookStatement } from "./handbook-estimate.ts";
import type { DensityStatement } from "./measured-density.ts";
import type { OilAbsorptionStatement } from "./oil-absorption-method.ts";
import type { OilRatioStatement } from "./oil-by-volume.ts";
import type { HoldBackStatement } from "./oil-held-back.ts";
import type { OilIndexStatement } from "./oil-index-class.ts";
import type { PasteStatement } from "./paste-body.ts";
import type { SolventStatement } from "./solvent.ts";
import type { WorkingOilStatement } from "./working-oil.ts";

/** Everything that this science says. */
export type FormulationStatement =
  | OilIndexStatement
  | WorkingOilStatement
  | OilAbsorptionStatement
  | HandbookStatement
  | OilDemandStatement
  | OilRatioStatement
  | DispersionFactorStatement
  | FinenessStatement
  | FinishStatement
  | GlossStatement
  | FinishDifference
  | PasteStatement
  | HoldBackStatement
  | LossStatement
  | DensityStatement
  | JarStatement
  | SolventStatement;
