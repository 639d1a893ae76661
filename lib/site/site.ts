import type { AnyPageView, SiteView } from "../present/views.ts";

/** One page for Eleventy to render: templates/pages/every-page.njk picks the template of its kind. */
export interface PageEntry {
  /** Below the site's root: `colours/bone-black/index.html`. */
  readonly path: string;
  readonly site: SiteView;
  readonly view: AnyPageView;
}

/** One file of data that is written as it is. */
export interface DataFile {
  readonly path: string;
  readonly text: string;
}

/** Everything that a build writes, but for styles and fonts. */
export interface Site {
  readonly pages: readonly PageEntry[];
  readonly files: readonly DataFile[];
  readonly sheetCount: number;
}
