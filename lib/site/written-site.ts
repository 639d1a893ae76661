import { keepSite, sameSite, siteKey } from "./same-site.ts";
import type { SiteReport, SiteTask, SiteTelling } from "./site-task.ts";
import { heldValues } from "../kept/held-values.ts";
import { workCacheOf } from "../kept/work-cache.ts";

/** Of a site that is served, and made again and again. */
const held = heldValues();

/** See that both outputs of a task are there: made, unless the earlier ones are what would be. */
export async function writtenSite(task: SiteTask, tell: SiteTelling): Promise<SiteReport> {
  const cache = workCacheOf(task.contentDir, true, task.kind === "screen" ? held : undefined);
  const key = siteKey(task);
  const same = sameSite(task, key, cache);
  if (same !== undefined) {
    tell.complaints(same.diagnostics);
    return same;
  }
  // What makes pages is loaded when there is something to make.
  const { madeSite } = await import("./made-site.ts");
  const report = await madeSite(task, cache, tell);
  keepSite(task, key, cache, report);
  return report;
}
