import type { Act } from "./classify/legislation.ts";
import type { MetalTables } from "./studio/metal-content.ts";
import type { QuartzRow } from "./studio/quartz.ts";
import type { StatementTexts } from "./texts/statement-texts.ts";

/** What this science knows by its tables, handed to whoever rules by it. */
export interface HazardKnowledge {
  readonly texts: StatementTexts;
  readonly metals: MetalTables;
  readonly acts: readonly Act[];
  readonly quartz: readonly QuartzRow[];
}
