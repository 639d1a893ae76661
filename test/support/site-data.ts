import type { Site } from "../../lib/site/site.ts";

/** The text of a site's file of data; undefined where there is none. */
export function dataAt(
  { files, manifests }: Pick<Site, "files" | "manifests">,
  path: string,
): string | undefined {
  return [...files(), ...manifests()].find((file) => file.path === path)?.text;
}
