import { keepIn } from "../kept/kept-result.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import type { Records } from "../records/records.ts";
import { allFits } from "../sheet/all-sheets.ts";
import { theoryModels } from "../sheet/pigments/theory-models.ts";
import { theoryFigure } from "./theory-cache.ts";

/** Fits and theory, which no photograph moves, worked out for whoever asks later and finds them kept. */
export function workAhead(records: Records, cache: WorkCache): void {
  if (!cache.keeps) return;
  try {
    allFits(records, keepIn(cache));
    theoryFigure(theoryModels(records), cache);
  } catch {
    // It stops whoever asks for it, if anybody comes to ask.
  }
}
