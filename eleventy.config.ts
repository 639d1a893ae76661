import { siteOfFolder } from "./lib/site/site-of-folder.ts";
import type { Site } from "./lib/site/site.ts";
import { ELEVENTY_DIR, type EleventyConfig } from "./lib/site/eleventy-types.ts";

/**
 * Wires Eleventy to the site and does nothing else. The commands pass the site
 * that they made; Eleventy run by itself makes it from ./content.
 */
export default function configure(config: EleventyConfig, site: () => Site = () => siteOfFolder("content")): { dir: typeof ELEVENTY_DIR } {
  config.setNunjucksEnvironmentOptions({ autoescape: true, throwOnUndefined: true, trimBlocks: true, lstripBlocks: true });
  config.addGlobalData("everyPage", () => site().pages);
  // An installed package lies in node_modules, which Eleventy would otherwise pass over.
  config.setUseGitIgnore(false);
  config.ignores.delete("node_modules/**");
  config.ignores.delete("**/node_modules/**");
  return { dir: ELEVENTY_DIR };
}
