import { shelfCards } from "../print/range-cards.ts";
import { reprintList } from "../print/reprint-list.ts";
import { nextSteps } from "../planning/next-steps.ts";
import { loadRecords } from "../records/load-records.ts";
import { earlierCards } from "../site/earlier-manifest.ts";
import { printedCards } from "../site/printed-cards.ts";
import { hazardNotes } from "../site/hazard-notes.ts";
import { latestDate, printedDate } from "../site/printed-date.ts";
import { workedSite } from "../site/site-context.ts";
import { workCacheOf } from "../kept/work-cache.ts";
import { nextLines, openLines, pressingLines, type DueMatter } from "../workshop/next-view.ts";
import type { CommandOptions } from "./command-options.ts";
import { counted, exitCode, printDiagnostics, say, seconds, tally } from "./told.ts";

/** Lines that are printed: who has done these asks again. */
const SHOWN = 25;

/**
 * What to find out next, by trying it, and what falls due or is left open; write nothing.
 * @param since a manifest.json kept when cards were printed last, in place of the workshop's own record of that.
 */
export function next(
  { contentDir, date, strict }: Pick<CommandOptions, "contentDir" | "date" | "strict">,
  since: string | undefined,
): number {
  const started = performance.now();
  const { records, diagnostics } = loadRecords(contentDir, process.cwd(), latestDate(date));
  if (records === undefined || exitCode(diagnostics, strict) !== 0) {
    printDiagnostics(diagnostics);
    say(`nothing worked out, ${tally(diagnostics)}, ${seconds(started)}`);
    return 1;
  }
  const before = since === undefined ? printedCards(contentDir) : earlierCards(since);
  const { context, published, answers, cards } = workedSite(
    records,
    printedDate(date, records.newestDate),
    workCacheOf(contentDir, false),
  );
  const sheets = published.map(({ worded: { sheet } }) => sheet);
  const lines = nextLines(
    nextSteps(records, sheets, answers.held, { steps: Infinity, sheets: Infinity }),
    records,
    context.words,
  );
  for (const { what, gain, hours, file, record } of lines.slice(0, SHOWN))
    say(`${what}\n  ${gain}; ${hours}\n  ${file}: ${record.replaceAll("\n", "\n    ")}`);
  if (lines.length > SHOWN) say(`and ${counted(lines.length - SHOWN, "line")} more that gain less`);
  const matter: DueMatter = {
    labelNotes: hazardNotes(sheets, records, context.words),
    reprints: before && reprintList(shelfCards(cards.cards, before), before, context.words),
  };
  for (const { what, record } of pressingLines(context, matter)) say(`due: ${record}: ${what}`);
  for (const { what, record } of openLines(context, matter)) say(`open: ${record}: ${what}`);
  say(`${counted(lines.length, "step")}, ${seconds(started)}`);
  return 0;
}
