import { setImmediate as turn } from "node:timers/promises";
import type { WorkCache } from "../kept/work-cache.ts";
import type { Records } from "../records/records.ts";
import { keepIn } from "../kept/kept-result.ts";
import { allFits } from "../sheet/all-sheets.ts";
import { theoryModels } from "../sheet/pigments/theory-models.ts";
import { rangeAhead } from "./site-context.ts";
import { theoryFigure } from "./theory-cache.ts";

/**
 * What hardly any photograph moves, worked out for whoever asks later and finds it kept: theory, fits and sheets,
 * of which a colour's that takes its masstone from a photograph is worked out again. Between them this thread hears
 * what has come meanwhile.
 */
export async function workAhead(records: Records, cache: WorkCache): Promise<void> {
  if (!cache.keeps) return;
  try {
    await turn();
    theoryFigure(theoryModels(records), cache);
    await turn();
    allFits(records, keepIn(cache));
    await turn();
    rangeAhead(records, cache);
  } catch {
    // It stops whoever asks for it, if anybody comes to ask.
  }
}
