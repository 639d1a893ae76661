import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { loadRecords } from "../records/load-records.ts";
import { keptParsers } from "../records/kept-parsers.ts";
import { withPhotographs } from "../photographs/taken-photographs.ts";
import type { Records } from "../records/records.ts";
import { claimsAs } from "./claim-severity.ts";
import { hazardNotes } from "./hazard-notes.ts";
import { labelNotes } from "./label-notes.ts";
import { latestDate, printedDate } from "./printed-date.ts";
import { addressFaults, keptManifests } from "./site-addresses.ts";
import { diagnosticsOf, workedSites } from "./site-context.ts";
import { allPagePaths } from "./all-pages.ts";
import type { SiteTask } from "./site-task.ts";
import { clearResults } from "../kept/kept-result.ts";
import { workCacheOf } from "../kept/work-cache.ts";

export interface CheckedSite {
  /** Absent when they have an error. */
  readonly records: Records | undefined;
  /** All that a build would tell, and notes beside it. */
  readonly diagnostics: readonly Diagnostic[];
}

/** What is worked out is kept for the next build or check. The records of a content folder, the sheets against them, the answers against the sheets, and whether cards hold what they state. */
export async function checkedSite({
  contentDir,
  date,
  claims,
  since,
}: Pick<SiteTask, "contentDir" | "date" | "claims"> & {
  readonly since?: string | undefined;
}): Promise<CheckedSite> {
  const cache = workCacheOf(contentDir);
  const parsers = keptParsers();
  parsers.begin(cache);
  const { records, diagnostics, notes } = await withPhotographs(
    loadRecords(contentDir, process.cwd(), latestDate(date), parsers),
    cache,
    "what they tell",
  );
  if (records === undefined) return { records, diagnostics: [...diagnostics, ...notes] };
  const sites = workedSites(records, printedDate(date, records.newestDate), cache);
  const [worked] = sites;
  const checked: CheckedSite = {
    records,
    diagnostics: [
      ...diagnostics,
      ...claimsAs(claims, diagnosticsOf(sites)),
      ...sites.flatMap(({ laidOut }) => laidOut().warnings),
      ...addressFaults(records, allPagePaths(sites), [
        ...keptManifests(contentDir),
        ...(since === undefined ? [] : [since]),
      ]),
      ...notes,
      ...hazardNotes(worked.sheets, worked.context.records, worked.context.words, worked.steps),
      ...labelNotes(worked),
    ],
  };
  for (const { keepSteps } of sites) keepSteps();
  parsers.keep(cache);
  clearResults(cache);
  return checked;
}
