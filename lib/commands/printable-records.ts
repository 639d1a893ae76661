import { workCacheOf } from "../kept/work-cache.ts";
import { withPhotographs, type PhotographsWanted } from "../photographs/taken-photographs.ts";
import { loadRecords } from "../records/load-records.ts";
import type { Records } from "../records/records.ts";
import { recordsBelow } from "../records/site-base.ts";
import { latestDate } from "../site/printed-date.ts";
import type { CommandOptions } from "./command-options.ts";
import { exitCode, printDiagnostics, say, seconds, tally } from "./told.ts";

/**
 * The records to print from, after every complaint about them; undefined where one of them stops the command.
 * @param what is not printed then: "cards".
 * @param started of performance.now().
 */
export async function printableRecords(
  {
    contentDir,
    date,
    base,
    strict,
  }: Pick<CommandOptions, "contentDir" | "date" | "base" | "strict">,
  what: string,
  started: number,
  wants: PhotographsWanted = "what they tell",
): Promise<Records | undefined> {
  const { records, diagnostics } = await withPhotographs(
    loadRecords(contentDir, process.cwd(), latestDate(date)),
    workCacheOf(contentDir, false),
    wants,
  );
  printDiagnostics(diagnostics);
  if (records !== undefined && exitCode(diagnostics, strict) === 0)
    return recordsBelow(records, base);
  say(`no ${what}, ${tally(diagnostics)}, ${seconds(started)}: nothing was written`);
  return undefined;
}
