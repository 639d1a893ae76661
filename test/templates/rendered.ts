import nunjucks from "nunjucks";
import type { AnyPageView } from "../../lib/site/all-pages.ts";
import type { SiteView } from "../../lib/present/views.ts";

/** The options that the site is built with: a missing figure stops the build. */
const environment = new nunjucks.Environment(new nunjucks.FileSystemLoader("templates"), {
  autoescape: true,
  throwOnUndefined: true,
  trimBlocks: true,
  lstripBlocks: true,
});

/** A whole page from its view; the template is named after its kind. */
export function rendered(site: SiteView, view: AnyPageView): string {
  return environment.render(`pages/${view.kind}.njk`, { site, view });
}

/** What one macro prints. */
export function renderedMacro(file: string, macro: string, params: unknown): string {
  return environment.renderString(
    `{% from "macros/${file}.njk" import ${macro} %}{{ ${macro}(params) }}`,
    { params },
  );
}
