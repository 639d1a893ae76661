import type { LeftOutStatement } from "./classify/applicable-classifications.ts";
import type { TraceStatement } from "./classify/finding.ts";
import type { GapStatement, UnknownToxicityStatement } from "./label/label-elements.ts";
import type { PackagingStatement } from "./label/packaging.ts";
import type { PrecautionStatement } from "./label/precautionary-choice.ts";
import type { SmallPackageStatement } from "./label/small-package.ts";
import type { LabelDifference } from "./label/stated-label.ts";
import type { MarketStatement } from "./markets/market-statements.ts";
import type { BenchTestStatement } from "./studio/bench-test.ts";
import type { CautionStatement } from "./studio/studio-cautions.ts";
import type { ContainsMetalStatement, StudioReason } from "./studio/studio-material.ts";

/** Why each line stands on a label or does not, what the label cannot tell, and where a maker's label differs. */
export type LabelStatement =
  | TraceStatement
  | LeftOutStatement
  | GapStatement
  | UnknownToxicityStatement
  | PrecautionStatement
  | SmallPackageStatement
  | ContainsMetalStatement
  | PackagingStatement
  | LabelDifference;

/** Cautions of the studio, their reasons, and care at the bench. */
export type StudioStatement = CautionStatement | StudioReason | BenchTestStatement;

/** Everything that this science says. */
export type HazardStatement = LabelStatement | StudioStatement | MarketStatement;
