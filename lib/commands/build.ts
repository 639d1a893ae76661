import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { buildFolder } from "../site/output-folder.ts";
import { asFault } from "../site/output-fault.ts";
import { siteThread, type SiteThread } from "../site/site-thread.ts";
import type { CommandOptions } from "./command-line.ts";
import { atSignal } from "./at-signal.ts";
import { counted, printDiagnostics, seconds, tally } from "./told.ts";

/** Build the site once into a folder beside the old output, and swap them when all of it is there. */
export async function build(options: CommandOptions): Promise<number> {
  const started = performance.now();
  const { contentDir, outputDir, date, strict, claims } = options;
  try {
    const folder = buildFolder(outputDir, contentDir);
    let thread: SiteThread | undefined;
    const isOver = atSignal(async () => {
      await thread?.end();
      folder.discard();
      process.stdout.write("stopped: nothing was written\n");
    });
    try {
      thread = siteThread();
      const { sheetCount, diagnostics } = await thread.written(
        {
          contentDir,
          date,
          strict,
          claims,
          dir: folder.dir,
          kind: "paper",
          earlierDir: folder.earlierDir,
        },
        { complaints: printDiagnostics, progress },
      );
      if (sheetCount === undefined)
        return ended("no sheets", diagnostics, started, "nothing was written", 1);
      // From here to its end the swap is one step, which no signal comes between.
      const left = folder.publish();
      isOver();
      if (left !== undefined) process.stderr.write(`${left}\n`);
      return ended(counted(sheetCount, "sheet"), diagnostics, started, outputDir, 0);
    } finally {
      // First the thread: it may hold every file that this program can open.
      await thread?.end();
      folder.discard();
      isOver();
    }
  } catch (error) {
    process.stderr.write(`${asFault(error, outputDir).message}\n`);
    return 1;
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
