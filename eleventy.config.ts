import { pageEnvironment } from "./lib/site/template-environment.ts";
import { siteOfFolder } from "./lib/site/site-of-folder.ts";
import type { Site } from "./lib/site/site.ts";
import type { EleventyConfig } from "./lib/site/eleventy-types.ts";

/**
 * Wires Eleventy to the site and does nothing else. The commands pass the site
 * that they made; Eleventy run by itself makes the site of ./content.
 */
export default function configure(
  config: EleventyConfig,
  site: () => Site = () => siteOfFolder("content"),
): void {
  // Its own includes folder may not lie above its input, where our templates are: they get an environment of their own.
  config.setLibrary("njk", pageEnvironment());
  config.addGlobalData("everyPage", () => site().pages);
  // An installed package lies in node_modules, which Eleventy would otherwise pass over.
  config.setUseGitIgnore(false);
  config.ignores.delete("node_modules/**");
  config.ignores.delete("**/node_modules/**");
}
