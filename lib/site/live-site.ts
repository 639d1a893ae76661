import { formatDiagnostic, type Diagnostic } from "../diagnostics/diagnostic.ts";
import { printedOrder } from "../diagnostics/printed-order.ts";
import { loadRecords } from "../records/load-records.ts";
import { claimsAs } from "./claim-severity.ts";
import { latestDate, printedDate } from "./printed-date.ts";
import { siteOf } from "./site-of-records.ts";
import { theoryCacheOf } from "./theory-cache.ts";
import type { Site } from "./site.ts";

export interface LiveSite {
  /** Absent when the records have an error: the last good site stays. */
  readonly site?: Site;
  /** Finished lines: every complaint about the records. */
  readonly complaints: readonly string[];
}

/** The site as the records are now, for serving while they are edited. Bundled anew with lib/ on each edit. */
export function liveSite(
  contentDir: string,
  date: string | undefined,
  claims: Diagnostic["severity"] = "error",
): LiveSite {
  const { records, diagnostics } = loadRecords(contentDir, process.cwd(), latestDate(date));
  if (records === undefined) return { complaints: printedOrder(diagnostics).map(formatDiagnostic) };
  const { site, warnings: found } = siteOf(
    records,
    printedDate(date, records.newestDate),
    theoryCacheOf(contentDir),
  );
  const warnings = claimsAs(claims, found);
  const complaints = printedOrder([...diagnostics, ...warnings]).map(formatDiagnostic);
  return warnings.some(({ severity }) => severity === "error")
    ? { complaints }
    : { site, complaints };
}
