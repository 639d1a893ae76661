import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { inject } from "vitest";

/** Any JSON object, before a test has said what it must be. */
export type Json = Readonly<Record<string, unknown>>;

/** A JSON file of the demonstration site, by its path below the output. */
export function published(path: string): Json {
  return JSON.parse(readFileSync(join(inject("siteDir"), path), "utf8")) as Json;
}

/** The sheet.json of every colour in the demonstration's records with its slug, in order of slug. */
export function publishedSheets(): { readonly slug: string; readonly sheet: Json }[] {
  const slugs = readdirSync("content/colours")
    .map((file) => file.replace(/\.md$/, ""))
    .sort();
  return slugs.map((slug) => ({ slug, sheet: published(`colours/${slug}/sheet.json`) }));
}
