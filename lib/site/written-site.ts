import { keepSite } from "./same-site.ts";
import type { SiteReport, SiteTask, SiteTelling } from "./site-task.ts";
import { heldValues } from "../kept/held-values.ts";
import { workCacheOf } from "../kept/work-cache.ts";
import { paperThreads } from "./paper-threads.ts";

/** Of a site that is served, and made again and again. */
const held = heldValues();

/** Make both outputs of a task, and keep what they were made from. */
export async function writtenSite(task: SiteTask, tell: SiteTelling): Promise<SiteReport> {
  const cache = workCacheOf(task.contentDir, true, task.kind === "screen" ? held : undefined);
  const threads = paperThreads(task, cache);
  // What makes pages is loaded when there is something to make.
  const { madeSite } = await import("./made-site.ts");
  const report = await madeSite(task, cache, tell, threads);
  keepSite(task, task.key, cache, report);
  return report;
}
