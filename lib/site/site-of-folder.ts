import { formatDiagnostic } from "../diagnostics/diagnostic.ts";
import { printedOrder } from "../diagnostics/printed-order.ts";
import { loadRecords } from "../records/load-records.ts";
import { inOneFolder } from "./one-folder.ts";
import { siteOf } from "./site-of-records.ts";
import type { Site } from "./site.ts";

/** The site of a content folder, for Eleventy run by itself. @throws Error with every complaint when the records have an error. */
export function siteOfFolder(contentDir: string): Site {
  const { records, diagnostics } = loadRecords(contentDir);
  if (records === undefined)
    throw new Error(printedOrder(diagnostics).map(formatDiagnostic).join("\n"));
  return inOneFolder(siteOf(records, records.newestDate).site, records.workshop.siteAddress);
}
