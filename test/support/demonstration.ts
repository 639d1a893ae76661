import { loadRecords } from "../../lib/records/load-records.ts";
import type { Records } from "../../lib/records/records.ts";
import { workedSite, type WorkedSite } from "../../lib/site/site-context.ts";
import { siteOfWorked } from "../../lib/site/site-of-records.ts";
import type { Site } from "../../lib/site/site.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";

/** The day that is printed on all that the tests make of the demonstration. */
export const PRINTED_DATE = "2026-05-18";

/** The demonstration workshop's records, read once a worker. */
export const RECORDS: Records = readRecords();

function readRecords(): Records {
  const { records, diagnostics } = loadRecords("content");
  if (records === undefined)
    throw new Error(`Unexpected faults of the demonstration: ${JSON.stringify(diagnostics)}`);
  return records;
}

let ownWorked: WorkedSite | undefined;
let ownSite: Site | undefined;

/** All that is worked out of the demonstration before a page is made: once a worker, when a test first asks. */
export function worked(): WorkedSite {
  return (ownWorked ??= workedSite(RECORDS, PRINTED_DATE));
}

export function sheets(): readonly Sheet[] {
  return worked().published.map(({ worded: { sheet } }) => sheet);
}

/** The demonstration's pages and data: once a worker, when a test first asks. */
export function site(): Site {
  return (ownSite ??= siteOfWorked(worked()));
}
