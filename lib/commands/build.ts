import { workCacheOf } from "../kept/work-cache.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { buildFolders, refuseNested, type BuildFolders } from "../site/output-pair.ts";
import { asFault } from "../site/output-fault.ts";
import { sameSite, siteKey } from "../site/same-site.ts";
import type { SiteTask } from "../site/site-task.ts";
import { spareOutput } from "../site/spare-output.ts";
import { siteThread, type SiteThread } from "../site/site-thread.ts";
import type { CommandOptions } from "./command-options.ts";
import { atSignal } from "./at-signal.ts";
import { counted, printDiagnostics, seconds, tally } from "./told.ts";

/** Build the site, and the workshop's own pages, once into folders beside the old ones, and swap them when all of it is there. */
export async function build(options: CommandOptions): Promise<number> {
  const started = performance.now();
  const { contentDir, outputDir, workshopDir, date, base, strict, claims, since } = options;
  try {
    let folder: BuildFolders | undefined;
    let thread: SiteThread | undefined;
    // Before anything is claimed: a signal that comes meanwhile then finds what to clear away.
    const isOver = atSignal(async () => {
      await thread?.end();
      folder?.discard();
      process.stdout.write("stopped: nothing was written\n");
    });
    try {
      refuseNested(outputDir, workshopDir, contentDir);
      folder = buildFolders(outputDir, workshopDir, contentDir, (kind) =>
        spareOutput(workCacheOf(contentDir), kind),
      );
      const task: SiteTask = {
        contentDir,
        date,
        base,
        strict,
        claims,
        dir: folder.dir,
        workshopDir: folder.workshopDir,
        kind: "paper",
        earlierDir: folder.earlierDir,
        earlierWorkshopDir: folder.earlierWorkshopDir,
        since,
      };
      // Here, since a thread takes as much memory again: what makes a site is loaded where there is something to make.
      const key = siteKey(task);
      let report = sameSite(task, key, workCacheOf(contentDir));
      const isSame = report !== undefined;
      if (report === undefined) {
        thread = (options.thread ?? siteThread)();
        report = await thread.written({ ...task, key }, { complaints: printDiagnostics, progress });
      } else printDiagnostics(report.diagnostics);
      const { sheetCount, diagnostics } = report;
      if (sheetCount === undefined)
        return ended("no sheets", diagnostics, started, "nothing was written", 1);
      // From here to its end the swap is one step, which no signal comes between.
      const left = isSame ? undefined : folder.publish();
      isOver();
      if (left !== undefined) process.stderr.write(`${left}\n`);
      return ended(
        counted(sheetCount, "sheet"),
        diagnostics,
        started,
        `${outputDir}; for the workshop alone: ${workshopDir}`,
        0,
      );
    } finally {
      // First the thread: it may hold every file that this program can open.
      await thread?.end();
      folder?.discard();
      isOver();
    }
  } catch (error) {
    throw asFault(error, outputDir);
  }
}

function ended(
  what: string,
  diagnostics: readonly Diagnostic[],
  started: number,
  where: string,
  code: number,
): number {
  process.stdout.write(`${what}, ${tally(diagnostics)}, ${seconds(started)}: ${where}\n`);
  return code;
}

/** Long work says what it is at, but only to somebody who is watching. */
function progress(what: string): void {
  if (process.stderr.isTTY) process.stderr.write(`${what}\n`);
}
