import type { AnyPageView } from "../blocks/page-kinds.ts";
import { contentHash } from "../kept/content-hash.ts";
import { readAgain, readBy, type Read } from "../kept/reads.ts";
import type { SiteView } from "../present/views.ts";
import { viewKey, type KeptViews } from "./kept-views.ts";

/** What a page shows, and the frame that it shows it in. */
export interface FilledPage {
  readonly site: SiteView;
  readonly view: AnyPageView;
}

/** One page for Eleventy to render: templates/entry/every-page.njk picks the template of its kind. It is filled when it is first looked into. */
export interface PageEntry extends FilledPage {
  /** Below the site's root: `colours/bone-black/index.html`. */
  readonly path: string;
  /** Of no use to whoever searches: not in the list for search engines. */
  readonly isUnlisted?: boolean;
  /** The hash of what it is filled with, which may be known without filling it. */
  readonly key: () => string;
}

/** A page that is filled by a function. @param views of earlier builds. */
export function pageEntry(
  path: string,
  filled: () => FilledPage,
  views?: KeptViews,
  isUnlisted = false,
): PageEntry {
  let read: Read<FilledPage> | undefined;
  const once = (): Read<FilledPage> => (read ??= readBy(filled));
  const again = (): FilledPage => readAgain(once());
  return {
    path,
    ...(isUnlisted ? { isUnlisted } : {}),
    get site() {
      return again().site;
    },
    get view() {
      return again().view;
    },
    key: () => views?.keyOf(path, once) ?? viewKey(once().value),
  };
}

/** The page at another place. */
export function pageAt(path: string, page: PageEntry): PageEntry {
  return {
    path,
    ...(page.isUnlisted === undefined ? {} : { isUnlisted: page.isUnlisted }),
    get site() {
      return page.site;
    },
    get view() {
      return page.view;
    },
    key: page.key,
  };
}

/** The page with something put into it once it is filled. @param beside all that this goes by. */
export function pageWith(
  page: PageEntry,
  changed: (filled: FilledPage) => FilledPage,
  beside: readonly string[],
): PageEntry {
  let made: FilledPage | undefined;
  const once = (): FilledPage => (made ??= changed({ site: page.site, view: page.view }));
  return {
    path: page.path,
    ...(page.isUnlisted === undefined ? {} : { isUnlisted: page.isUnlisted }),
    get site() {
      return once().site;
    },
    get view() {
      return once().view;
    },
    key: () => contentHash([page.key(), ...beside]).toString("hex"),
  };
}
