import { dirname, join } from "node:path";
import type { SiteThread } from "../site/site-thread.ts";
import type { GivenOptions } from "./option-table.ts";

/** What most commands go by. */
export interface CommandOptions {
  readonly contentDir: string;
  readonly outputDir: string;
  /** Where the pages of the workshop's own go. */
  readonly workshopDir: string;
  readonly date: string | undefined;
  /** The folder of its host that the site stands in; undefined for that of the workshop's address. */
  readonly base: string | undefined;
  readonly port: number;
  readonly strict: boolean;
  /** What a claim that no longer holds is. */
  readonly claims: "error" | "warning";
  /** A manifest.json kept when cards were printed last. */
  readonly since: string | undefined;
  /** What a build's files are written by; a thread that begins and ends with the build where none is given. */
  readonly thread?: (() => SiteThread) | undefined;
}

/** @param home the folder that outputs lie in by themselves */
export function commandOptions(
  given: GivenOptions,
  home: string,
  thread: (() => SiteThread) | undefined,
): CommandOptions {
  return {
    contentDir: contentDir(given),
    outputDir: given.output ?? join(home, "_site"),
    workshopDir: given.workshop ?? join(home, "_workshop"),
    date: given.date,
    base: given.base,
    port: given.port ?? 0,
    strict: given.strict === true,
    claims: given.claims === "warn" ? "warning" : "error",
    since: given.since,
    thread,
  };
}

/** What is published of records elsewhere is no build of this folder's: it lies beside those. */
export function besideRecords(given: GivenOptions): string {
  return dirname(contentDir(given));
}

function contentDir({ content = "content" }: GivenOptions): string {
  return content;
}
