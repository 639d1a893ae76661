import type { BlueWoolStatement } from "./blue-wool.ts";
import type { ChangeSoFarStatement } from "./change-so-far.ts";
import type { ExpectedContradiction } from "./expected-contradiction.ts";
import type { GreyScaleStatement } from "./grey-scale.ts";
import type { LeastLightfastStatement } from "./least-lightfast.ts";
import type { LabelLightfastness, SuitabilityStatement } from "./lightfastness-on-label.ts";
import type { PermanenceReason } from "./permanence-ruling.ts";
import type { SensitivityStatement } from "./sensitivity.ts";

/** Everything that this science says. */
export type PermanenceStatement =
  | PermanenceReason
  | ExpectedContradiction
  | ChangeSoFarStatement
  | LeastLightfastStatement
  | BlueWoolStatement
  | GreyScaleStatement
  | LabelLightfastness
  | SuitabilityStatement
  | SensitivityStatement;
