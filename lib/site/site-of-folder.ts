import { liveSite } from "./live-site.ts";
import type { Site } from "./site.ts";

/** The site of a content folder, for Eleventy run by itself. @throws Error with every complaint when the records have an error. */
export function siteOfFolder(contentDir: string): Site {
  const { site, complaints } = liveSite(contentDir, undefined);
  if (site === undefined) throw new Error(complaints.join("\n"));
  return site;
}
