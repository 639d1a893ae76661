import type { DrierRow } from "./added-drier.ts";
import type { HealthRow } from "./film-defects.ts";
import type { OilRow } from "./oils.ts";

/** What this science knows by its tables, handed to whoever rules by it. */
export interface DryingKnowledge {
  readonly oils: readonly OilRow[];
  readonly driers: readonly DrierRow[];
  readonly filmHealth: readonly HealthRow[];
}
