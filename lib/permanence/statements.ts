import type { SaidBy } from "../quantities/statement.ts";
import type { LeastLightfastStatement } from "./least-lightfast.ts";
import type { LabelLightfastness } from "./lightfastness-on-label.ts";
import type {
  PERMANENCE_CONTRADICTIONS,
  PERMANENCE_REASONS,
  SENSITIVITIES,
} from "./permanence-rules.ts";

/** Everything that this science says. */
export type PermanenceStatement =
  | SaidBy<typeof PERMANENCE_REASONS>
  | SaidBy<typeof SENSITIVITIES>
  | SaidBy<typeof PERMANENCE_CONTRADICTIONS>
  | LeastLightfastStatement
  | LabelLightfastness;
