import { loadRecords } from "../records/load-records.ts";
import { claimsAs } from "../site/claim-severity.ts";
import { asFault, buildFolder, type BuildFolder } from "../site/output-folder.ts";
import { latestDate, printedDate } from "../site/printed-date.ts";
import { printedSite } from "../site/printed-site.ts";
import { siteOf } from "../site/site-of-records.ts";
import { theoryCacheOf } from "../site/theory-cache.ts";
import { writeSite } from "../site/write-site.ts";
import { counted, exitCode, printDiagnostics, seconds, tally } from "./check.ts";
import type { CommandOptions } from "./command-line.ts";

/** Build the site once into a folder beside the old output, and swap them when all of it is there. */
export async function build(options: CommandOptions): Promise<number> {
  const started = performance.now();
  const { records, diagnostics } = loadRecords(
    options.contentDir,
    process.cwd(),
    latestDate(options.date),
  );
  printDiagnostics(diagnostics);
  if (records === undefined || exitCode(diagnostics, options.strict) !== 0) {
    process.stdout.write(
      `no sheets, ${tally(diagnostics)}, ${seconds(started)}: nothing was written\n`,
    );
    return 1;
  }

  let folder: BuildFolder | undefined;
  try {
    folder = buildFolder(options.outputDir, options.contentDir);
    progress(`working out ${counted(records.colours.size, "sheet")}`);
    const { site: onScreen, warnings: found } = siteOf(
      records,
      printedDate(options.date, records.newestDate),
      theoryCacheOf(options.contentDir),
    );
    progress(`printing ${counted(records.colours.size, "sheet")}`);
    const { site, warnings: ofPrint } = printedSite(onScreen, options.outputDir);
    const warnings = [...claimsAs(options.claims, found), ...ofPrint];
    printDiagnostics(warnings);
    if (exitCode(warnings, options.strict) !== 0) {
      folder.discard();
      process.stdout.write(
        `no sheets, ${tally(warnings)}, ${seconds(started)}: nothing was written\n`,
      );
      return 1;
    }
    progress(`writing ${counted(site.pages.length, "page")}`);
    await writeSite(site, folder.dir);
    folder.publish();
    process.stdout.write(
      `${counted(site.sheetCount, "sheet")}, ${tally([...diagnostics, ...warnings])}, ${seconds(started)}: ${options.outputDir}\n`,
    );
    return 0;
  } catch (error) {
    folder?.discard();
    process.stderr.write(`${asFault(error, options.outputDir).message}\n`);
    return 1;
  }
}

/** Long work says what it is at, but only to somebody who is watching. */
function progress(what: string): void {
  if (process.stderr.isTTY) process.stderr.write(`${what}\n`);
}
