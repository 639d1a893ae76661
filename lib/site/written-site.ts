import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { loadRecords } from "../records/load-records.ts";
import type { FileParsers } from "../records/parsed-files.ts";
import { claimsAs } from "./claim-severity.ts";
import { latestDate, printedDate } from "./printed-date.ts";
import { printedSite } from "./printed-site.ts";
import { siteOf } from "./site-of-records.ts";
import type { SiteReport, SiteTask, SiteTelling } from "./site-task.ts";
import { theoryCacheOf } from "./theory-cache.ts";
import { writeSite } from "./write-site.ts";

/**
 * Write the whole site and the workshop's pages of a content folder into a folder each, unless something found in the records stops it.
 * @param parsers of somebody who writes one folder's site again and again.
 */
export async function writtenSite(
  { contentDir, date, strict, claims, dir, workshopDir, kind, earlierDir }: SiteTask,
  tell: SiteTelling,
  parsers?: FileParsers,
): Promise<SiteReport> {
  const diagnostics: Diagnostic[] = [];
  const isStopped = (found: readonly Diagnostic[]): boolean => {
    diagnostics.push(...found);
    tell.complaints(found);
    return found.some(({ severity }) => severity === "error" || (strict && severity === "warning"));
  };
  const stopped = (): SiteReport => ({ diagnostics, sheetCount: undefined });

  const { records, diagnostics: ofRecords } = loadRecords(
    contentDir,
    process.cwd(),
    latestDate(date),
    parsers,
  );
  if (isStopped(ofRecords) || records === undefined) return stopped();
  const cache = theoryCacheOf(contentDir);
  const sheets = records.colours.size === 1 ? "1 sheet" : `${records.colours.size} sheets`;
  tell.progress(`working out ${sheets}`);
  const {
    site: onScreen,
    workshop,
    warnings: ofSheets,
  } = siteOf(records, printedDate(date, records.newestDate), cache);
  const ofCards = kind === "paper" ? (onScreen.prints?.laidOut().warnings ?? []) : [];
  if (isStopped([...claimsAs(claims, ofSheets), ...ofCards])) return stopped();
  if (kind === "paper") tell.progress(`printing ${sheets}`);
  const site = kind === "paper" ? printedSite(onScreen, earlierDir, cache).site : onScreen;
  tell.progress(`writing ${site.pages.length} pages`);
  await writeSite(site, dir, kind);
  await writeSite(workshop(), workshopDir, kind, "workshop");
  return { diagnostics, sheetCount: site.sheetCount };
}
