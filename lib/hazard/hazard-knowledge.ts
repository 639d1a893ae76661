import type { HarmonisedRow } from "./classify/harmonised.ts";
import type { Act } from "./classify/legislation.ts";
import type { SubstanceRow } from "./classify/substance.ts";
import type { ForbiddenWordsOf } from "./label/forbidden-words.ts";
import type { MetalTables } from "./studio/metal-content.ts";
import type { QuartzRow } from "./studio/quartz.ts";
import type { PrecautionRow } from "./texts/precautionary-statement.ts";
import type { StatementTexts } from "./texts/statement-texts.ts";
import type { SubstanceNameRow } from "./texts/substance-name.ts";

/** What this science knows by its tables, handed to whoever rules by it. */
export interface HazardKnowledge {
  readonly texts: StatementTexts;
  readonly substances: readonly SubstanceRow[];
  readonly harmonised: readonly HarmonisedRow[];
  readonly precautions: readonly PrecautionRow[];
  readonly substanceNames: readonly SubstanceNameRow[];
  readonly metals: MetalTables;
  readonly acts: readonly Act[];
  readonly forbiddenWords: ForbiddenWordsOf;
  readonly quartz: readonly QuartzRow[];
}
